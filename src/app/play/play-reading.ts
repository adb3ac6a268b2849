import type { Play } from '../../engine/index.ts';
import {
  type Diagnostic,
  type Playbook,
  type PlayEntry,
  parsePlaybook,
  serializePlaybook,
  toEnginePlay,
} from '../../playbook/index.ts';

/** A play as it stands in the document: readable or not, with all that is to be said of it. */
export interface PlayReading {
  /** Undefined when it cannot be drawn. */
  readonly play: Play | undefined;
  /** What is wrong with it, or with what it stands on, the heaviest first. */
  readonly problems: readonly Diagnostic[];
  /** It can be simulated: nothing of it, the team, the sets and the schemes is wrong. */
  readonly isWhole: boolean;
}

/** Reads plays on one ground. Each is read once, also when it comes again as another object: from a drag, then from the document. */
export type PlayReader = (entry: PlayEntry) => PlayReading;

/** The last plays that a reader remembers: those between which a drag and its undo go. */
const keptReadings = 8;

/** A reader of single plays of a playbook that may be unfinished: what is wrong with another one does not stop any. */
export function createPlayReader(playbook: Playbook): PlayReader {
  const readings = new Map<string, PlayReading>();
  return (entry) => {
    const text = JSON.stringify(entry);
    const reading = readings.get(text) ?? readPlayOf(playbook, entry);
    // The oldest goes first: a Map keeps the order in which keys came.
    readings.delete(text);
    readings.set(text, reading);
    if (readings.size > keptReadings) readings.delete(readings.keys().next().value ?? '');
    return reading;
  };
}

/** Reads one play of a playbook that may be unfinished, alone. */
export function readPlayOf(playbook: Playbook, entry: PlayEntry): PlayReading {
  const alone: Playbook = { ...playbook, plays: [entry] };
  const { value, diagnostics } = parsePlaybook(serializePlaybook(alone));
  const problems = diagnostics.filter(({ severity }) => severity !== 'note');
  return { play: drawable(value ?? alone, entry.id), problems, isWhole: value !== undefined };
}

// A play with a fault can still be drawn as far as it can be read: the coach mends it where he sees it.
function drawable(playbook: Playbook, id: string): Play | undefined {
  try {
    return toEnginePlay(playbook, id);
  } catch (error) {
    if (error instanceof TypeError || error instanceof RangeError) return undefined;
    throw error;
  }
}
