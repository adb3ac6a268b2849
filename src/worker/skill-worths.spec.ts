import { describe, expect, it } from 'vitest';
import { compareGoals, mirrorSpotId, type Tally } from '../engine/index.ts';
import { demoPlaybook, type Playbook } from '../playbook/index.ts';
import { answerRequest } from './answer-request.ts';
import type { Practised } from './build-matchup.ts';
import { expectKind, RefusedSetup } from './expect-kind.ts';
import type { WeighedSetup } from './gather-chances.ts';
import { onePlayText } from './one-play-text.ts';
import { practiceChoices } from './practice-choices.ts';
import type { TrialSetup, WorkerRequest } from './protocol.ts';
import { practiceEffort, requestsOfSkillWorths, type SkillWorth, studySkillWorths } from './skill-worths.ts';
import type { TrialPool } from './trial-pool.ts';

const play = 'lantern';
/** Weights that are not equal, so that leaving them out would be seen. */
const met = [
  { scheme: 'box-zone', weight: 3 },
  { scheme: 'shutoff', weight: 1 },
] as const;

function setupsOf(playbook: Playbook, side: 'left' | 'right' = 'right'): readonly WeighedSetup[] {
  return met.map(({ scheme, weight }) => {
    const document = onePlayText(playbook, { play, scheme });
    return { setup: { document, play, scheme, side, penalty: 20, level: null, seed: 7 }, weight };
  });
}

function choicesOf(playbook: Playbook, side: 'left' | 'right' = 'right') {
  const choices = practiceChoices(playbook, { play, side, level: null });
  if (choices.kind === 'refused') throw new Error(choices.reason);
  return choices;
}

/** Answers in place, by the simulation or by what stands in for it. */
function createPool(answer = answerRequest): TrialPool & { readonly asked: WorkerRequest[] } {
  const asked: WorkerRequest[] = [];
  return {
    threads: 1,
    asked,
    answer: async (requests, { signal, onAnswer } = {}) => {
      const answers = requests.map((request) => {
        signal?.throwIfAborted();
        asked.push(request);
        const one = answer(request);
        onAnswer?.();
        return one;
      });
      return answers;
    },
    close: async () => {},
  };
}

const [demoSetup] = setupsOf(demoPlaybook);

function tallyOf(setup: TrialSetup, practised: Practised | undefined, to: number, from = 0): Tally {
  const asked = practised === undefined ? setup : { ...setup, practised };
  return expectKind(answerRequest({ kind: 'tally', setup: asked, range: { from, to } }), 'tally').tally;
}

describe('what can be practised', () => {
  const { men, unit, each } = choicesOf(demoPlaybook);

  it('is every skill of every man but those in which he is the best of his level', () => {
    expect(men.map(({ spot }) => spot)).toEqual(['TR', 'TL', 'WR', 'WL', 'C', 'X']);
    expect(each.length + men.reduce((sum, { best }) => sum + best.length, 0)).toBe(6 * 9);
    for (const [at, { number, best }] of men.entries()) {
      const { grades = {} } = demoPlaybook.team.roster.find((player) => player.number === number)!;
      const graded = Object.entries(grades).filter(([, grade]) => grade === 5);
      // A reading may put a man below what he is graded.
      for (const skill of best) expect(graded.map(([name]) => name)).toContain(skill);
      expect(each.filter(({ man }) => man === at).map(({ skill }) => skill)).not.toEqual(best);
    }
    expect(unit.map(({ skill }) => skill)).toHaveLength(9);
  });

  it('is nothing when all are the best in everything', () => {
    const best = { speed: 5, catch: 5, pass: 5, feed: 5, shoot: 5, inside: 5, handle: 5, offHand: 5, sense: 5 };
    const roster = demoPlaybook.team.roster.map(({ measured: _, ...player }) => ({ ...player, grades: best }));
    const all = choicesOf({ ...demoPlaybook, team: { ...demoPlaybook.team, roster } });
    expect([all.unit, all.each]).toEqual([[], []]);
    for (const man of all.men) expect(man.best).toHaveLength(9);
  });

  it('is refused when there are too few players', () => {
    const roster = demoPlaybook.team.roster.slice(0, 4);
    const choices = practiceChoices(
      { ...demoPlaybook, team: { ...demoPlaybook.team, roster } },
      { play, side: 'right', level: null },
    );
    expect(choices).toMatchObject({ kind: 'refused', reason: expect.stringContaining('too few field players') });
  });
});

describe('a man who has practised', () => {
  it('to no gain plays the very same man-ups', () => {
    const feeder = choicesOf(demoPlaybook).men.findIndex(({ best }) => best.includes('feed'));
    const before = tallyOf(demoSetup!.setup, undefined, 40);
    const { difference } = compareGoals([tallyOf(demoSetup!.setup, { man: feeder, skill: 'feed' }, 40)], [before]);
    expect(difference).toEqual({ mean: 0, low: 0, high: 0 });
  });

  it('shooting does not cost goals, beyond 3 standard errors of the paired trials', () => {
    const trials = 60;
    const setups = setupsOf(demoPlaybook).map(({ setup }) => setup);
    const before = setups.map((setup) => tallyOf(setup, undefined, trials));
    for (const man of [0, 1, 2, 3, 4, 5]) {
      const shooter = { man, skill: 'shoot' } as const;
      const { mean, low } = compareGoals([tallyOf(setups[0]!, shooter, trials)], [before[0]!]).difference;
      // Half of a 95 % interval is two standard errors, to 1 %.
      expect(mean, `${man}`).toBeGreaterThanOrEqual(-1.5 * (mean - low));
    }
    // All six gain about .05 goals a chance, 3 standard errors of so few trials.
    const after = setups.map((setup) => tallyOf(setup, { man: 'all', skill: 'shoot' }, trials));
    expect(compareGoals(after, before).difference.mean).toBeGreaterThan(0);
  });

  it('stays where he stands, and the scheme shuts off whom it shut off', () => {
    const setup = { ...demoSetup!.setup, scheme: 'shutoff' };
    const castOf = (practised?: Practised) => {
      const asked = practised === undefined ? setup : { ...setup, practised };
      return expectKind(answerRequest({ kind: 'trace', setup: asked, of: 'script', trial: 0 }), 'trace').cast;
    };
    const before = castOf();
    for (const man of [0, 1, 2, 3, 4, 5]) {
      const { numbers, shutOff, six } = castOf({ man, skill: 'shoot' });
      expect([numbers, shutOff]).toEqual([before.numbers, before.shutOff]);
      for (const [at, athlete] of six.entries()) if (at !== man) expect(athlete).toEqual(before.six[at]);
    }
  });
});

describe('the worth of a better skill', () => {
  const effort = practiceEffort(121);
  const { unit } = choicesOf(demoPlaybook);
  const some = unit.filter(({ skill }) => skill === 'shoot');
  const setups = setupsOf(demoPlaybook);

  it('is the paired difference of the trials that nothing was chosen by', async () => {
    const found = await studySkillWorths(createPool(), setups, { unit: some, each: [] }, effort);
    const row = found.unit.rows.find(({ skill }) => skill === 'shoot')!;
    expect([row.isFresh, row.trials, row.man]).toEqual([true, 121, 'all']);
    const from = effort.first + effort.second;
    const odds = (practised?: Practised) => {
      const [one, other] = setups.map(({ setup }) => tallyOf(setup, practised, from + 121, from).goalOdds_byTrial);
      return Array.from(one!, (value, at) => (3 * value + other![at]!) / 4);
    };
    const before = odds();
    const apart = odds({ man: 'all', skill: 'shoot' }).map((value, at) => value - before[at]!);
    const mean = apart.reduce((sum, value) => sum + value, 0) / 121;
    const spread = Math.sqrt(apart.reduce((sum, value) => sum + (value - mean) ** 2, 0) / 120);
    expect(row.gain.mean).toBeCloseTo(mean, 12);
    // Student's t for .975 and 120 degrees of freedom: 1.980 in any printed table.
    expect(row.gain.high - row.gain.mean).toBeCloseTo((1.98 * spread) / 11, 5);
    expect(row.gain.mean - row.gain.low).toBeCloseTo((1.98 * spread) / 11, 5);
    const [box, shutoff] = row.byScheme.map(({ gain }) => gain.mean);
    expect((3 * box! + shutoff!) / 4).toBeCloseTo(mean, 9);
  });

  it('of the mirrored play by mirrored men is the same, at the mirrored spots', async () => {
    const { team } = demoPlaybook;
    const other = { left: 'right', right: 'left', both: 'both' } as const;
    const mirrored: Playbook = {
      ...demoPlaybook,
      team: {
        ...team,
        roster: team.roster.map((player) => ({ ...player, hand: other[player.hand] })),
        depth: Object.fromEntries(Object.entries(team.depth ?? {}).map(([spot, men]) => [mirrorSpotId(spot), men])),
      },
    };
    const short = practiceEffort(20);
    const rowsOf = async (playbook: Playbook, side: 'left' | 'right') => {
      const choices = choicesOf(playbook, side);
      const each = choices.each.filter(({ skill }) => skill === 'shoot');
      const study = await studySkillWorths(createPool(), setupsOf(playbook, side), { unit: some, each }, short);
      const spotOf = ({ man }: SkillWorth) => (man === 'all' ? man : choices.men[man]!.spot);
      return [...study.unit.rows, ...study.each!.rows].map((row) => ({ ...row, spot: spotOf(row) }));
    };
    const rows = await rowsOf(demoPlaybook, 'right');
    const seen = rows.map((row) => ({ ...row, spot: row.spot === 'all' ? row.spot : mirrorSpotId(row.spot) }));
    expect(await rowsOf(mirrored, 'left')).toEqual(seen);
    expect(rows.filter(({ gain }) => gain.mean !== 0).length).toBeGreaterThan(3);
  });

  it('comes of the whole unit first, and says rightly how much is asked', async () => {
    const pool = createPool();
    const told: boolean[] = [];
    const choices = { unit: some, each: choicesOf(demoPlaybook).each.slice(0, 4) };
    const short = practiceEffort(20);
    const options = { onFound: ({ each }: { each: unknown }) => void told.push(each === null) };
    const study = await studySkillWorths(pool, setups, choices, short, options);
    expect(told).toEqual([true, true, true, false, false, false]);
    expect(study.each!.rows).toHaveLength(4);
    const most = requestsOfSkillWorths(choices, setups.length, short);
    expect(pool.asked.length).toBeLessThanOrEqual(most);
    // What gained nothing in the first man-ups is not tried again: some rounds are shorter.
    expect(pool.asked.length).toBeGreaterThan(most / 2);
  });

  it('is not found when it is told to stop, or asked of what is not there', async () => {
    const choices = { unit: some, each: [] };
    const stopped = studySkillWorths(createPool(), setups, choices, effort, { signal: AbortSignal.abort() });
    await expect(stopped).rejects.toMatchObject({ name: 'AbortError' });
    const unknown = setups.map(({ setup, weight }) => ({ setup: { ...setup, scheme: 'none' }, weight }));
    await expect(studySkillWorths(createPool(), unknown, choices, effort)).rejects.toThrow(RefusedSetup);
  });
});

describe('what is best to practise', () => {
  const [shoot, speed, pass] = (['shoot', 'speed', 'pass'] as const).map((skill) => ({
    man: 'all' as const,
    skill,
    grades: 1,
  }));
  const template = tallyOf(demoSetup!.setup, undefined, 1);

  /** A simulation in which a skill adds so much, more or less, to goals of which the luck is shared. */
  function poolWhere(
    worth: Readonly<Record<string, number>>,
    wobble: number,
    luck: (trial: number) => number = () => 0,
  ): TrialPool {
    return createPool((request) => {
      if (request.kind !== 'tally') throw new TypeError(request.kind);
      const { practised } = request.setup;
      const { from, to } = request.range;
      const goalOdds_byTrial = Float32Array.from({ length: to - from }, (_, at) => {
        const shared = Math.sin(37 * (from + at)) ** 2;
        if (practised === undefined) return shared;
        return (
          shared +
          luck(from + at) +
          worth[practised.skill]! +
          wobble * Math.sin((from + at) * practised.skill.charCodeAt(1))
        );
      });
      const counts = { goals_byTrial: new Uint8Array(to - from), shots_byTrial: new Uint8Array(to - from) };
      const others = { turnovers_byTrial: new Uint8Array(to - from) };
      const times = {
        firstShot_byTrial: new Float32Array(to - from),
        firstGoal_byTrial: new Float32Array(to - from),
      };
      return {
        kind: 'tally',
        tally: { ...template, from, to, goalOdds_byTrial, ...counts, ...others, ...times },
      };
    });
  }

  const choices = { unit: [shoot!, speed!, pass!], each: [] };

  it.each([
    ['one that is surely the best', { shoot: 0.05, speed: 0.02, pass: 0.01 }, 0.02, ['shoot']],
    ['several that cannot be told apart', { shoot: 0.05, speed: 0.0499, pass: 0.01 }, 0.02, ['shoot', 'speed']],
    ['nothing when all that helps may be luck', { shoot: 0.001, speed: 0.001, pass: 0.001 }, 0.5, []],
    ['nothing when practice costs', { shoot: -0.05, speed: -0.01, pass: -0.01 }, 0.001, []],
  ] as const)('is %s', async (_, worth, wobble, leaders) => {
    const pool = poolWhere(worth, wobble);
    const { unit: found } = await studySkillWorths(pool, setupsOf(demoPlaybook), choices, practiceEffort(200));
    expect(found.leaders!.map(({ skill }) => skill).sort()).toEqual([...leaders].sort());
    for (const leader of found.leaders!) expect(leader.isFresh).toBe(true);
  });

  it('is never read off the man-ups by which it was chosen', async () => {
    // Lucky until the last round, and worth nothing in it.
    const effort = practiceEffort(120);
    const luckUntil = effort.first + effort.second;
    const flattered = poolWhere({ shoot: 0, speed: 0, pass: 0 }, 0, (trial) => (trial < luckUntil ? 0.2 : 0));
    const { unit: found } = await studySkillWorths(flattered, setupsOf(demoPlaybook), choices, effort);
    expect(found.leaders).toEqual([]);
    for (const row of found.rows) expect(row.gain).toEqual({ mean: 0, low: 0, high: 0 });
  });
});
