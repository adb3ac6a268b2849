import { describe, expect, it } from 'vitest';
import { demoPlaybook, demoText } from '../../playbook/index.ts';
import { readConditions } from '../conditions.ts';
import { Failure } from '../failure.ts';
import type { Io } from '../io.ts';
import { runSkills } from './reads-skills.ts';

/** Runs it against one scheme with the real bundled worker; the test run builds it first. */
async function printed(json: boolean, raw: Readonly<Record<string, string>>): Promise<string> {
  let text = '';
  const io: Io = {
    program: 'sliderule',
    out: (more) => {
      text += more;
    },
    err: () => undefined,
    progressStream: null,
    signal: new AbortController().signal,
    worker: new URL('../../../dist/trial-worker.js', import.meta.url),
    app: new URL('../../../dist/app/', import.meta.url),
    showInBrowser: () => undefined,
  };
  await runSkills(io, {
    file: 'demo.json',
    against: 'jump',
    json,
    opened: { playbook: demoPlaybook, document: demoText },
    play: 'ferry',
    foes: { schemes: ['jump'] },
    conditions: readConditions({ penalty: '10', threads: '2', ...raw }),
  });
  return text;
}

describe('reads --skills', () => {
  it('prints all that was tried as JSON, the same for the same seed', async () => {
    const text = await printed(true, { trials: '20' });
    const { unit, each, alreadyBest, trials } = JSON.parse(text);
    expect(trials).toEqual({ first: 20, second: 20, last: 20 });
    const best = alreadyBest.reduce((sum: number, { skills }: { skills: readonly string[] }) => sum + skills.length, 0);
    expect(each.rows.length + best).toBe(6 * 9);
    expect(unit.rows).toHaveLength(9);
    expect(await printed(true, { trials: '20' })).toBe(text);
    expect(JSON.parse(await printed(true, { trials: '20', seed: '2' })).unit.rows).not.toEqual(unit.rows);
  });

  it('prints what is best to practise, and the command that prints it again', async () => {
    const text = await printed(false, { trials: '20' });
    expect(text).toMatch(/^Ferry: what practice is worth\./);
    expect(text).toMatch(/sliderule reads demo\.json --play ferry --skills --against jump --side right --seed 1 /);
    expect(text).toContain('--penalty 10 --trials 20');
  });

  it('refuses too few man-ups', async () => {
    await expect(printed(false, { trials: '19' })).rejects.toThrow(Failure);
    await expect(printed(false, { trials: '19' })).rejects.toThrow('invalid --trials: 19 (expected 20 or more');
  });
});
