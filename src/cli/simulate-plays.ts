import {
  complexityOf,
  engineVersion,
  inputHash,
  type Level,
  type Matchup,
  type PlayReport,
  reportScheme,
  type Tally,
} from '../engine/index.ts';
import { buildMatchup, type Measured, measureMatchups, penaltyOf, type TrialSetup } from '../worker/index.ts';
import { createTrialPool, defaultThreads } from '../worker/node.ts';
import type { Foes } from './choose-matchups.ts';
import type { Conditions } from './conditions.ts';
import { effortFor } from './effort.ts';
import { badUse } from './failure.ts';
import type { Io } from './io.ts';
import { levelNote } from './level-note.ts';
import type { OpenPlaybook } from './open-playbook.ts';
import { type OpponentWhole, opponentWhole } from './opponent-whole.ts';
import { startProgress } from './progress.ts';

/** One play's report, and the tallies that it was made of, scheme by scheme: plays are compared trial by trial. */
export interface SimulatedPlay {
  readonly report: PlayReport;
  readonly tallies: readonly Tally[];
  /** What it adds up to against the opponent who plays these schemes; absent when the schemes are nobody's. */
  readonly whole?: OpponentWhole;
}

/** Simulates every play against every scheme, with a progress line where somebody sees it. Order as asked. */
export async function simulatePlays(
  io: Io,
  opened: OpenPlaybook,
  plays: readonly string[],
  foes: Foes,
  conditions: Conditions,
  wanted: 'goals' | 'looks',
): Promise<readonly SimulatedPlay[]> {
  const { schemes, opponent } = foes;
  io.err(levelNote(opened.playbook, conditions.level));
  const asked = plays.flatMap((play) =>
    schemes.map((scheme) => ({ play, scheme, ...(opponent && { opponent: opponent.id }) })),
  );
  const matchups = asked.map((one) => matchupOf(opened, one, conditions));
  const setups = asked.map((one) => setupOf(opened, one, conditions));
  const measured = await measure(io, setups, conditions, wanted);
  return plays.map((play, index) => {
    const [from, to] = [index * schemes.length, (index + 1) * schemes.length];
    const slices = [matchups.slice(from, to), measured.slice(from, to)] as const;
    return playReport(opened, play, foes, conditions, wanted, ...slices);
  });
}

/** One play against one scheme. */
interface Asked {
  readonly play: string;
  readonly scheme: string;
  readonly opponent?: string;
}

async function measure(
  io: Io,
  setups: readonly TrialSetup[],
  { threads, trials }: Conditions,
  wanted: 'goals' | 'looks',
): Promise<readonly Measured[]> {
  const pool = createTrialPool({ threads: threads ?? defaultThreads(), worker: io.worker });
  const progress = startProgress(io, 'Simulating');
  try {
    return await measureMatchups(pool, setups, effortFor(trials, wanted), {
      signal: io.signal,
      onPlan: progress.plan,
      onAnswer: progress.step,
    });
  } finally {
    progress.stop();
    await pool.close();
  }
}

// Built here too, because a report needs names that tallies do not carry; and a refusal comes before any work.
function matchupOf({ playbook }: OpenPlaybook, asked: Asked, conditions: Conditions): Matchup {
  const built = buildMatchup(playbook, { ...conditions, ...asked });
  if (built.kind === 'refused') throw badUse(`${built.reason}.`);
  return built.matchup;
}

function setupOf({ document }: OpenPlaybook, asked: Asked, conditions: Conditions): TrialSetup {
  const { side, penalty, level, seed } = conditions;
  return { document, ...asked, side, penalty, level, seed };
}

function playReport(
  { playbook }: OpenPlaybook,
  play: string,
  { schemes, opponent }: Foes,
  conditions: Conditions,
  wanted: 'goals' | 'looks',
  matchups: readonly Matchup[],
  measured: readonly Measured[],
): SimulatedPlay {
  const { side, seed, trials } = conditions;
  const penalty = conditions.penalty ?? penaltyOf(playbook);
  const level: Level = conditions.level ?? playbook.team.level;
  const [first] = matchups;
  const report: PlayReport = {
    engine: engineVersion,
    seed,
    inputHash: inputHash({
      playbook,
      play,
      schemes,
      ...(opponent && { opponent: opponent.id }),
      side,
      penalty,
      level,
      effort: effortFor(trials, wanted),
    }),
    play,
    side,
    penalty,
    complexity: first === undefined ? { passes: 0, skips: 0, reads: 0, movers: 0 } : complexityOf(first.play),
    results: matchups.map((matchup, index) => {
      const { tally, ...found } = measured[index]!;
      return reportScheme(matchup, tally, found);
    }),
  };
  const tallies = measured.map(({ tally }) => tally);
  return { report, tallies, ...(opponent && { whole: opponentWhole(opponent, report, tallies) }) };
}
