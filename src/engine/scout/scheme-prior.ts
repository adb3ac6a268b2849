import type { DisciplineName } from '../defense/discipline.ts';
import { levelDiscipline } from '../defense/discipline.ts';
import type { SchemeId } from '../defense/schemes.ts';
import type { Level } from '../people/athlete.ts';

/** Ages and levels whose man-down units are much alike. */
type Stage = 'youth' | 'school' | 'college';

const stage_byLevel: Readonly<Record<Level, Stage>> = {
  '8U': 'youth',
  '10U': 'youth',
  '12U': 'youth',
  '14U': 'youth',
  highSchool: 'school',
  college: 'college',
  pro: 'college',
};

/**
 * How often a man-down unit of five plays each scheme, beside the others. Common practice, no source for the numbers: most youth and high-school teams are said to
 * show a box-and-one first, the four-man rotation to be the best start for the inexperienced, the five-man rotation to be played most higher up. Whoever
 * knows his opponent gives weights of his own.
 */
const usualWeights: Readonly<Record<Stage, Readonly<Partial<Record<SchemeId, number>>>>> = {
  youth: {
    'box-zone': 6,
    'four-man-rotation': 3,
    'box-string': 2,
    'five-man-rotation': 1,
    'diamond-and-one': 1,
    'house-3-2': 1,
    'zone-2-3': 2,
    shutoff: 1,
    jump: 0.5,
  },
  school: {
    'box-zone': 5,
    'four-man-rotation': 4,
    'box-string': 2,
    'five-man-rotation': 3,
    'diamond-and-one': 1.5,
    'house-3-2': 1.5,
    'zone-2-3': 1,
    shutoff: 1,
    jump: 1,
  },
  college: {
    'box-zone': 3,
    'four-man-rotation': 4,
    'box-string': 1.5,
    'five-man-rotation': 6,
    'diamond-and-one': 1.5,
    'house-3-2': 2,
    'zone-2-3': 0.5,
    shutoff: 1,
    jump: 1.5,
  },
};

/** A scheme that the table does not hold, such as one that a coach wrote: met about as often as the rarer ones. */
const otherWeight = 1;

/** How often a scheme is met at a level, beside the others. */
export function usualSchemeWeight(level: Level, scheme: string): number {
  const weights: Readonly<Record<string, number | undefined>> = usualWeights[stage_byLevel[level]];
  return Object.hasOwn(weights, scheme) ? (weights[scheme] ?? otherWeight) : otherWeight;
}

/** How likely each grade of discipline is where the level's own is the middle one (common practice, no source). */
const aroundUsual: Readonly<Record<DisciplineName, Readonly<Partial<Record<DisciplineName, number>>>>> = {
  faultless: { sharp: 0.6, ordinary: 0.3, loose: 0.1 },
  sharp: { sharp: 0.5, ordinary: 0.35, loose: 0.15 },
  ordinary: { sharp: 0.25, ordinary: 0.5, loose: 0.25 },
  loose: { sharp: 0.15, ordinary: 0.35, loose: 0.5 },
};

/** The grades of discipline that are met at a level and how likely each is; they add up to 1. */
export function usualDisciplineShares(
  level: Level,
): readonly { readonly name: DisciplineName; readonly share: number }[] {
  const shares = aroundUsual[levelDiscipline[level]];
  return (Object.keys(shares) as DisciplineName[]).map((name) => ({ name, share: shares[name]! }));
}

/** How much a coach's own word on how well they play counts beside what is usual at the level (assumption). Share. */
const writtenShare = 0.7;

/** The same for a unit of which a coach wrote how well it plays: mostly that, with a part left for what is usual at the level. */
export function disciplineShares(
  level: Level,
  written: DisciplineName | undefined,
): readonly { readonly name: DisciplineName; readonly share: number }[] {
  const usual = usualDisciplineShares(level);
  if (written === undefined) return usual;
  const names = [...new Set([...usual.map(({ name }) => name), written])];
  return names.map((name) => {
    const share = (1 - writtenShare) * (usual.find((one) => one.name === name)?.share ?? 0);
    return { name, share: name === written ? writtenShare + share : share };
  });
}
