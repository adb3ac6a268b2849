/**
 * Why each red row of docs/validation.md is red, by the row's id: one plain sentence, and what would mend it where that is known.
 * A cause whose row is green, or that names no row, is reported by `npm run validate` so that it does not outlive its reason.
 */
export const causes: Readonly<Record<string, string>> = {
  'start-10m-10U': slowStart(),
  'start-10m-12U': slowStart(),
  'start-10m-14U': slowStart(),
  'far-played':
    'Nobody shoots from there: a carrier thinks of a shot only inside his range, and units that may wait for a better look do. The model alone gives such a shot the published odds (row far-model).',
};

function slowStart(): string {
  return 'Theirs is from memory. One top speed and one drag cannot give a boy both his measured 20 yd and a quick first 10 m: the preset keeps the measured one (docs/models/people.md).';
}
