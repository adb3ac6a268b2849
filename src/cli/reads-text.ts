import {
  cardOfList,
  type Interval,
  type Play,
  type ReadCard,
  type ValuedCard,
  type ValuedDecisions,
} from '../engine/index.ts';
import {
  cardEachWords,
  cardName,
  fakesWords,
  gradeWords,
  holdingWords,
  keptWords,
  perChance,
  readCardWords,
  readsBasisWords,
  wayNames,
  wholeWords,
  withInterval,
} from '../render/index.ts';
import type { ReadsStudy } from '../worker/index.ts';
import { type ReportNames, schemeName } from './report-names.ts';
import { formatTable, tableWidth } from './table.ts';
import { wrapParagraph } from './wrap-paragraph.ts';

/** What a carrier's reads are worth, and the card of so many reads in words. */
export function readsText(study: ReadsStudy, play: Play, reads: number, names: ReportNames): string {
  const card = study.cards[Math.min(reads, study.cards.length - 1)]!;
  return [
    heading(study, play, names),
    waysTable(study),
    cardText(cardOfList(play, study.carrier, card.list, study.at), play.spots[study.carrier]!.id),
    wrapParagraph(
      `${keptSentence(study, card)} ${holdingWords(study.worthHolding, study.cards.length - 1)}`,
      tableWidth,
    ),
    wrapParagraph(
      wholeWords(study.whole.now, study.whole.gain_byCard[Math.min(reads, study.cards.length - 1)]!, perChance),
      tableWidth,
    ),
    schemeTable(study, reads, names),
    wrapParagraph(
      cardEachWords(study.known.cards[Math.min(reads, study.cards.length - 1)]!.more, perChance),
      tableWidth,
    ),
    ...gradesText(study, play),
    fakesText(study, play),
  ].join('\n\n');
}

/** Each read that the play teaches him, by itself. */
function gradesText({ grades, carrier, at }: ReadsStudy, play: Play): readonly string[] {
  if (grades.length === 0) return [];
  const told = grades.map((grade, number) => {
    const { read, comes, verdict, notes } = gradeWords(play, carrier, grade, at, perChance);
    return wrapParagraph([`${number + 1}. ${read}`, comes, verdict, ...notes].join(' '), tableWidth);
  });
  return [['The reads that the play teaches him, each by itself:', ...told].join('\n')];
}

function fakesText({ fakes, carrier }: ReadsStudy, play: Play): string {
  const rows = fakes.map(({ toward, gain }) => [
    `${play.spots[carrier]!.id} fakes to ${play.spots[toward]!.id}`,
    gainText(gain),
  ]);
  const table = formatTable(
    [
      { title: 'shown at his first look, then by eye', align: 'left', flexible: true },
      { title: 'more than by eye', align: 'right' },
    ],
    rows,
  );
  return `${table}\n${wrapParagraph(fakesWords(play, fakes, perChance), tableWidth)}`;
}

function heading(study: ReadsStudy, play: Play, names: ReportNames): string {
  const who = `${names.play}, ${play.spots[study.carrier]!.id} with the ball.`;
  return wrapParagraph(`${who} ${readsBasisWords(study)}`, tableWidth);
}

function waysTable(study: ReadsStudy): string {
  const { goOn, best, cards, taught, byEye, cardPlayed } = study;
  const { known } = study;
  const way = (name: string, { goals, gain }: ValuedDecisions) => [name, withInterval(goals), gainText(gain)];
  const rows = [
    [wayNames.goOn, withInterval(goOn), ''],
    ...(taught === null ? [] : [way(wayNames.taught, taught)]),
    way(wayNames.byEye, byEye),
    ...cards.map(({ goals, gain, list }, reads) => [
      cardName(reads, list.rules.length),
      withInterval(goals),
      gainText(gain),
    ]),
    way(wayNames.cardPlayed, cardPlayed),
    way(wayNames.best, best),
    way(wayNames.known, known.best),
  ];
  return formatTable(
    [
      { title: 'how he decides', align: 'left', flexible: true },
      { title: 'goals from there', align: 'right' },
      { title: 'more than the play', align: 'right' },
    ],
    rows,
  );
}

/** "+0.03 (+0.01 to +0.05)". */
export function gainText({ mean, low, high }: Interval): string {
  const signed = (value: number): string => `${value < -smallest ? '-' : '+'}${perChance(Math.abs(value))}`;
  return `${signed(mean)} (${signed(low)} to ${signed(high)})`;
}

/** What is printed as 0.00 has no minus. */
const smallest = 0.005;

/** The card as it is said to a player. */
export function cardText(card: ReadCard, carrier: string): string {
  const { reads, otherwise } = readCardWords(card, carrier);
  const lines = reads.map((read, at) => `${at + 1}. ${read}`);
  return [...lines, otherwise].map((line) => wrapParagraph(line, tableWidth)).join('\n');
}

function keptSentence({ best }: ReadsStudy, card: ValuedCard): string {
  const kept = keptWords(best.gain, card.gain);
  if (best.gain.low >= smallest) return kept;
  return `${kept} More --trials would tell, or another man has more to decide: name him after --carrier.`;
}

function schemeTable({ byScheme, cards }: ReadsStudy, reads: number, names: ReportNames): string {
  const at = Math.min(reads, cards.length - 1);
  return formatTable(
    [
      { title: 'against', align: 'left', flexible: true },
      { title: 'the play', align: 'right' },
      { title: 'best known', align: 'right' },
      { title: 'gain by the card', align: 'right' },
    ],
    byScheme.map(({ scheme, goOn, best, gain_byCard }) => [
      schemeName(scheme, names),
      perChance(goOn.mean),
      perChance(best.mean),
      gainText(gain_byCard[at]!),
    ]),
  );
}
