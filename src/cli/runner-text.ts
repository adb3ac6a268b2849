import { type Play, type RunnerStudy, runnerCardOf, timeOfLook, type ValuedDecisions } from '../engine/index.ts';
import {
  hardlyCalledWords,
  perChance,
  runBasisWords,
  runCardName,
  runnerCardWords,
  runWayNames,
  tenth,
  whenToGoWords,
  withInterval,
} from '../render/index.ts';
import { gainText } from './reads-text.ts';
import { type ReportNames, schemeName } from './report-names.ts';
import type { StudiedRun } from './studied-run.ts';
import { formatTable, tableWidth } from './table.ts';
import { wrapParagraph } from './wrap-paragraph.ts';

/** When a man should make one run, what that is worth, and the card of so many reads in words. */
export function runnerText({ order, study }: StudiedRun, play: Play, reads: number, names: ReportNames): string {
  const who = `${names.play}, ${play.spots[order.runner]!.id} without the ball, step "${play.beats[order.beat]!.id}".`;
  if (study === null) {
    return wrapParagraph(`${who} Here ${hardlyCalledWords(play.spots[order.runner]!.id)}.`, tableWidth);
  }
  const card = study.cards[Math.min(reads, study.cards.length - 1)]!;
  const { goes, otherwise } = runnerCardWords(runnerCardOf(play, order, card.list));
  const said = [goes, ...(otherwise === null ? [] : [otherwise])].map((line) => wrapParagraph(line, tableWidth));
  return [
    wrapParagraph(`${who} ${runBasisWords(study)}`, tableWidth),
    waysTable(study),
    said.join('\n'),
    wrapParagraph(whenToGoWords(study, card), tableWidth),
    timesTable(study),
    schemeTable(study, reads, names),
  ].join('\n\n');
}

function waysTable({ goOn, byTime, cards, best }: RunnerStudy): string {
  const way = (name: string, { goals, gain }: ValuedDecisions) => [name, withInterval(goals), gainText(gain)];
  const rows = [
    [runWayNames.goOn, withInterval(goOn), ''],
    way(runWayNames.atOnce, byTime[0]!),
    ...cards.map((card, reads) => way(runCardName(reads, card, timeOfLook(card.list.latest)), card)),
    way(runWayNames.best, best),
  ];
  return formatTable(
    [
      { title: 'when he goes', align: 'left', flexible: true },
      { title: 'goals from the call', align: 'right' },
      { title: 'more than the play', align: 'right' },
    ],
    rows,
  );
}

/** Every second time: a look more or less is nothing that a man could keep to. */
function timesTable({ byTime }: RunnerStudy): string {
  return formatTable(
    [
      { title: 's after the call', align: 'left', flexible: true },
      { title: 'goals from the call', align: 'right' },
      { title: 'more than the play', align: 'right' },
    ],
    byTime
      .filter((_, look) => look % 2 === 0)
      .map(({ after, goals, gain }) => [tenth(after), withInterval(goals), gainText(gain)]),
  );
}

function schemeTable({ byScheme, cards }: RunnerStudy, reads: number, names: ReportNames): string {
  const at = Math.min(reads, cards.length - 1);
  return formatTable(
    [
      { title: 'against', align: 'left', flexible: true },
      { title: 'the play', align: 'right' },
      { title: 'gain at once', align: 'right' },
      { title: 'gain by the card', align: 'right' },
    ],
    byScheme.map(({ scheme, goOn, atOnce, gain_byCard }) => [
      schemeName(scheme, names),
      perChance(goOn.mean),
      gainText(atOnce),
      gainText(gain_byCard[at]!),
    ]),
  );
}
