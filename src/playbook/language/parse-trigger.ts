import type { Trigger } from '../../engine/index.ts';
import { PhraseReader, type PhraseReading, readPhrase } from './phrase.ts';
import { type PlayNames, readBeat, readOtherSpot, readSpot } from './play-names.ts';

/** The longest that a call may come after its beat, s: longer than the longest penalty would never be heard. */
export const longestCall = 60;

/**
 * Reads what starts a beat: `start`, `catch SPOT`, `pass SPOT [to SPOT]`, `arrive SPOT` or `call BEAT + SECONDS`.
 *
 * `parseTrigger('call swing + 1.5', names)` starts 1.5 s after the beat "swing" started.
 */
export function parseTrigger(text: string, names: PlayNames): PhraseReading<Trigger> {
  const reader = new PhraseReader(
    text,
    'trigger-syntax',
    '"start", "catch WR", "pass TR to TL", "arrive C" or "call swing + 1.5"',
  );
  return readPhrase(reader, () => readTrigger(reader, names));
}

function readTrigger(reader: PhraseReader, names: PlayNames): Trigger {
  if (reader.maybeWord('start')) return { kind: 'start' };
  if (reader.maybeWord('catch')) return { kind: 'catch', by: readSpot(reader, names, 'a spot', 'whose catch?') };
  if (reader.maybeWord('arrive')) return { kind: 'arrival', who: readSpot(reader, names, 'a spot', 'who arrives?') };
  if (reader.maybeWord('pass')) {
    const from = readSpot(reader, names, 'a spot', 'whose pass?');
    if (!reader.maybeWord('to')) return { kind: 'pass', from };
    return { kind: 'pass', from, to: readOtherSpot(reader, names, from, 'pass to', 'to whom?') };
  }
  if (reader.maybeWord('call')) {
    const beat = readBeat(reader, names);
    reader.symbol('plus');
    const { value, offset } = reader.number('a number of seconds', 'how many seconds after it?');
    if (value < 0 || value > longestCall)
      reader.fault('seconds-range', offset, `A call comes 0 to ${longestCall} seconds after its step, not ${value}.`);
    return { kind: 'call', beat, seconds: Math.min(Math.max(value, 0), longestCall) };
  }
  return reader.stop('start, catch, pass, arrive or call');
}
