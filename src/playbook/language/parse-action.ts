import type { Action, Point, Read, RunKind } from '../../engine/index.ts';
import { nearestName } from './nearest-name.ts';
import { type PhraseFault, PhraseReader, readPhrase } from './phrase.ts';
import { type PlayNames, readOtherSpot, readPlace, readSpot } from './play-names.ts';

/** What a carrier can be told to do, in a beat or as the end of a read. */
export type CarrierAction = Read['then'];

export interface ActionReading<A> {
  /** Absent when anything is wrong. */
  readonly value?: A;
  readonly faults: readonly PhraseFault[];
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
const verbs = [...carrierVerbs, ...Object.keys(runWords), 'pick', 'seal'];

/** The longest that a man may be told to hold the ball, s. */
const longestHold = 20;

/**
 * Reads one action of a beat: `SPOT verb ...` (docs/playbook-format.md has the grammar).
 *
 * `parseAction('C pop to 6,9', names)` is a run of C to (6, 9) that goes at once.
 */
export function parseAction(text: string, names: PlayNames): ActionReading<Action> {
  const reader = new PhraseReader(text, 'action-syntax', '"TR pass TL" or "C pop to 6,9"');
  return readPhrase(reader, () => {
    const by = readSpot(reader, names, 'the spot of the man who acts');
    return readVerb(reader, names, by, verbs);
  });
}

/** Reads the end of a read, which has no spot before the verb because the carrier acts: `skip WL`, `step to 4,10`, `shoot`. */
export function parseCarrierAction(text: string, carrier: string, names: PlayNames): ActionReading<CarrierAction> {
  const reader = new PhraseReader(
    text,
    'read-syntax',
    '"pass TL" or "shoot" (the carrier acts, so no spot comes first)',
  );
  return readPhrase(reader, () => readVerb(reader, names, carrier, carrierVerbs) as CarrierAction);
}

function readVerb(reader: PhraseReader, names: PlayNames, by: string, allowed: readonly string[]): Action {
  const token = reader.peek();
  if (token?.kind !== 'word' || !allowed.includes(token.text)) {
    const near = token === undefined ? undefined : nearestName(token.text, allowed);
    return reader.stop(
      `${near === undefined ? '' : `"${near}" or another`}${near === undefined ? 'a' : ''} verb (${allowed.join(', ')})`,
    );
  }
  reader.anyWord('a verb');
  const verb = token.text;
  if (Object.hasOwn(passWords, verb)) {
    const to = readOtherSpot(reader, names, by, `${verb} to`);
    return { kind: 'pass', by, to, style: passWords[verb as keyof typeof passWords] };
  }
  if (Object.hasOwn(runWords, verb)) return readRun(reader, names, by, runWords[verb as keyof typeof runWords]);
  return readOtherVerb(reader, names, by, verb);
}

function readOtherVerb(reader: PhraseReader, names: PlayNames, by: string, verb: string): Action {
  switch (verb) {
    case 'carry':
      return { kind: 'carry', by, path: readPath(reader, names) };
    case 'step':
      reader.word('to');
      return { kind: 'stepIn', by, to: readPlace(reader, names) };
    case 'fake':
      return { kind: 'fake', by, toward: readOtherSpot(reader, names, by, 'fake to') };
    case 'hold':
      return { kind: 'hold', by, seconds: readSeconds(reader) };
    case 'pick': {
      reader.word('at');
      const at = readPlace(reader, names);
      reader.word('on');
      return { kind: 'pick', by, at, on: readOtherSpot(reader, names, by, 'pick his own man by picking for') };
    }
    case 'seal':
      reader.word('on');
      return { kind: 'seal', by, on: readOtherSpot(reader, names, by, 'seal for') };
    default:
      return { kind: 'shot', by };
  }
}

function readRun(reader: PhraseReader, names: PlayNames, by: string, run: RunKind): Action {
  const path = readPath(reader, names);
  const waits = reader.maybeWord('when');
  if (waits) reader.word('open');
  return { kind: 'run', run, by, path, go: waits ? 'whenOpen' : 'now' };
}

/** `{via place} to place` */
function readPath(reader: PhraseReader, names: PlayNames): readonly Point[] {
  const path: Point[] = [];
  while (reader.maybeWord('via')) path.push(readPlace(reader, names));
  if (!reader.maybeWord('to')) reader.stop(path.length === 0 ? '"to" or "via"' : '"to" or another "via"');
  path.push(readPlace(reader, names));
  return path;
}

function readSeconds(reader: PhraseReader): number {
  const { value, offset } = reader.number('a number of seconds');
  if (value <= 0 || value > longestHold) {
    reader.fault('seconds-range', offset, `Hold for more than 0 and at most ${longestHold} seconds, not ${value}.`);
  }
  return value;
}
