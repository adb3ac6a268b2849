import { engineVersion, inputHash, mostReadsAt, type Play } from '../../engine/index.ts';
import { toEnginePlay } from '../../playbook/index.ts';
import { hardlyEverWords } from '../../render/index.ts';
import { penaltyOf, type ReadsEffort, readsEffort, studyReads, type WeighedSetup } from '../../worker/index.ts';
import { createTrialPool, defaultThreads } from '../../worker/node.ts';
import type { Foes } from '../choose-matchups.ts';
import { type Conditions, wholeNumber } from '../conditions.ts';
import { badUse, unknownName } from '../failure.ts';
import type { Io } from '../io.ts';
import { levelNote } from '../level-note.ts';
import type { OpenPlaybook } from '../open-playbook.ts';
import { startProgress } from '../progress.ts';
import { readsJson } from '../reads-json.ts';
import { readsText } from '../reads-text.ts';
import { shellCommand } from '../repeat-command.ts';
import { reportNames } from '../report-names.ts';
import { weighedSetups } from '../weighed-setups.ts';

/** What `sliderule reads` was asked, whoever it is about. */
export interface AskedReads {
  /** The file and what stood after --against and --card, as typed. */
  readonly file: string;
  readonly against: string;
  readonly card: string | undefined;
  readonly json: boolean;
  readonly opened: OpenPlaybook;
  readonly play: string;
  readonly foes: Foes;
  readonly conditions: Conditions;
}

/** Man-ups against each scheme that decisions are learnt from when nobody names a number, and as many others to measure them in. */
export const usualReadsTrials = 200;

/** `sliderule reads FILE`: what a man with the ball should look for, as a card. The one who starts the play when no spot is named. */
export async function runCarrierReads(io: Io, asked: AskedReads, named: string | undefined): Promise<void> {
  const { opened, play, foes, conditions, against, json } = asked;
  const { playbook } = opened;
  const written = toEnginePlay(playbook, play, conditions.side);
  const carrier = chosenSpot(written, named ?? written.start.ball);
  const level = conditions.level ?? playbook.team.level;
  const reads = asked.card === undefined ? mostReadsAt(level) : wholeNumber('--card', asked.card, 0, 4);
  io.err(levelNote(playbook, conditions.level));
  const effort = readsEffort(conditions.trials ?? usualReadsTrials);
  const setups = weighedSetups(opened, play, foes, conditions);
  const study = await gather(io, setups, { play: written, carrier }, effort, conditions);
  const spot = written.spots[carrier]!.id;
  if (study === null) throw badUse(`${hardlyEverWords(spot)}. Name another spot after --carrier.`);
  const penalty = conditions.penalty ?? penaltyOf(playbook);
  const hash = inputHash({
    playbook,
    play,
    carrier: spot,
    schemes: foes.schemes,
    ...(foes.opponent && { opponent: foes.opponent.id }),
    side: conditions.side,
    penalty,
    level,
    effort: { ...effort },
  });
  if (json) {
    io.out(readsJson(study, written, reads, { seed: conditions.seed, hash, penalty, level }));
    return;
  }
  io.out(`${readsText(study, written, reads, reportNames(playbook, play))}\n\n`);
  const words = ['--carrier', spot, '--against', against, '--card', String(reads)];
  io.out(sameAgain(io, asked, words, { penalty, trials: effort.trials, hash }));
}

/** The command that gives the same numbers again, and what they depend on. */
export function sameAgain(
  io: Io,
  { file, play, conditions }: AskedReads,
  words: readonly string[],
  { penalty, trials, hash }: { readonly penalty: number; readonly trials: number; readonly hash: string },
): string {
  const { side, seed, level } = conditions;
  const luck = ['--side', side, '--seed', String(seed), '--penalty', String(penalty)];
  const size = ['--trials', String(trials), ...(level === null ? [] : ['--level', level])];
  const command = shellCommand(['reads', file, '--play', play, ...words, ...luck, ...size]);
  return `Same numbers again: ${io.program} ${command}\nEngine ${engineVersion}, seed ${seed}, input ${hash}.\n`;
}

/** The offense index of the man at a spot; fails with the likeliest name when the play has no such spot. */
export function chosenSpot(play: Play, name: string): number {
  const known = play.spots.map(({ id }) => id);
  const index = known.findIndex((id) => id.toLowerCase() === name.toLowerCase());
  if (index < 0) throw unknownName('spot', name, known, undefined);
  return index;
}

async function gather(
  io: Io,
  setups: readonly WeighedSetup[],
  asked: { readonly play: Play; readonly carrier: number },
  effort: ReadsEffort,
  { threads }: Conditions,
) {
  const pool = createTrialPool({ threads: threads ?? defaultThreads(), worker: io.worker });
  const progress = startProgress(io, 'Simulating');
  try {
    return await studyReads(pool, setups, asked, effort, {
      signal: io.signal,
      onPlan: progress.plan,
      onAnswer: progress.step,
    });
  } finally {
    progress.stop();
    await pool.close();
  }
}
