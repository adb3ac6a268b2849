import {
  cardOfList,
  type Interval,
  type Play,
  type ReadCard,
  type ValuedCard,
  type ValuedDecisions,
} from '../engine/index.ts';
import { actionWords, count, counted, perChance, percent, readWords, withInterval } from '../render/index.ts';
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
    wrapParagraph(keptSentence(study, card), tableWidth),
    schemeTable(study, reads, names),
  ].join('\n\n');
}

function heading({ carrier, comes, learntFrom, measuredIn }: ReadsStudy, play: Play, names: ReportNames): string {
  return wrapParagraph(
    `${names.play}, ${play.spots[carrier]!.id} with the ball. The play brings it to him in ${percent(comes)} of man-ups. ` +
      `Learnt from ${count(learntFrom)} of these, measured in ${count(measuredIn)} others.`,
    tableWidth,
  );
}

function waysTable({ goOn, best, cards, taught, byEye, cardPlayed }: ReadsStudy): string {
  const way = (name: string, { goals, gain }: ValuedDecisions) => [name, withInterval(goals), gainText(gain)];
  const rows = [
    ['leaves it to the play', withInterval(goOn), ''],
    ...(taught === null ? [] : [way("by the play's own reads", taught)]),
    way('by eye', byEye),
    ...cards.map(({ goals, gain, list }, reads) => [
      list.rules.length < reads ? `a card of ${counted(reads, 'read')} is no better` : cardName(reads),
      withInterval(goals),
      gainText(gain),
    ]),
    way('the longest card, played in full', cardPlayed),
    way('the best decisions that are known', best),
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

function cardName(reads: number): string {
  return reads === 0 ? 'one thing in any case' : `a card of ${counted(reads, 'read')}`;
}

/** "+0.03 (0.01 to 0.05)". */
function gainText({ mean, low, high }: Interval): string {
  const signed = (value: number): string => `${value < -smallest ? '-' : '+'}${perChance(Math.abs(value))}`;
  return `${signed(mean)} (${signed(low)} to ${signed(high)})`;
}

/** What is printed as 0.00 has no minus. */
const smallest = 0.005;

/** The card as it is said to a player. */
function cardText({ reads, lastResort }: ReadCard, carrier: string): string {
  const lines = reads.map((read, at) => `${at + 1}. ${sentence(readWords(read))}`);
  const last = lastResort === null ? `${carrier} goes on with the play` : actionWords(lastResort);
  const otherwise = reads.length === 0 ? sentence(last) : `Otherwise ${last}.`;
  return [...lines, otherwise].map((line) => wrapParagraph(line, tableWidth)).join('\n');
}

function sentence(clause: string): string {
  return `${clause.charAt(0).toUpperCase()}${clause.slice(1)}.`;
}

function keptSentence({ best }: ReadsStudy, card: ValuedCard): string {
  if (best.gain.low < smallest) {
    return (
      'The best decisions that are known bring hardly more than the play here, or no more than luck would: there is little for him to ' +
      'decide, and a card cannot be told from none. More --trials would tell, or another man has more to decide: name him after --carrier.'
    );
  }
  const kept = card.gain.mean / best.gain.mean;
  return `This card keeps ${percent(kept)} of the ${perChance(best.gain.mean)} goals a chance that the best decisions bring.`;
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
