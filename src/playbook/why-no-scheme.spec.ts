import { describe, expect, test } from 'vitest';
import { demoPlaybook } from './demo.ts';
import type { Playbook, SchemeEntry } from './schema.ts';
import { toEngineScheme } from './scheme-data.ts';
import { toEnginePlay } from './to-engine.ts';
import { whyNoScheme } from './why-no-scheme.ts';

const own: SchemeEntry = demoPlaybook.schemes!.find(({ id }) => id === 'northgate-net')!;
const play = toEnginePlay(demoPlaybook, 'lantern');
const bookWith = (change: Partial<SchemeEntry>): Playbook => ({ ...demoPlaybook, schemes: [{ ...own, ...change }] });

describe('a scheme that is not there says why', () => {
  test.each<[string, Playbook, string, RegExp]>([
    ['an id that nobody knows', demoPlaybook, 'net', /^There is no scheme "net"/],
    ['one man', bookWith({ men: { tr: [3, 10] } }), own.id, /has 1 defender, and a unit has 3 to 6\.$/],
    ['no row', bookWith({ rows: [] }), own.id, /has no row/],
    [
      'rows of another set alone',
      bookWith({ rows: own.rows.slice(0, 1).map((row) => ({ ...row, ball: 'Q7' })) }),
      own.id,
      /for the ball at Q7, and the play has no such spot\. Add a row for one of TR, /,
    ],
  ])('%s', (_, playbook, id, says) => {
    expect(toEngineScheme(playbook, id, play)).toBeUndefined();
    expect(whyNoScheme(playbook, id, play)).toMatch(says);
    if (id === own.id) expect(whyNoScheme(playbook, id, play)).toContain(`"${own.name}" cannot be played against`);
  });
});
