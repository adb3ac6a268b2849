import { expect, it } from 'vitest';
import { busyPlay, samplePlay } from '../chance/sample-matchup.fixture.ts';
import { complexityOf } from './complexity.ts';

// Counted by hand in sample-matchup.fixture.ts. What changes in the last ten seconds of the busy play is not counted.
it.each([
  { play: samplePlay, complexity: { passes: 4, skips: 1, reads: 0, movers: 1 } },
  { play: busyPlay, complexity: { passes: 3, skips: 1, reads: 3, movers: 5 } },
])('what $play.id asks of a unit', ({ play, complexity }) => expect(complexityOf(play)).toEqual(complexity));
