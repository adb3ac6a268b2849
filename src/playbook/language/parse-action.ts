import type { Action, Order, Point, Read, RunKind } from '../../engine/index.ts';
import { nearestName } from './nearest-name.ts';
import { PhraseReader, type PhraseReading, readPhrase, unknownName } from './phrase.ts';
import { type PlayNames, readOtherSpot, readPlace, readSpot } from './play-names.ts';

/** What a carrier can be told to do, in a beat or as the end of a read. */
export type CarrierAction = Read['then'];

export interface ActionReading<A> extends PhraseReading<A> {
  /** The man who acts, when the phrase was read so far; `unknownName` when his name is wrong. */
  readonly by?: string;
}

/** Words for runs off the ball, and what they are called inside. */
export const runWords = {
  cut: 'cut',
  pop: 'pop',
  sneak: 'sneak',
  flash: 'flash',
  replace: 'replace',
  backup: 'backUp',
  getback: 'getBack',
} as const satisfies Record<string, RunKind>;

const passWords = { pass: 'adjacent', skip: 'skip', feed: 'feed' } as const;
const carrierVerbs = ['pass', 'skip', 'feed', 'carry', 'step', 'fake', 'hold', 'shoot'] as const;
/** A read may also give the play up for now. */
const readVerbs = [...carrierVerbs, 'reset'];
const verbs = [...carrierVerbs, ...Object.keys(runWords), 'pick', 'seal'];

/** The longest that a man may be told to hold the ball, s. */
export const longestHold = 20;

/**
 * Reads one action of a beat: `SPOT verb ...` (docs/playbook-format.md has the grammar).
 *
 * `parseAction('C pop to 6,9', names)` is a run of C to (6, 9) that goes at once.
 */
export function parseAction(text: string, names: PlayNames): ActionReading<Action> {
  const reader = new PhraseReader(text, 'action-syntax', '"TR pass TL" or "C pop to 6,9"');
  let by = unknownName;
  let verb = '';
  const reading = readPhrase(reader, () => {
    by = readSpot(reader, names, 'the spot of the man who acts');
    verb = reader.peek()?.text ?? '';
    return readVerb(reader, names, by, verbs) as Action;
  });
  if (reading.value !== undefined) return reading;
  // "WL pass" says enough to go on with: somebody gets the ball.
  const guess = reading.guess ?? guessedPass(by, verb);
  return { ...reading, by, ...(guess !== undefined && { guess }) };
}

function guessedPass(by: string, verb: string): Action | undefined {
  if (!Object.hasOwn(passWords, verb)) return undefined;
  return { kind: 'pass', by, to: unknownName, style: passWords[verb as keyof typeof passWords] };
}

/** Reads the end of a read, which has no spot before the verb because the carrier acts: `skip WL`, `step to 4,10`, `shoot`. */
export function parseCarrierAction(text: string, carrier: string, names: PlayNames): ActionReading<CarrierAction> {
  const reader = new PhraseReader(
    text,
    'read-syntax',
    '"pass TL" or "shoot" (the carrier acts, so no spot comes first)',
  );
  return readPhrase(reader, () => readVerb(reader, names, carrier, readVerbs) as CarrierAction);
}

function readVerb(reader: PhraseReader, names: PlayNames, by: string, allowed: readonly string[]): Order {
  const verb = readVerbWord(reader, allowed);
  if (Object.hasOwn(passWords, verb)) {
    const to = readOtherSpot(reader, names, by, `${verb} to`, `${verb} to whom?`);
    return { kind: 'pass', by, to, style: passWords[verb as keyof typeof passWords] };
  }
  if (Object.hasOwn(runWords, verb)) return readRun(reader, names, by, runWords[verb as keyof typeof runWords]);
  return readOtherVerb(reader, names, by, verb, allowed === readVerbs);
}

/** The verb, or the likeliest one after reporting a misspelt one. */
function readVerbWord(reader: PhraseReader, allowed: readonly string[]): string {
  const token = reader.peek();
  const isKnown = token?.kind === 'word' && allowed.includes(token.text);
  const near = isKnown || token?.kind !== 'word' ? undefined : nearestName(token.text, allowed);
  if (!isKnown && near === undefined) return reader.stop(`a verb (${allowed.join(', ')})`);
  if (near !== undefined) reader.slip(`"${near}"`);
  const { text } = reader.anyWord('a verb');
  return near ?? text;
}

function readOtherVerb(reader: PhraseReader, names: PlayNames, by: string, verb: string, isRead: boolean): Order {
  switch (verb) {
    case 'carry':
      return { kind: 'carry', by, path: readPath(reader, names, 'carry to where?') };
    case 'step':
      // Only a read may leave the place open: he steps in from where he stands.
      if (isRead && reader.maybeWord('in')) return { kind: 'runIn', by };
      reader.word('to', 'step to where?');
      return { kind: 'stepIn', by, to: readPlace(reader, names) };
    case 'fake':
      return { kind: 'fake', by, toward: readOtherSpot(reader, names, by, 'fake to', 'fake to whom?') };
    case 'hold':
      return { kind: 'hold', by, seconds: readSeconds(reader) };
    case 'reset':
      return { kind: 'reset', by };
    case 'pick': {
      reader.word('at', 'pick where, and on whom?');
      const at = readPlace(reader, names);
      reader.word('on', 'pick on whom?');
      const on = readOtherSpot(reader, names, by, 'pick his own man by picking for', 'pick on whom?');
      return { kind: 'pick', by, at, on };
    }
    case 'seal':
      reader.word('on', 'seal on whom?');
      return { kind: 'seal', by, on: readOtherSpot(reader, names, by, 'seal for', 'seal on whom?') };
    default:
      return { kind: 'shot', by };
  }
}

function readRun(reader: PhraseReader, names: PlayNames, by: string, run: RunKind): Action {
  const path = readPath(reader, names, 'run to where?');
  const waits = reader.maybeWord('when');
  if (waits) reader.word('open');
  return { kind: 'run', run, by, path, go: waits ? 'whenOpen' : 'now' };
}

/** `{via place} to place` */
function readPath(reader: PhraseReader, names: PlayNames, question: string): readonly Point[] {
  const path: Point[] = [];
  while (reader.maybeWord('via')) path.push(readPlace(reader, names));
  if (!reader.maybeWord('to')) {
    reader.stop(path.length === 0 ? '"to" or "via"' : '"to" or another "via"', question);
  }
  path.push(readPlace(reader, names));
  return path;
}

function readSeconds(reader: PhraseReader): number {
  const { value, offset } = reader.number('a number of seconds', 'hold for how many seconds?');
  if (value <= 0 || value > longestHold) {
    reader.fault('seconds-range', offset, `Hold for more than 0 and at most ${longestHold} seconds, not ${value}.`);
  }
  return Math.min(Math.max(value, 0), longestHold);
}
