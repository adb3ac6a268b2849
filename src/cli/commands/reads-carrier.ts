import { carriersOfPlay, engineVersion, inputHash, mostReadsAt, type Play } from '../../engine/index.ts';
import { toEnginePlay } from '../../playbook/index.ts';
import { hardlyEverWords } from '../../render/index.ts';
import { penaltyOf, type ReadsEffort, type ReadsStudy, readsEffort, studyReads } from '../../worker/index.ts';
import { createTrialPool, defaultThreads } from '../../worker/node.ts';
import { chainText } from '../chain-text.ts';
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

/**
 * `sliderule reads FILE`: what a man with the ball should look for, as a card. The one who starts the play when no spot is named, each one to whom it
 * brings the ball when all are.
 */
export async function runCarrierReads(io: Io, asked: AskedReads, named: string | undefined): Promise<void> {
  const written = toEnginePlay(asked.opened.playbook, asked.play, asked.conditions.side);
  const level = asked.conditions.level ?? asked.opened.playbook.team.level;
  const reads = asked.card === undefined ? mostReadsAt(level) : wholeNumber('--card', asked.card, 0, 4);
  io.err(levelNote(asked.opened.playbook, asked.conditions.level));
  if (named?.toLowerCase() === 'all') await tellChain(io, asked, written, reads);
  else await tellOne(io, asked, written, reads, chosenSpot(written, named ?? written.start.ball));
}

async function tellOne(io: Io, asked: AskedReads, written: Play, reads: number, carrier: number): Promise<void> {
  const { opened, play, against, json, conditions } = asked;
  const effort = effortOf(asked);
  const [study] = await gather(io, asked, written, [carrier], effort);
  const spot = written.spots[carrier]!.id;
  if (study === undefined || study === null)
    throw badUse(
      `${hardlyEverWords(spot)}. Ask for more of them after --trials, or name another spot after --carrier.`,
    );
  const whole = wholeOf(asked, { carrier: spot, effort });
  if (json) {
    io.out(`${jsonText(readsJson(study, written, reads, { seed: conditions.seed, ...whole }))}\n`);
    return;
  }
  io.out(`${readsText(study, written, reads, reportNames(opened.playbook, play))}\n\n`);
  const words = ['--carrier', spot, '--against', against, '--card', String(reads)];
  io.out(sameAgain(io, asked, words, { ...whole, trials: effort.trials }));
}

/** The cards of all men to whom the play brings the ball. */
async function tellChain(io: Io, asked: AskedReads, written: Play, reads: number): Promise<void> {
  const { opened, play, against, json, conditions } = asked;
  const effort = effortOf(asked);
  const spots = carriersOfPlay(written);
  const carriers = spots.map((spot) => chosenSpot(written, spot));
  const studies = await gather(io, asked, written, carriers, effort);
  const whole = wholeOf(asked, { carrier: 'all', effort });
  if (json) {
    const told = studies.flatMap((study) =>
      study === null ? [] : [readsJson(study, written, reads, { seed: conditions.seed, ...whole })],
    );
    io.out(`${jsonText(told)}\n`);
    return;
  }
  io.out(`${chainText(studies, spots, written, reads, reportNames(opened.playbook, play))}\n\n`);
  const words = ['--carrier', 'all', '--against', against, '--card', String(reads)];
  io.out(sameAgain(io, asked, words, { ...whole, trials: effort.trials }));
}

function effortOf({ conditions }: AskedReads): ReadsEffort {
  return readsEffort(conditions.trials ?? usualReadsTrials);
}

/** What the figures depend on; `about` says of whom they are and how much was simulated for them. */
export function wholeOf(
  { opened, play, foes, conditions }: Pick<AskedReads, 'opened' | 'play' | 'foes' | 'conditions'>,
  about: { readonly carrier?: string; readonly runner?: string; readonly effort: object },
) {
  const { playbook } = opened;
  const penalty = conditions.penalty ?? penaltyOf(playbook);
  const level = conditions.level ?? playbook.team.level;
  const hash = inputHash({
    playbook,
    play,
    ...about,
    schemes: foes.schemes,
    ...(foes.opponent && { opponent: foes.opponent.id }),
    ...(foes.weights && { weights: foes.weights }),
    side: conditions.side,
    penalty,
    level,
  });
  return { penalty, level, hash };
}

/** The command that gives the same numbers again, and what they depend on. */
export function sameAgain(
  io: Io,
  { file, play, conditions }: Pick<AskedReads, 'file' | 'play' | 'conditions'>,
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
  { opened, play, foes, conditions }: AskedReads,
  written: Play,
  carriers: readonly number[],
  effort: ReadsEffort,
): Promise<readonly (ReadsStudy | null)[]> {
  const setups = weighedSetups(opened, play, foes, conditions);
  const pool = createTrialPool({ threads: conditions.threads ?? defaultThreads(), worker: io.worker });
  const progress = startProgress(io, 'Simulating');
  const studies: (ReadsStudy | null)[] = [];
  try {
    for (const carrier of carriers) {
      studies.push(
        await studyReads(pool, setups, { play: written, carrier }, effort, {
          signal: io.signal,
          onPlan: progress.plan,
          onAnswer: progress.step,
        }),
      );
    }
    return studies;
  } finally {
    progress.stop();
    await pool.close();
  }
}

function jsonText(value: unknown): string {
  return JSON.stringify(value, null, 2);
}
