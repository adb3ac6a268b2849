import { cardOfList, type Play, type SpotId } from '../engine/index.ts';
import { hardlyEverWords, perChance, percent } from '../render/index.ts';
import type { ReadsStudy } from '../worker/index.ts';
import { cardText, gainText } from './reads-text.ts';
import type { ReportNames } from './report-names.ts';
import { formatTable, tableWidth } from './table.ts';
import { wrapParagraph } from './wrap-paragraph.ts';

/** The cards of all men to whom a play brings the ball, and what each is worth. `studies` are those of `spots`. */
export function chainText(
  studies: readonly (ReadsStudy | null)[],
  spots: readonly SpotId[],
  play: Play,
  reads: number,
  names: ReportNames,
): string {
  const rows = studies.map((study, at) => {
    if (study === null) return [spots[at]!, '-', '-', '-', '-'];
    const card = study.cards[Math.min(reads, study.cards.length - 1)]!;
    return [
      spots[at]!,
      percent(study.comes),
      perChance(study.goOn.mean),
      gainText(card.gain),
      gainText(study.best.gain),
    ];
  });
  const table = formatTable(
    [
      { title: 'man with the ball', align: 'left', flexible: true },
      { title: 'comes in', align: 'right' },
      { title: 'the play', align: 'right' },
      { title: 'his card adds', align: 'right' },
      { title: 'best known adds', align: 'right' },
    ],
    rows,
  );
  const cards = studies.map((study, at) => cardOf(study, spots[at]!, play, reads));
  const note =
    'Goals from the moment that he can act. What one card adds is not added to what another does: each was tried alone.';
  return [
    `${names.play}, every man to whom the play brings the ball.`,
    table,
    wrapParagraph(note, tableWidth),
    ...cards,
  ].join('\n\n');
}

function cardOf(study: ReadsStudy | null, spot: SpotId, play: Play, reads: number): string {
  if (study === null) return wrapParagraph(`${spot}: ${hardlyEverWords(spot)}.`, tableWidth);
  const { list } = study.cards[Math.min(reads, study.cards.length - 1)]!;
  return `${spot}\n${cardText(cardOfList(play, study.carrier, list, study.at), spot)}`;
}
