import type { Interval } from '../../src/engine/index.ts';
import { heldSeed, learnSeed } from './demo-carriers.ts';
import { meanOfEstimates } from './mean-of-estimates.ts';
import { askedRow, estimateWords, type FigureTable, type Group, type Row } from './row.ts';
import type { StudiedCarrier } from './studied-carrier.ts';

/** Written down before the first run. */
const asked = {
  /** Share of what the best decisions gain that a card of three keeps. */
  kept: 0.85,
  /** Goals a chance that the best decisions must surely gain, or there is nothing to keep. */
  worthKeeping: 0.005,
  /** Carriers whose advised card may surely do worse than the play: one interval in forty lies below by luck. */
  losers: 1,
} as const;

const reads = 3;

/** What reads gain in man-ups whose luck nothing was learnt from. */
export function readsLuckGroup(carriers: readonly StudiedCarrier[], trials: number): Group {
  return {
    id: 'reads-luck',
    title: 'Reads, luck not met',
    about: `The three demo plays and every man to whom they bring the ball, against the nine five-man schemes. All is learnt in ${trials} man-ups a scheme of seed ${learnSeed} and measured in ${trials} of seed ${heldSeed}; the design was chosen on seed 1. The same man-up against several schemes is played with the same luck, and intervals allow for it. Figures are goals a chance more than leaving it to the play. "Learnt" is what a card shows in the chances that it was found in: it stands here to show how much that flatters. So few man-ups teach less than a coach's search of 200 a scheme does: the gains are small beside their intervals, and the best decisions that are known are learnt from as few, so a card can come out above them. The last line is the mean over the carriers, each counting the same.`,
    figures: gains(carriers),
    rows: [...carriers.map(keptRow), keptOfAllRow(carriers), losersRow(carriers)],
  };
}

function gains(carriers: readonly StudiedCarrier[]): FigureTable {
  const columns = gainColumns(carriers);
  const cards = [1, 2, reads].flatMap((count) => [`${count} read${count === 1 ? '' : 's'}, learnt`, 'measured']);
  return {
    head: ['man', 'chances', 'the play', ...columns.slice(0, 2).map(({ head }) => head), ...cards].concat(
      columns.slice(2).map(({ head }) => head),
    ),
    lines: [...carriers.map((carrier) => lineOf(carrier, columns)), lineOfAll(carriers, columns)],
  };
}

interface GainColumn {
  readonly head: string;
  /** `null` where he has nothing of the kind. */
  readonly of: (carrier: StudiedCarrier) => Interval | null;
}

/** The two best decisions, then what else is not a card of so many reads. */
function gainColumns(carriers: readonly StudiedCarrier[]): readonly GainColumn[] {
  const lengths = [...new Set(carriers.map(({ study }) => study.worthHolding))].sort();
  return [
    { head: 'best, scheme not known', of: ({ study }) => study.best.gain },
    { head: 'best, scheme known', of: ({ study }) => study.known.best.gain },
    { head: `as many as are worth holding (${lengths.join(', ')})`, of: adviceGain },
    { head: 'taught', of: ({ taught }) => taught?.gain ?? null },
    { head: 'by eye', of: ({ byEye }) => byEye.gain },
  ];
}

function adviceGain({ study }: StudiedCarrier): Interval {
  return study.cards[study.worthHolding]!.gain;
}

function lineOf(carrier: StudiedCarrier, columns: readonly GainColumn[]): readonly string[] {
  const { name, study, flattered_byCard } = carrier;
  const words = columns.map(({ of }) => orNothing(of(carrier)));
  const cards = [1, 2, reads].flatMap((count) => [
    flattered_byCard[count]!.toFixed(3),
    estimateWords(study.cards[count]!.gain),
  ]);
  const sizes = `${study.learntFrom} and ${study.measuredIn}`;
  return [name, sizes, estimateWords(study.goOn), ...words.slice(0, 2), ...cards, ...words.slice(2)];
}

function orNothing(gain: Interval | null): string {
  return gain === null ? '-' : estimateWords(gain);
}

function lineOfAll(carriers: readonly StudiedCarrier[], columns: readonly GainColumn[]): readonly string[] {
  const meanOf = (of: GainColumn['of']): string =>
    estimateWords(meanOfEstimates(carriers.flatMap((carrier) => of(carrier) ?? [])));
  const words = columns.map(({ of }) => meanOf(of));
  const cards = [1, 2, reads].flatMap((count) => {
    const learnt = carriers.reduce((sum, { flattered_byCard }) => sum + flattered_byCard[count]!, 0);
    return [(learnt / carriers.length).toFixed(3), meanOf(({ study }) => study.cards[count]!.gain)];
  });
  const total = (of: (carrier: StudiedCarrier) => number) => carriers.reduce((sum, carrier) => sum + of(carrier), 0);
  const sizes = `${total(({ study }) => study.learntFrom)} and ${total(({ study }) => study.measuredIn)}`;
  return ['all', sizes, meanOf(({ study }) => study.goOn), ...words.slice(0, 2), ...cards, ...words.slice(2)];
}

function keptRow({ id, name, study }: StudiedCarrier): Row {
  const label = { id: `reads-kept-${id}`, what: `${name}: kept by a card of three` };
  return keptBy(label, study.cards[reads]!.gain, study.best.gain);
}

function keptOfAllRow(carriers: readonly StudiedCarrier[]): Row {
  return keptBy(
    { id: 'reads-kept-all', what: 'all: kept by a card of three' },
    meanOfEstimates(carriers.map(({ study }) => study.cards[reads]!.gain)),
    meanOfEstimates(carriers.map(({ study }) => study.best.gain)),
  );
}

function keptBy(label: { readonly id: string; readonly what: string }, card: Interval, best: Interval): Row {
  const share = card.mean / best.mean;
  const isWorthIt = best.low > asked.worthKeeping;
  const said = isWorthIt ? share.toFixed(2) : 'nothing to keep';
  return askedRow(
    label,
    `${asked.kept} or more`,
    `${said}: ${estimateWords(card)} of ${estimateWords(best)}`,
    `where the best decisions surely gain over ${asked.worthKeeping}`,
    !isWorthIt || share >= asked.kept,
  );
}

function losersRow(carriers: readonly StudiedCarrier[]): Row {
  const losers = carriers.filter((carrier) => adviceGain(carrier).high < 0);
  const names = losers.map(({ name }) => name).join('; ');
  return askedRow(
    { id: 'reads-losers', what: 'men whose card of the length that is worth holding surely does worse than the play' },
    `${asked.losers} at most`,
    `${losers.length} of ${carriers.length}${names === '' ? '' : `: ${names}`}`,
    'high end of the gain under 0',
    losers.length <= asked.losers,
  );
}
