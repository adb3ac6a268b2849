import { type ReactNode, useCallback, useLayoutEffect, useMemo, useRef } from 'react';
import type { Opponent } from '../../playbook/index.ts';
import { PickList } from '../controls/pick-list.tsx';
import panel from '../opponents/panel.module.css';
import { usePlaybook } from '../shell/desk.tsx';
import { BeliefPanel } from './belief-panel.tsx';
import { FilmPart } from './film-part.tsx';
import styles from './film-screen.module.css';
import { useFilm } from './film-state.ts';
import { ManUpList } from './man-up-list.tsx';
import { readingsOf } from './man-up-reading.ts';
import { setCues } from './moment-edits.ts';
import { MomentPart } from './moment-part.tsx';
import { SignTicks } from './sign-ticks.tsx';
import { useBelief, useScoutQuestion } from './use-belief.ts';
import { useFilmClock } from './use-film-clock.ts';
import { useFilmMemory } from './use-film-memory.ts';
import { type Marking, scoutedChances, useMarking } from './use-marking.ts';
import { useSetOfChance, useSetOnFilm } from './use-set-on-film.ts';

/** Film of an opponent, or what was seen of him without one: man-ups are marked moment by moment, and the marks say which scheme it is. */
export default function FilmScreen({ opponent }: { readonly opponent: Opponent }): ReactNode {
  const { of, turnTo } = useFilm();
  // A film belongs to one opponent: on the page of another it would begin his man-ups.
  useLayoutEffect(() => turnTo(opponent.id), [turnTo, opponent.id]);
  return of === opponent.id ? <FilmOf opponent={opponent} /> : null;
}

function FilmOf({ opponent }: { readonly opponent: Opponent }): ReactNode {
  const video = useRef<HTMLVideoElement>(null);
  const url = useFilm(({ film }) => film?.url);
  const clock = useFilmClock(video, url);
  useFilmMemory(opponent.id);
  const marking = useMarking(opponent);
  const set = useSetOnFilm(usePlaybook());
  return (
    <section className={styles.screen} aria-label={`Film of ${opponent.name}`}>
      <p className={styles.narrow}>
        Marking wants a wider screen: a tablet or a computer. What was marked, and what it says, can be read here.
      </p>
      <div className={styles.columns}>
        <div className={styles.column}>
          <FilmPart opponent={opponent} clock={clock} video={video} marking={marking} />
          {marking.chance !== undefined && set !== undefined && (
            <div className={styles.ticks}>
              <SignTicks
                chance={marking.chance}
                onCues={(cues) => marking.edit('tick what was seen', (now) => setCues(now, cues, set.ball))}
              />
            </div>
          )}
        </div>
        <div className={styles.column}>
          <MarkedColumn opponent={opponent} marking={marking} set={set} goTo={clock.goTo} />
        </div>
      </div>
    </section>
  );
}

/** The man-ups, the moment that is marked, and what all of them say. */
function MarkedColumn({
  opponent,
  marking: { chance, ...marking },
  set,
  goTo,
}: {
  readonly opponent: Opponent;
  readonly marking: Marking;
  readonly set: ReturnType<typeof useSetOnFilm>;
  readonly goTo: (seconds: number) => void;
}): ReactNode {
  const playbook = usePlaybook();
  const { question, news } = useScouting(opponent, set?.id);
  const readings = useMemo(() => readingsOf(playbook, question, news), [playbook, question, news]);
  const goToMoment = useGoToMoment(goTo);
  return (
    <>
      <ManUpList opponent={opponent} readings={readings} />
      {chance !== undefined && (
        <MomentPart marking={{ chance, ...marking }} chance={chance} set={set?.spots ?? []} onGo={goToMoment} />
      )}
      {set === undefined ? (
        <p className={panel.quiet}>
          The playbook has no play whose set can be drawn. Write one in the Play place: its set tells who is who.
        </p>
      ) : (
        <WhatTheyPlay opponent={opponent} set={set} question={question} news={news} onGo={goToMoment} />
      )}
    </>
  );
}

function WhatTheyPlay({
  opponent,
  set,
  question,
  news,
  onGo,
}: ReturnType<typeof useScouting> & {
  readonly opponent: Opponent;
  readonly set: NonNullable<ReturnType<typeof useSetOnFilm>>;
  readonly onGo: (chance: string, seconds: number) => void;
}): ReactNode {
  const playbook = usePlaybook();
  const change = useFilm((state) => state.change);
  return (
    <>
      <PickList
        label="The set on the film is that of"
        value={set.id}
        options={set.choices}
        onChange={(play) => change({ play })}
      />
      <BeliefPanel
        {...{ playbook, opponent, question, news }}
        onShow={(id, seconds, defender) => {
          onGo(id, seconds);
          change({ lit: { chance: id, time: seconds, defender } });
        }}
      />
    </>
  );
}

/** What is asked of all man-ups of an opponent, and what they say. */
function useScouting(opponent: Opponent, set: string | undefined) {
  const playbook = usePlaybook();
  const setOf = useSetOfChance(playbook, set);
  const chances = useMemo(() => scoutedChances(playbook, opponent), [playbook, opponent]);
  const question = useScoutQuestion(playbook, opponent, set ?? '');
  const news = useBelief(playbook, set === undefined ? undefined : question, setOf, chances);
  return { question, news };
}

/** Goes to a moment of a man-up, in the film too where it is known to begin there. */
function useGoToMoment(goTo: (seconds: number) => void): (chance: string, seconds: number) => void {
  const change = useFilm((state) => state.change);
  return useCallback(
    (id, seconds) => {
      const { film, begins } = useFilm.getState();
      const start = begins[id];
      if (film !== undefined && start !== undefined) goTo(start + seconds);
      change({ chance: id, time: seconds, selected: undefined });
    },
    [goTo, change],
  );
}
