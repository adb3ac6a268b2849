import Ajv2020 from 'ajv/dist/2020.js';
import { describe, expect, test } from 'vitest';
import { demoPlaybook } from './demo.ts';
import { playbookJsonSchema } from './json-schema.ts';

// After a change of the schema: npx vitest run src/playbook/json-schema.spec.ts -u
test('docs/playbook.schema.json is current', async () => {
  await expect(`${JSON.stringify(playbookJsonSchema(), null, 2)}\n`).toMatchFileSnapshot(
    '../../docs/playbook.schema.json',
  );
});

describe('the JSON Schema, by a validator of its own', () => {
  const validate = new Ajv2020({ allErrors: true, strict: true, strictTuples: false, allowUnionTypes: true }).compile(
    playbookJsonSchema(),
  );

  test('accepts the demo', () => {
    expect(validate(demoPlaybook), JSON.stringify(validate.errors)).toBe(true);
  });

  // biome-ignore lint/suspicious/noExplicitAny: broken on purpose
  type Loose = any;
  test.each<[string, (doc: Loose) => unknown]>([
    ['another format', (d) => (d.format = 'x')],
    ['another version', (d) => (d.version = 2)],
    ['no team', (d) => delete d.team],
    ['an unknown field', (d) => (d.extra = 1)],
    ['an unknown field in a beat', (d) => (d.plays[0].beats[0].when = 'start')],
    ['an unknown level', (d) => (d.team.level = '15U')],
    ['a grade of 6', (d) => (d.team.roster[0].grades.catch = 6)],
    ['a number that is a text', (d) => (d.team.roster[0].number = '4')],
    ['a place of one number', (d) => (d.plays[0].start.restart = [3])],
    ['a place of three numbers', (d) => (d.plays[0].start.restart = [3, 4, 5])],
    ['a spot in small letters', (d) => (d.plays[0].start.ball = 'tr')],
    ['a moved spot in small letters', (d) => (d.plays[0].spots = { x: [0, -6] })],
    ['an action that is not one', (d) => (d.plays[0].beats[0].do = ['TR passes TL'])],
    ['a trigger that is not one', (d) => (d.plays[0].beats[0].on = 'whistle')],
    ['a cue that is not one', (d) => (d.plays[0].reads[0].if = ['maybe'])],
    ['the end of a read with a man', (d) => (d.plays[0].reads[0].then = 'X feed C')],
    ['no beats', (d) => (d.plays[0].beats = [])],
    ['a man-up that says nothing', (d) => (d.chances = [{}])],
    ['an unknown discipline', (d) => (d.opponents[0].discipline = { all: 'sloppy' })],
  ])('refuses %s', (_, edit) => {
    const doc = structuredClone(demoPlaybook);
    edit(doc);
    expect(validate(doc)).toBe(false);
  });
});
