import { useEffect, useMemo, useState } from 'react';
import type { Point, SchemeBelief } from '../../engine/index.ts';
import type { Chance, Opponent, Playbook } from '../../playbook/index.ts';
import {
  filmOfMarks,
  type ReadMarks,
  type ScoutQuestion,
  scoutBelief,
  scoutedBefore,
  walkMovements,
} from '../../teach/index.ts';
import { useDesk } from '../shell/desk.tsx';
import { useFilm } from './film-state.ts';

/** A man-up whose marks say something, as the engine reads them. */
export interface ReadChance extends ReadMarks {
  readonly chance: Chance;
  /** Its number in the list of man-ups, from 1. */
  readonly number: number;
  /** Names of the six whom it was read for. */
  readonly spots: readonly string[];
}

/** The set of six that a man-up is read for, and where its ball is put in play. */
export interface SetOnFilm {
  readonly spots: readonly { readonly id: string; readonly at: Point }[];
  readonly restart: Point;
}

export type BeliefNews =
  /** Nothing is marked or ticked. */
  | { readonly kind: 'nothing' }
  | { readonly kind: 'working' }
  /** `manUps`: those of which something was marked or ticked, in the order of the belief's. `isOld`: it is of marks that have changed since. */
  | {
      readonly kind: 'found';
      readonly belief: SchemeBelief;
      readonly manUps: readonly ReadChance[];
      readonly isOld: boolean;
    }
  | { readonly kind: 'failed'; readonly reason: string };

/** The schemes in question with their weights before any marks: as the coach set them, else as the opponent's entry or the level has them. */
export function useScoutQuestion(playbook: Playbook, opponent: Opponent, play: string): ScoutQuestion {
  return useMemo(
    () => ({ play, side: 'right', level: null, ...scoutedBefore(playbook, opponent) }),
    [playbook, opponent, play],
  );
}

/** A pause in the marking after which it is asked, ms: whoever sets five men asks once. */
const pause = 350;

/** What all marks and ticks of an opponent's man-ups say of his scheme; asked of a thread when they change. */
export function useBelief(
  playbook: Playbook,
  question: ScoutQuestion | undefined,
  setOf: (chance: Chance) => SetOnFilm | undefined,
  chances: readonly Chance[],
): BeliefNews {
  const { threads } = useDesk();
  const [found, setFound] = useState<{ readonly text: string; readonly news: BeliefNews }>();
  const read = useMemo(
    () =>
      chances.flatMap((chance, at): readonly ReadChance[] => {
        const set = setOf(chance);
        if (set === undefined) return [];
        const { spots, restart } = set;
        const marked = filmOfMarks(spots, chance.marks ?? [], restart);
        return [{ chance, number: at + 1, spots: spots.map(({ id }) => id), ...marked }];
      }),
    [chances, setOf],
  );
  const text = JSON.stringify([
    question,
    read.map(({ chance, film, ticks }) => [chance.id, film, ticks]),
    playbook.team.level,
    playbook.schemes ?? [],
  ]);
  const hasSaid = read.some(({ film, ticks }) => film !== null || ticks.length > 0);
  // The text stands for everything that is asked.
  // biome-ignore lint/correctness/useExhaustiveDependencies: as above
  useEffect(() => {
    if (!hasSaid || question === undefined) return undefined;
    const stop = new AbortController();
    const timer = setTimeout(() => {
      ask(threads, playbook, question, read, stop.signal).then(
        (news) => setFound({ text, news }),
        (error: unknown) => {
          if (stop.signal.aborted) return;
          const reason = error instanceof Error ? error.message : String(error);
          setFound({ text, news: { kind: 'failed', reason } });
        },
      );
    }, pause);
    return () => {
      clearTimeout(timer);
      stop.abort();
    };
  }, [text, hasSaid, threads]);
  if (!hasSaid || question === undefined) return { kind: 'nothing' };
  if (found === undefined) return { kind: 'working' };
  if (found.news.kind === 'found' && found.text !== text) return { ...found.news, isOld: true };
  return found.text === text ? found.news : { kind: 'working' };
}

async function ask(
  pool: ReturnType<typeof useDesk>['threads'],
  playbook: Playbook,
  question: ScoutQuestion,
  read: readonly ReadChance[],
  signal: AbortSignal,
): Promise<BeliefNews> {
  const manUps = read.filter(({ film, ticks }) => film !== null || ticks.length > 0);
  const isTicked = manUps.some(({ ticks }) => ticks.length > 0);
  const walked = isTicked ? await walkedFor(pool, playbook, question, signal) : [];
  const seen = manUps.map(({ film, ticks }) => ({ ticks, ...(film !== null && { film }) }));
  const belief = await scoutBelief(pool, playbook, question, { manUps: seen }, walked, { signal });
  return { kind: 'found', belief, manUps, isOld: false };
}

/** Some seconds of work, and good for as long as set, level and schemes stay. */
async function walkedFor(
  pool: ReturnType<typeof useDesk>['threads'],
  playbook: Playbook,
  question: ScoutQuestion,
  signal: AbortSignal,
): Promise<Awaited<ReturnType<typeof walkMovements>>> {
  const { walked, change } = useFilm.getState();
  const entry = playbook.plays.find(({ id }) => id === question.play);
  const own = (playbook.schemes ?? []).filter(({ id }) => question.schemes.some((one) => one.id === id));
  const walkedSchemes = question.schemes.map(({ id, discipline }) => [id, discipline]);
  const key = JSON.stringify([playbook.team.level, entry, playbook.sets ?? [], own, walkedSchemes]);
  const known = walked.get(key);
  if (known !== undefined) return known;
  const made = await walkMovements(pool, playbook, question, { signal });
  change({ walked: new Map(useFilm.getState().walked).set(key, made) });
  return made;
}
