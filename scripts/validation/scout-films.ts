import {
  type ChanceModel,
  compileChance,
  disciplines,
  type MarkedFilm,
  movementsOf,
  type Play,
  recordTrace,
  type Scheme,
  schemesFor,
  sets,
} from '../../src/engine/index.ts';
import { demoPlaybook, toEnginePlay } from '../../src/playbook/index.ts';
import { filmOfTrace } from './scout-film.ts';
import { usualMatchup } from './unit.ts';

/** How well a held-out unit plays: as no suspect does, faultlessly, or with one man who is loose among sharp ones. */
export const heldDisciplines = ['faultless', 'uneven'] as const;
export type HeldDiscipline = (typeof heldDisciplines)[number];

/** One marked man-up whose scheme is known. */
export interface KnownFilm {
  readonly play: Play;
  /** Number among the schemes of five men. */
  readonly truth: number;
  readonly discipline: HeldDiscipline;
  readonly film: MarkedFilm;
}

export const scoutSchemes: readonly Scheme[] = schemesFor(5);

/** Luck of the films, and of what is seen beforehand: the numbers were chosen on others (seed 77, four pro plays). */
export const filmSeed = 4001;
export const seenSeed = 4002;

/** Moments that a film must have. */
export const longest = 8;

/** Plays that no number was fitted on: the demo's three, and the ball sent round two more sets. */
export function heldPlays(): readonly Play[] {
  const demo = demoPlaybook.plays.map(({ id }) => toEnginePlay(demoPlaybook, id, 'right'));
  return [...demo, swingOf('3-3'), swingOf('1-3-2')];
}

/** One held-out matchup, ready to be played. */
export function heldModel(play: Play, scheme: Scheme, discipline: HeldDiscipline, seed: number): ChanceModel {
  const matchup = usualMatchup({ play, scheme, level: 'highSchool', discipline: 'sharp', seconds: 60 });
  const men = matchup.discipline.map((_, man) =>
    discipline === 'faultless' ? disciplines.faultless : man === 0 ? disciplines.loose : disciplines.sharp,
  );
  return compileChance({ ...matchup, discipline: men }, seed);
}

/** So many films of each matchup, each with marks that are a yard off along each axis. */
export function heldFilms(perMatchup: number): readonly KnownFilm[] {
  return heldPlays().flatMap((play) =>
    scoutSchemes.flatMap((scheme, truth) =>
      heldDisciplines.flatMap((discipline) => {
        const model = heldModel(play, scheme, discipline, filmSeed);
        const films: KnownFilm[] = [];
        for (let trial = 0; trial < tries && films.length < perMatchup; trial++) {
          const film = filmOfTrace(recordTrace(model, trial), play, { error: 1, seed: filmSeed + trial });
          if (film.moments.length >= longest) films.push({ play, truth, discipline, film });
        }
        return films;
      }),
    ),
  );
}

/** Trials that are looked through for long films: many end with an early shot. */
const tries = 60;

/** The ball once round a set and again, nobody moving. */
function swingOf(id: string): Play {
  const { spots } = sets[id]!;
  const lap = movementsOf(
    spots.map(({ at }) => at),
    0,
    'highSchool',
  )[0]!;
  const way = lap.ball.map((man) => spots[man]!.id);
  return {
    id: `swing-${id}`,
    name: `The ball round a ${id}`,
    spots,
    start: { ball: way[0]!, restart: { x: 12, y: 22 } },
    beats: way.slice(1).map((to, at) => ({
      id: `pass-${at}`,
      when: at === 0 ? { kind: 'start' } : { kind: 'pass', from: way[at - 1]!, to: way[at]! },
      actions: [{ kind: 'pass', by: way[at]!, to, style: 'adjacent' }],
    })),
    reads: [],
    reset: { ball: way[0]!, then: 'again' },
  };
}
