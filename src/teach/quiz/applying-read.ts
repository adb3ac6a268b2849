import { type CarrierMoment, type Cue, compileCue, cueVocabulary, namedCue, type Play } from '../../engine/index.ts';

/** The cues that hold at a moment, by the names of the spots. */
export function cuesAt(play: Play, { carrier, cues }: Pick<CarrierMoment, 'carrier' | 'cues'>): readonly Cue[] {
  return cueVocabulary(carrier)
    .filter((_, bit) => ((cues >> bit) & 1) === 1)
    .map((cue) => namedCue(cue, (man) => play.spots[man]!.id));
}

/** The first read of the play that the man with the ball would act on at a moment: an index of its reads; undefined when it teaches him nothing for it. */
export function applyingRead(
  play: Play,
  { carrier, cues, beat }: Pick<CarrierMoment, 'carrier' | 'cues' | 'beat'>,
): number | undefined {
  const vocabulary = cueVocabulary(carrier).map((cue) => JSON.stringify(cue));
  const holds = (cue: Cue): boolean => {
    const asked = compileCue(cue, (spot) => play.spots.findIndex(({ id }) => id === spot));
    const bit = vocabulary.indexOf(JSON.stringify(asked));
    return bit >= 0 && ((cues >> bit) & 1) === 1;
  };
  const found = play.reads.findIndex(
    (read) =>
      read.carrier === play.spots[carrier]!.id &&
      (read.during === undefined || read.during === play.beats[beat]?.id) &&
      read.cues.every(holds),
  );
  return found < 0 ? undefined : found;
}
