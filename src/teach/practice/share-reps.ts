import type { Level } from '../../engine/index.ts';
import type { PracticeRun } from '../../playbook/index.ts';
import { apportion, type Claim } from './apportion.ts';
import { youngLevels } from './block-plan.ts';
import type { PlayFindings } from './find-practice.ts';
import { byWorth, type LookWorth, worthOfLook, worthyLooks } from './look-worth.ts';
import { mostDummyLooks, mostSchemesShown, newReadsAtOnce, repsALook } from './practice-times.ts';

// How the reps of a block are shared out. All by Webster's method (`apportion`), so that one rep more takes none away.

/** Reps of a skeleton: each look that is taught once at least, then by worth; all alike where none is worth reps. */
export function skeletonRuns(findings: PlayFindings, reps: number): readonly PracticeRun[] {
  const taught = findings.looks.filter(({ isTaught }) => isTaught);
  const isIdle = worthyLooks(taught).length === 0;
  const got = apportion(
    reps,
    taught.map((look) => ({ worth: isIdle ? 0 : worthOfLook(look), least: 1 })),
  );
  return runsOf(taught.map((look, at) => ({ look: lookOf(look), reps: got[at]! })));
}

/**
 * Reps against a dummy defense: the worthiest looks, some reps each before the next one is begun, each against one of the schemes that are shown (`schemesOfLooks`). What the play does not teach yet
 * gets half of them at most; where nothing that it teaches is worth reps the others run the whole play, and who has the ball finds who is open.
 */
export function dummyRuns(findings: PlayFindings, level: Level, reps: number): readonly PracticeRun[] {
  const shown = schemesShown(findings, level);
  const looks = drilledLooks(findings, level);
  const [taught, fresh] = [looks.filter(({ isTaught }) => isTaught), looks.filter(({ isTaught }) => !isTaught)];
  const [known, added] = apportion(reps, [groupClaim(taught), { ...groupClaim(fresh), most: newShare(fresh, reps) }]);
  const runsOfLooks = (some: readonly LookWorth[], count: number): readonly PracticeRun[] => {
    const got = apportion(
      count,
      some.map((look) => ({ worth: worthOfLook(look), least: repsALook })),
    );
    const schemes = schemesOfLooks(some, shown);
    return runsOf(some.map((look, at) => ({ look: lookOf(look), scheme: schemes[at]!, reps: got[at]! })));
  };
  return [
    ...(taught.length > 0 ? runsOfLooks(taught, known!) : liveRuns(findings, level, known!)),
    ...runsOfLooks(fresh, added!),
  ];
}

function groupClaim(looks: readonly LookWorth[]): Claim {
  return { worth: looks.reduce((sum, look) => sum + worthOfLook(look), 0), least: 0 };
}

/** One rep more for all is never more than one more for what is new, so that none is taken away from what is known. */
function newShare(fresh: readonly LookWorth[], reps: number): number {
  return fresh.length === 0 ? 0 : Math.floor(reps / 2);
}

/** Live reps: each scheme that is shown once at least, then by how likely it is and by nothing else, so that the likelier one never gets fewer. */
export function liveRuns(findings: PlayFindings, level: Level, reps: number): readonly PracticeRun[] {
  const shown = schemesShown(findings, level);
  const got = apportion(
    reps,
    shown.map(({ weight }) => ({ worth: weight, least: 1 })),
  );
  return runsOf(shown.map(({ scheme }, at) => ({ scheme, reps: got[at]! })));
}

/** A scheme that the defense shows, how likely it is beside the others, and what the looks of the play carry there, goals a man-up. */
export interface ShownScheme {
  readonly scheme: string;
  readonly weight: number;
  readonly carries: number;
}

/** The likeliest schemes, the first most; of those as likely the ones where the looks carry most. The young see fewer. */
export function schemesShown({ looks }: PlayFindings, level: Level): readonly ShownScheme[] {
  const shown_byScheme = new Map<string, ShownScheme>();
  for (const { against } of looks)
    for (const { scheme, weight, carries } of against) {
      const before = shown_byScheme.get(scheme)?.carries ?? 0;
      shown_byScheme.set(scheme, { scheme, weight, carries: before + carries });
    }
  return [...shown_byScheme.values()]
    .sort((a, b) => b.weight - a.weight || b.carries - a.carries)
    .slice(0, mostSchemesShown[youth(level)]);
}

/** The looks that are drilled against a defense: the worthiest that are taught, and of those that are new no more than can be learnt at once; none where none is worth it. */
export function drilledLooks(findings: PlayFindings, level: Level): readonly LookWorth[] {
  const { looks, newRead } = findings;
  // A new read takes the place of a new look: it is one new thing to see.
  const room = newReadsAtOnce[youth(level)] - (newRead === null ? 0 : 1);
  const fresh = byWorth(looks.filter(({ isTaught }) => !isTaught)).slice(0, room);
  return byWorth([...worthyLooks(looks), ...fresh]).slice(0, mostDummyLooks);
}

/**
 * The scheme against which each look is run, for looks of which none gets more reps than the one before it: the one where it carries most of those that may be next. A scheme may be next when each likelier one
 * has more looks so far, so that for each of its looks every likelier scheme has one with as many reps, however many there are.
 */
function schemesOfLooks(looks: readonly LookWorth[], shown: readonly ShownScheme[]): readonly string[] {
  const had = shown.map(() => 0);
  return looks.map(({ against }) => {
    const worthIn = ({ scheme }: ShownScheme): number => {
      const found = against.find((one) => one.scheme === scheme);
      return found === undefined ? 0 : found.weight * found.carries;
    };
    const free = [...shown.keys()].filter((at) =>
      shown.every(({ weight }, other) => weight <= shown[at]!.weight || had[other]! > had[at]!),
    );
    const next = free.reduce((best, at) => (worthIn(shown[at]!) > worthIn(shown[best]!) ? at : best));
    had[next]! += 1;
    return shown[next]!.scheme;
  });
}

function lookOf({ from, to }: LookWorth): string[] {
  return from === to ? [from] : [from, to];
}

function runsOf(runs: readonly PracticeRun[]): readonly PracticeRun[] {
  return runs.filter(({ reps }) => reps > 0);
}

function youth(level: Level): 'young' | 'grown' {
  return youngLevels.includes(level) ? 'young' : 'grown';
}
