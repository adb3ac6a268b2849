import type { Play, SpotId } from '../../engine/index.ts';
import { type FieldMarkings, viewAround } from '../field-scene.ts';
import { attackerDisc, attackerLetters, usualSizes } from '../people-marks.ts';
import { stepMarks } from '../play-scene.ts';
import { playSteps } from '../play-steps.ts';
import type { Primitive, SceneLayer } from '../scene.ts';
import { bareField } from './bare-field.ts';
import { groundShare, placesOf } from './ground-share.ts';
import { scaledField, scaledPlay } from './scaled-play.ts';

/** What one man looks at: himself and what he does in full, everybody else pale. */
export interface SpotPicture {
  readonly scene: SceneLayer;
  readonly faded: readonly Primitive[];
}

/** Pictures for one man, all with one view, so that he can leaf from one to the next. */
export interface SpotPictures {
  /** Width over height. */
  readonly shape: number;
  /** Where he stands when the set is up. */
  home(spot: SpotId): SpotPicture;
  /** What he does in a step, from 1; and what is thrown to him in it. */
  move(spot: SpotId, number: number): SpotPicture;
}

/** Pictures of a play that are to be drawn `width` points wide. */
export function spotPictures(play: Play, field: FieldMarkings, width: number): SpotPictures {
  const share = groundShare(play, width, lettersWanted);
  const [small, ground] = [scaledPlay(play, share), scaledField(field, share)];
  const view = viewAround(placesOf(small), { left: -1, top: -share * 6.5, width: 2, height: share * 18 });
  const under = bareField(ground, view);
  const shown = (faded: readonly Primitive[], own: readonly Primitive[]): SpotPicture => ({
    scene: { view, items: own },
    faded: [...under, ...faded],
  });
  return {
    shape: view.width / view.height,
    home: (spot) => shown(peopleBut(small, spot), himself(small, spot)),
    move: (spot, number) => moveOf(small, spot, number, shown),
  };
}

/** Letters in a picture are to be this large, points, as far as there is room: those of the page's own words. */
const lettersWanted = 11;

function moveOf(
  play: Play,
  spot: SpotId,
  number: number,
  shown: (faded: readonly Primitive[], own: readonly Primitive[]) => SpotPicture,
): SpotPicture {
  const step = playSteps(play)[number - 1];
  if (step === undefined) throw new RangeError(`invalid step: ${number} (expected 1 to ${play.beats.length})`);
  const { actions } = step.beat;
  const throwers = actions.flatMap((one) => (one.kind === 'pass' && one.to === spot ? [one.by] : []));
  // Who throws to him on the run throws from where his run ends: so his run is shown too.
  const own = actions.filter((one) => one.by === spot || throwers.includes(one.by));
  const others = actions.filter((one) => !own.includes(one));
  const part = (men: Play, some: typeof actions): readonly Primitive[] =>
    stepMarks(men, number, { ...step, beat: { ...step.beat, actions: some } });
  const but = { ...play, spots: play.spots.filter(({ id }) => id !== spot) };
  const alone = { ...play, spots: play.spots.filter(({ id }) => id === spot) };
  return shown(part(but, others), part(alone, own));
}

function peopleBut(play: Play, spot: SpotId): readonly Primitive[] {
  const others = play.spots.filter(({ id }) => id !== spot);
  return [
    ...others.map(({ at }) => attackerDisc(at, false)),
    ...others.map(({ at, id }) => attackerLetters(at, id, false)),
  ];
}

function himself(play: Play, spot: SpotId): readonly Primitive[] {
  const large = { ...usualSizes, attacker: 1.5 * usualSizes.attacker };
  return play.spots
    .filter(({ id }) => id === spot)
    .flatMap(({ at, id }) => [attackerDisc(at, true, large), attackerLetters(at, id, true)]);
}
