import { type Matchup, mirrorDefenderName, type Read, type Scheme } from '../engine/index.ts';
import { printAction, printCarrierAction, printCue } from '../playbook/index.ts';

/** What the people and the reads of a trace are called, in the trace's order. */
export interface TraceNames {
  readonly play: string;
  readonly scheme: string;
  /** Six spots. */
  readonly offense: readonly string[];
  /** Defenders, the released man last when there is one. */
  readonly defense: readonly string[];
  /** The play's reads as the file has them, "free: shoot", and those that replace them in the last ten seconds. */
  readonly reads: readonly string[];
  readonly lastTenReads: readonly string[];
  /** What each beat asks for, as the file has it, "TR pass TL, C cut to -2,6", by its id. */
  readonly beats: Readonly<Record<string, string>>;
}

/** What of a matchup has names. */
export interface Named extends Pick<Matchup, 'play' | 'sense'> {
  readonly scheme: Pick<Scheme, 'notes' | 'names'>;
}

/** Names for any trace of a matchup. In a mirrored chance the man called tr stands on the left. */
export function traceNames({ play, scheme, sense }: Named): TraceNames {
  return {
    play: play.name,
    scheme: scheme.notes.name,
    offense: play.spots.map((spot) => spot.id),
    defense: scheme.names.map((name) => (sense === 1 ? name : mirrorDefenderName(name))),
    reads: play.reads.map(readName),
    lastTenReads: (play.lastTen?.reads ?? []).map(readName),
    beats: Object.fromEntries(
      [...play.beats, ...(play.lastTen?.beats ?? [])].map(({ id, actions }) => [
        id,
        actions.map((action) => printAction(action)).join(', '),
      ]),
    ),
  };
}

/** A read in the words of the file, without the man: "open C, left WL: feed C". */
function readName({ cues, then }: Read): string {
  return `${cues.length === 0 ? 'always' : cues.map(printCue).join(', ')}: ${printCarrierAction(then)}`;
}

export function attackerName(names: TraceNames, index: number): string {
  return names.offense[index] ?? 'nobody';
}

/** -1 is the keeper, as in `TraceEvent.by`. */
export function defenderName(names: TraceNames, index: number): string {
  if (index === -1) return 'the keeper';
  return names.defense[index] ?? 'the released man';
}
