import {
  type Movement,
  type ProbeAdvice,
  type SchemeBelief,
  type SeenManUp,
  type SignId,
  signIds,
  type Tick,
} from '../engine/index.ts';
import {
  breakWords,
  concedesWords,
  movementName,
  perChance,
  percent,
  probeRule,
  type ReasonNames,
  reasonOfMark,
  reasonOfTick,
  signClause,
  signWords,
  tenth,
  withInterval,
} from '../render/index.ts';
import type { MeasuredPlay, SchemeConcedes } from '../teach/index.ts';
import { formatTable, tableWidth } from './table.ts';
import { wrapParagraph } from './wrap-paragraph.ts';

/** Who is who in what is printed. */
export interface ScoutNames extends ReasonNames {
  readonly opponent: string;
  /** The play whose set is on the field. */
  readonly play: string;
}

/** Man-ups of which something was seen, and a few words for each. */
interface SeenTitled {
  readonly manUps: readonly SeenManUp[];
  readonly titles: readonly string[];
}

/** What is believed and why. `schemes` are named in the order of the belief's; `shown` are the signs that the set can show. */
export function beliefText(
  belief: SchemeBelief,
  seen: SeenTitled,
  shown: readonly SignId[],
  names: ScoutNames,
): string {
  const order = belief.schemes.map((_, at) => at).sort((a, b) => belief.schemes[b]!.share - belief.schemes[a]!.share);
  const rows = order.map((at) => {
    const { before, share, stars, discipline } = belief.schemes[at]!;
    return [names.schemes[at]!.name, percent(before), percent(share), howWords(share, stars, discipline, names)];
  });
  const table = formatTable(
    [
      { title: 'scheme', align: 'left', flexible: true },
      { title: 'before', align: 'right' },
      { title: 'next', align: 'right' },
      { title: 'if it is this one', align: 'left', flexible: true },
    ],
    rows,
  );
  return [
    wrap(seenSentence(seen.manUps, names)),
    table,
    wrap(verdict(belief, names)),
    ...manUpLines(belief, seen, names),
    ...reasonLines(belief, seen.manUps, names),
    ...tickLines(belief, seen.manUps, shown, names),
  ].join('\n\n');
}

function seenSentence(manUps: readonly SeenManUp[], { opponent, play }: ScoutNames): string {
  const films = manUps.flatMap(({ film }) => film ?? []);
  const ticks = manUps.flatMap((one) => one.ticks ?? []);
  const moments = films.reduce((sum, film) => sum + film.moments.length, 0);
  const marks = films.reduce(
    (sum, { moments: all }) => sum + all.reduce((men, one) => men + one.defenders.length, 0),
    0,
  );
  const from = [
    ...(marks === 0
      ? []
      : [`${count(marks, 'mark')} in ${count(moments, 'moment')} of ${count(films.length, 'man-up')}`]),
    ...(ticks.length === 0 ? [] : [count(ticks.length, 'tick')]),
  ];
  const seen =
    from.length === 0
      ? 'Nothing is marked or ticked yet, so this is what is usual, or what was written down of them'
      : `From ${from.join(' and ')}`;
  return `${opponent} against the set of ${play}. ${seen}.`;
}

function verdict({ schemes, between, alike, manUps, oneScheme }: SchemeBelief, names: ScoutNames): string {
  const [first, second] = between;
  const name = (at: number): string => `the ${lower(names.schemes[at]!.name)}`;
  const best = schemes[first]!;
  if (manUps.length > 1 && oneScheme < 0.5)
    return `The man-ups do not look like one scheme: they seem to mix. Most often ${name(first)}, ${percent(best.share)}, then ${name(second)}, ${percent(schemes[second]!.share)}.`;
  if (best.share >= 0.995) return `It is ${name(first)}, as far as this can tell.`;
  const isSeen = schemes.some(({ before, share }) => Math.abs(before - share) > 0.01);
  const same = isSeen ? alike.filter((at) => schemes[at]!.share > 0.02) : [];
  const doubt =
    same.length === 0
      ? ''
      : ` Nothing that was seen tells it from ${listed(same.map(name))}: with this set and this ball they stand alike.`;
  const next = !isSeen || second === first ? '' : ` Next is ${name(second)}, ${percent(schemes[second]!.share)}.`;
  return `Most likely ${name(first)}, ${percent(best.share)}.${doubt}${next}`;
}

function listed(words: readonly string[]): string {
  return words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`;
}

function howWords(
  share: number,
  stars: readonly number[],
  discipline: SchemeBelief['schemes'][number]['discipline'],
  { spots }: ScoutNames,
): string {
  if (share < 0.05) return '';
  const [grade, sure] = Object.entries(discipline).reduce((best, one) => (one[1]! > best[1]! ? one : best));
  const star = stars.indexOf(Math.max(0, ...stars));
  const whom = star >= 0 && stars[star]! > 0 ? `, on ${spots[star]} (${percent(stars[star]!)})` : '';
  return `${grade} (${percent(sure!)})${whom}`;
}

/** Reasons that are printed. */
const most = 6;

/** Which scheme each man-up looks like by its own marks. */
function manUpLines({ manUps }: SchemeBelief, { titles }: SeenTitled, names: ScoutNames): readonly string[] {
  if (manUps.length === 0) return [];
  const lines = manUps.map(({ share_byScheme }, at) => {
    const most = share_byScheme.indexOf(Math.max(...share_byScheme));
    return wrap(`${titles[at]}: the ${lower(names.schemes[most]!.name)}, ${percent(share_byScheme[most]!)}.`);
  });
  return [['Each man-up by itself looks most like', ...lines].join('\n')];
}

function reasonLines(belief: SchemeBelief, manUps: readonly SeenManUp[], names: ScoutNames): readonly string[] {
  if (belief.reasons.length === 0) return [];
  const lines = belief.reasons.slice(0, most).map((reason) => {
    const { ball, time } = manUps[reason.film]!.film!.moments[reason.moment]!;
    return wrap(`${tenth(time)} s: ${reasonOfMark(reason, names.spots[ball] ?? '', names)}`);
  });
  return [['Why', ...lines].join('\n')];
}

/** What was ticked, and how much it says. */
function tickLines(
  { tickReasons }: SchemeBelief,
  manUps: readonly SeenManUp[],
  shown: readonly SignId[],
  names: ScoutNames,
): readonly string[] {
  const lines = manUps.flatMap(({ ticks = [] }, manUp) =>
    ticks.map((tick, at) => {
      const reason = tickReasons.find((one) => one.manUp === manUp && one.tick === at);
      return reason === undefined
        ? wrap(tickLine(tick, shown))
        : wrap(reasonOfTick(reason, tick.seen, signWords(tick.sign), names));
    }),
  );
  return lines.length === 0 ? [] : [lines.join('\n')];
}

/** A tick that tells the two likeliest hardly apart, or nothing at all. */
function tickLine({ sign, seen }: Tick, shown: readonly SignId[]): string {
  const words = seen ? lower(signWords(sign)) : `not so that ${lower(signWords(sign))}`;
  return shown.includes(sign)
    ? `Ticked: ${words}. It hardly tells the likeliest two apart.`
    : `Ticked: ${words}. This set cannot show that, so it counts for nothing.`;
}

/** What is worth running to find out. */
export function probeText(
  advice: ProbeAdvice,
  movements: readonly Movement[],
  calls: readonly MeasuredPlay[],
  names: ScoutNames & { readonly calls: readonly string[] },
): string {
  const rows = advice.movements.map(({ movement, watch, gain, seconds, passes }) => [
    movementName(movement),
    `${passes}, ${tenth(seconds)} s`,
    `+${gain.toFixed(3)}`,
    signClause(watch, true),
  ]);
  const table = formatTable(
    [
      { title: 'movement', align: 'left', flexible: true },
      { title: 'passes', align: 'right' },
      { title: 'worth', align: 'right' },
      { title: 'watch whether', align: 'left', flexible: true },
    ],
    rows,
  );
  const [best] = advice.movements;
  const call = names.calls[advice.without.call] ?? '';
  return [
    'What to run to find out',
    table,
    wrap(
      `Without a probe call ${call}, ${perChance(advice.without.goals)} goals a man-up; to know the scheme for certain would be worth ${advice.mostGain.toFixed(3)} more.`,
    ),
    ...(best === undefined ? [] : [wrap(probeRule(best, movements, names))]),
    wrap(
      `How to read this. Worth: goals a man-up more when the best of ${calls.length === 1 ? 'one call' : `${calls.length} calls`} is called after the answer, if whoever looks is mistaken once in ten. What the movement itself opens or costs is not counted.`,
    ),
  ].join('\n\n');
}

/** What our own schemes concede. */
export function manDownText(answers: readonly (SchemeConcedes & { readonly name: string })[], runs: string): string {
  const rows = answers.map(({ name, goals, breaks: [first] }) => [
    name,
    withInterval(goals),
    first === undefined ? 'hardly a shot' : breakWords(first),
  ]);
  const named = answers.map(({ name, goals, breaks }) => ({ scheme: name, goals, breaks }));
  return [
    `Our own man-down, against ${runs}`,
    formatTable(
      [
        { title: 'scheme', align: 'left', flexible: true },
        { title: 'concedes', align: 'right' },
        { title: 'where it breaks first', align: 'left', flexible: true },
      ],
      rows,
    ),
    wrap(concedesWords(named)),
  ].join('\n\n');
}

/** The signs with their statements, as help has them. */
export function signList(): string {
  return signIds.map((id) => `  ${id.padEnd(20)} ${signWords(id)}`).join('\n');
}

function count(value: number, one: string): string {
  return `${value} ${value === 1 ? one : `${one}s`}`;
}

function lower(words: string): string {
  return `${words.charAt(0).toLowerCase()}${words.slice(1)}`;
}

function wrap(words: string): string {
  return wrapParagraph(words, tableWidth);
}
