import type { Level } from '../../engine/index.ts';
import type { PracticeRun } from '../../playbook/index.ts';
import { apportion, type Claim } from './apportion.ts';
import { youngLevels } from './block-plan.ts';
import type { PlayFindings } from './find-practice.ts';
import { byWorth, type LookAgainst, type LookWorth, worthOfLook, worthyLooks } from './look-worth.ts';
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
 * Reps against a dummy defense: the worthiest looks, some reps each before the next one is begun, each against the scheme where it carries most of those that are shown. What the play does not teach yet
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
    return runsOf(
      some.map((look, at) => ({ look: lookOf(look), scheme: bestShown(look, shown).scheme, reps: got[at]! })),
    );
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

/** Live reps: how often each scheme is shown, by how likely it is and by what the looks carry there. */
export function liveRuns(findings: PlayFindings, level: Level, reps: number): readonly PracticeRun[] {
  const shown = schemesShown(findings, level);
  const got = apportion(
    reps,
    shown.map(({ worth }) => ({ worth, least: 1 })),
  );
  return runsOf(shown.map(({ scheme }, at) => ({ scheme, reps: got[at]! })));
}

/** A scheme that the defense shows, and what the unit has to gain against it: how likely it is x what its looks carry there. */
export interface ShownScheme {
  readonly scheme: string;
  readonly worth: number;
}

/** The schemes that are worth showing most, the first most; the young see fewer. */
export function schemesShown({ looks }: PlayFindings, level: Level): readonly ShownScheme[] {
  const worth_byScheme = new Map<string, number>();
  for (const { against } of looks)
    for (const { scheme, weight, carries } of against)
      worth_byScheme.set(scheme, (worth_byScheme.get(scheme) ?? 0) + weight * (carries + likelihoodAlone));
  return [...worth_byScheme]
    .map(([scheme, worth]) => ({ scheme, worth }))
    .sort((a, b) => b.worth - a.worth)
    .slice(0, mostSchemesShown[youth(level)]);
}

/** Where no look carries anything, the likelier scheme is shown first. Goals a man-up. */
const likelihoodAlone = 1e-3;

/** The looks that are drilled against a defense: the worthiest that are taught, and of those that are new no more than can be learnt at once; none where none is worth it. */
export function drilledLooks(findings: PlayFindings, level: Level): readonly LookWorth[] {
  const { looks, newRead } = findings;
  // A new read takes the place of a new look: it is one new thing to see.
  const room = newReadsAtOnce[youth(level)] - (newRead === null ? 0 : 1);
  const fresh = byWorth(looks.filter(({ isTaught }) => !isTaught)).slice(0, room);
  return byWorth([...worthyLooks(looks), ...fresh]).slice(0, mostDummyLooks);
}

/** The scheme, of those that are shown, against which a look has most to gain. */
function bestShown({ against }: LookWorth, shown: readonly ShownScheme[]): LookAgainst {
  return against.find(({ scheme }) => shown.some((one) => one.scheme === scheme)) ?? against[0];
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
