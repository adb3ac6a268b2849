import { type ReactNode, useCallback, useMemo, useRef } from 'react';
import { placeOnField } from '../../engine/index.ts';
import { type Chance, type Opponent, type Playbook, ruleCodeOf, toEnginePlay } from '../../playbook/index.ts';
import { PickList } from '../controls/pick-list.tsx';
import { useLook } from '../look/look.ts';
import panel from '../opponents/panel.module.css';
import { readPlayOf } from '../play/play-reading.ts';
import { usePlaybook } from '../shell/desk.tsx';
import { BeliefPanel } from './belief-panel.tsx';
import { cameraAt } from './camera-marks.ts';
import { CameraPanel } from './camera-panel.tsx';
import { placeDoubt } from './camera-words.ts';
import { FilmControls, filmKey } from './film-controls.tsx';
import styles from './film-screen.module.css';
import { useFilm } from './film-state.ts';
import type { MarkOrder } from './film-tool.ts';
import { FilmView } from './film-view.tsx';
import { drawnLines, knownField } from './known-places.ts';
import { ManUpList } from './man-up-list.tsx';
import { MomentBar } from './moment-bar.tsx';
import { momentAt, momentsOf, setCues } from './moment-edits.ts';
import { MomentField } from './moment-field.tsx';
import { OpenFilm } from './open-film.tsx';
import { SignTicks } from './sign-ticks.tsx';
import { type SetOnFilm, useBelief, useScoutQuestion } from './use-belief.ts';
import { useFilmClock } from './use-film-clock.ts';
import { scoutedChances, useMarking } from './use-marking.ts';

/** Film of an opponent, or what was seen of him without one: man-ups are marked moment by moment, and the marks say which scheme it is. */
export default function FilmScreen({ opponent }: { readonly opponent: Opponent }): ReactNode {
  const playbook = usePlaybook();
  const palette = useLook((state) => state.shown);
  const { film, hand, filmTime, lit, begins, change } = useFilm();
  const video = useRef<HTMLVideoElement>(null);
  const clock = useFilmClock(video, film?.url);
  const { markings } = useMemo(() => ruleCodeOf(playbook), [playbook]);
  const known = useMemo(() => knownField(markings), [markings]);
  const lines = useMemo(() => drawnLines(markings), [markings]);
  const camera = useMemo(() => cameraAt(hand.views, filmTime, known), [hand.views, filmTime, known]);
  const { chance, time, edit, order } = useMarking(opponent);
  const set = useSetOnFilm(playbook);
  const setOf = useSetOfChance(playbook, set?.id);
  const chances = useMemo(() => scoutedChances(playbook, opponent), [playbook, opponent]);
  const question = useScoutQuestion(playbook, opponent, set?.id ?? '');
  const news = useBelief(playbook, set === undefined ? undefined : question, setOf, chances);
  const moment = chance === undefined ? undefined : momentsOf(chance)[momentAt(chance, time)];
  const shownMoment = moment?.by === 'tick' ? undefined : moment;
  const litHere =
    lit !== undefined && lit.chance === chance?.id && Math.abs(lit.time - (moment?.time ?? -1)) < 0.02
      ? lit.defender
      : undefined;
  const goToMoment = useCallback(
    (id: string, seconds: number) => {
      const start = useFilm.getState().begins[id];
      if (useFilm.getState().film !== undefined && start !== undefined) clock.goTo(start + seconds);
      change({ chance: id, time: seconds, selected: undefined });
    },
    [clock, change],
  );
  const orderOnFilm = (what: MarkOrder): void => {
    if (camera.kind === 'none') {
      change({ notice: 'First say where the camera looks: four places of the field, pressed in the film.' });
      return;
    }
    const seen = placeOnField(camera, what.at);
    if (seen === undefined) {
      change({ notice: 'This is above the ground. Press where his feet are.' });
      return;
    }
    change({ notice: placeDoubt(seen) ?? '' });
    order({ ...what, at: seen.at }, 'film');
  };
  return (
    <section className={styles.screen} aria-label={`Film of ${opponent.name}`}>
      <p className={styles.narrow}>
        Marking wants a wider screen: a tablet or a computer. What was marked, and what it says, can be read here.
      </p>
      <div className={styles.columns}>
        <div className={styles.column}>
          {film === undefined ? (
            <section className={`${panel.panel} ${styles.wide}`} aria-label="The film">
              <OpenFilm small={false} />
            </section>
          ) : (
            <section className={`${panel.panel} ${styles.wide}`} aria-label="The film">
              {/* biome-ignore lint/a11y/useSemanticElements: a fieldset is for fields */}
              <div
                className={styles.film}
                role="group"
                // biome-ignore lint/a11y/noNoninteractiveTabindex: it has the keys of the film
                tabIndex={0}
                aria-label="The film: space plays and pauses, arrow keys step by a frame, B, D and A choose ball, defender and attacker, Escape lets go"
                onKeyDown={(event) => {
                  if (filmKey(event, clock)) event.preventDefault();
                }}
              >
                <FilmView
                  video={video}
                  camera={camera}
                  known={known}
                  lines={lines}
                  moment={shownMoment}
                  lit={litHere}
                  onOrder={orderOnFilm}
                />
              </div>
              <FilmControls clock={clock} video={video} />
              <OpenFilm small />
            </section>
          )}
          {film !== undefined && film.width > 0 && (
            <div className={styles.wide}>
              <CameraPanel camera={camera} known={known} />
            </div>
          )}
          {chance !== undefined && set !== undefined && (
            <div className={styles.ticks}>
              <SignTicks
                chance={chance}
                onCues={(cues) => edit('tick what was seen', (now) => setCues(now, cues, set.ball))}
              />
            </div>
          )}
        </div>
        <div className={styles.column}>
          <ManUpList opponent={opponent} />
          {chance !== undefined && (
            <section className={panel.panel} aria-label="The moment">
              <h3 className={panel.title}>The moment on the field</h3>
              <MomentBar
                chance={chance}
                time={time}
                moment={shownMoment}
                canMark={film === undefined || begins[chance.id] !== undefined}
                edit={edit}
                onGo={(seconds) => goToMoment(chance.id, seconds)}
              />
              <div className={styles.field}>
                <MomentField
                  playbook={playbook}
                  palette={palette}
                  moment={shownMoment}
                  set={shownMoment?.offense === undefined ? (set?.spots ?? []) : []}
                  lit={litHere}
                  onOrder={(what) => order(what, film === undefined ? 'field' : 'film')}
                />
              </div>
            </section>
          )}
          {set !== undefined && (
            <>
              <PickList
                label="The set on the film is that of"
                value={set.id}
                options={set.choices}
                onChange={(play) => change({ play })}
              />
              <BeliefPanel
                playbook={playbook}
                opponent={opponent}
                question={question}
                news={news}
                onShow={(id, seconds, defender) => {
                  goToMoment(id, seconds);
                  change({ lit: { chance: id, time: seconds, defender } });
                }}
              />
            </>
          )}
          {set === undefined && (
            <p className={panel.quiet}>
              The playbook has no play whose set can be drawn. Write one in the Play place: its set tells who is who.
            </p>
          )}
        </div>
      </div>
    </section>
  );
}

/** The play whose set is taken to be on the film, and those to choose from. */
function useSetOnFilm(playbook: Playbook) {
  const wanted = useFilm((state) => state.play);
  return useMemo(() => {
    const plays = playbook.plays.filter(({ archived }) => archived !== true);
    const entry = plays.find(({ id }) => id === wanted) ?? plays[0];
    const play = entry === undefined ? undefined : readPlayOf(playbook, entry).play;
    if (entry === undefined || play === undefined) return undefined;
    return {
      id: entry.id,
      spots: play.spots,
      ball: play.start.ball,
      choices: plays.map(({ id, name, set }) => ({ value: id, text: `${name} (${set})` })),
    };
  }, [playbook, wanted]);
}

/** The set of each man-up: that of the call, run from its side, where it is known; else the one that is chosen. */
function useSetOfChance(playbook: Playbook, chosen: string | undefined): (chance: Chance) => SetOnFilm | undefined {
  return useMemo(() => {
    const known = new Map<string, SetOnFilm | undefined>();
    const read = (id: string | undefined, side: 'left' | 'right'): SetOnFilm | undefined => {
      const entry = playbook.plays.find((one) => one.id === id);
      if (entry === undefined) return undefined;
      const key = `${side} ${entry.id}`;
      // A play that cannot be drawn has no set.
      if (!known.has(key)) {
        const isDrawn = readPlayOf(playbook, entry).play !== undefined;
        const play = isDrawn ? toEnginePlay(playbook, entry.id, side) : undefined;
        known.set(key, play && { spots: play.spots, restart: play.start.restart });
      }
      return known.get(key);
    };
    return ({ call, fromSide = 'right' }) => read(call, fromSide) ?? read(chosen, fromSide);
  }, [playbook, chosen]);
}
