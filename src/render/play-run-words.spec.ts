import { expect, it } from 'vitest';
import type { Play, TraceEvent } from '../engine/index.ts';
import { handMadePlay, handMadeTrace } from './hand-made.fixture.ts';
import { playRunWords } from './play-run-words.ts';

// "open" starts "skip", "skip" starts "finish".
const [open, skip, finish] = ['open', 'skip', 'finish'];
const last = { id: 'pinch', when: { kind: 'start' }, actions: [] } as const;
const changing: Play = { ...handMadePlay, lastTen: { beats: [last, { ...last, id: 'shoot' }], reads: [] } };

function told(play: Play, main: readonly string[], late: readonly string[] = []): string {
  const beats: readonly TraceEvent[] = [
    ...main.map((beat) => ({ kind: 'beat', time: 8, beat, lastTen: false }) as const),
    ...late.map((beat) => ({ kind: 'beat', time: 21, beat, lastTen: true }) as const),
  ];
  return playRunWords({ ...handMadeTrace(), events: beats }, play);
}

it.each([
  { name: 'whole', words: told(handMadePlay, [open, skip, finish]), expected: 'Of the play: 3 of 3 steps begun.' },
  {
    name: 'in part, and one step twice',
    words: told(handMadePlay, [open, skip, skip]),
    expected: 'Of the play: 2 of 3 steps begun, not "finish".',
  },
  { name: 'not at all', words: told(handMadePlay, []), expected: 'The play never began.' },
  {
    name: 'without its last ten seconds',
    words: told(changing, [open, skip, finish]),
    expected: 'Of the play: 3 of 3 steps begun.',
  },
  {
    name: 'in its last ten seconds alone',
    words: told(changing, [], ['pinch']),
    expected: 'The play never began. Of the last ten seconds: 1 of 2 steps begun, not "shoot".',
  },
])('a play that was run $name', ({ words, expected }) => expect(words).toBe(expected));
