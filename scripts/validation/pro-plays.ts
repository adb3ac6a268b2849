import { type Action, type Beat, type Play, type Point, type RunKind, sets } from '../../src/engine/index.ts';

/*
 * Four plays that a pro unit might run, our own: one from each family of sets, of swings, skips, carries and crease movement,
 * with no taught shot and no read. They stand for "what pro units do" in docs/validation.md; no published list of plays exists.
 * Each is about ten passes long, so that most chances see it once or twice before the penalty is over.
 */

/** From three on top: down the right alley, back over the point, and the skips to the low wings. */
const trawl = createPlay('trawl', '3-3', 'P', { x: 12, y: 22 }, [
  beat('give', { kind: 'start' }, pass('P', 'TR')),
  beat('alley', thrown('P', 'TR'), carry('TR', at(11, 9)), run('cut', 'C', 'now', at(2, 5))),
  beat('low', arrived('TR'), pass('TR', 'WR'), run('replace', 'P', 'now', at(4, 14))),
  beat('skip', thrown('TR', 'WR'), hold('WR', 0.4), pass('WR', 'TL', 'skip'), run('cut', 'C', 'now', at(-1, 5))),
  beat('across', thrown('WR', 'TL'), pass('TL', 'WL'), run('replace', 'TR', 'now', at(9, 12))),
  beat('look', thrown('TL', 'WL'), hold('WL', 0.5), pass('WL', 'P'), run('flash', 'C', 'now', at(-2, 8))),
  beat('over', thrown('WL', 'P'), run('cut', 'C', 'now', at(0, 6)), pass('P', 'TR')),
  beat('again', thrown('P', 'TR'), pass('TR', 'WL', 'skip')),
  beat('top', thrown('TR', 'WL'), pass('WL', 'TL')),
  beat('point', thrown('WL', 'TL'), pass('TL', 'P')),
]);

/** From two on top and one behind: round to X, out of the corner, and over the top to the far wing. */
const ratchet = createPlay('ratchet', '2-3-1', 'TR', { x: 18, y: 21 }, [
  beat('over', { kind: 'start' }, pass('TR', 'TL')),
  beat('down', thrown('TR', 'TL'), pass('TL', 'WL'), run('cut', 'C', 'now', at(-2, 6))),
  beat('behind', thrown('TL', 'WL'), pass('WL', 'X'), run('sneak', 'WR', 'whenOpen', at(6, 3))),
  beat(
    'round',
    thrown('WL', 'X'),
    carry('X', at(6, -3.5)),
    run('pop', 'C', 'now', at(-1, 9)),
    run('replace', 'TR', 'now', at(6, 13)),
  ),
  beat('out', arrived('X'), pass('X', 'WR'), run('cut', 'WR', 'now', at(10, 5)), run('cut', 'C', 'now', at(2, 6))),
  beat('up', thrown('X', 'WR'), pass('WR', 'TR')),
  beat('far', thrown('WR', 'TR'), hold('TR', 0.3), pass('TR', 'WL', 'skip'), run('replace', 'X', 'now', at(0, -5))),
  beat('back', thrown('TR', 'WL'), hold('WL', 0.4), pass('WL', 'TL')),
  beat('home', thrown('WL', 'TL'), pass('TL', 'TR')),
]);

/** From one on top with two on the crease: the wings and X stretch the ring, the crease men trade places. */
const spindle = createPlay('spindle', '1-4-1', 'P', { x: -14, y: 22 }, [
  beat('wing', { kind: 'start' }, pass('P', 'WR')),
  beat(
    'trade',
    thrown('P', 'WR'),
    hold('WR', 0.4),
    pass('WR', 'X'),
    pick('CL', at(0, 6), 'CR'),
    run('cut', 'CR', 'now', at(-1, 8), at(-4, 5)),
  ),
  beat('behind', thrown('WR', 'X'), carry('X', at(-4, -4.5)), run('cut', 'CL', 'now', at(3, 5))),
  beat('side', arrived('X'), pass('X', 'WL'), run('replace', 'WR', 'now', at(11, 10))),
  beat('climb', thrown('X', 'WL'), carry('WL', at(-9, 11)), run('replace', 'P', 'now', at(3, 14))),
  beat('top', arrived('WL'), pass('WL', 'P'), run('flash', 'CR', 'now', at(-2, 7.5))),
  beat('wide', thrown('WL', 'P'), pass('P', 'WR'), run('replace', 'WL', 'now', at(-12, 7))),
  beat('cross', thrown('P', 'WR'), hold('WR', 0.3), pass('WR', 'WL', 'skip'), run('cut', 'CR', 'now', at(-3, 5))),
  beat('reset', thrown('WR', 'WL'), pass('WL', 'P')),
]);

/** From two on top and two in the slot: down the left side, a curl over a pick inside, and the skips to the far low man. */
const bellows = createPlay('bellows', '2-2-2-low', 'TR', { x: 16, y: 22 }, [
  beat('over', { kind: 'start' }, pass('TR', 'TL')),
  beat('low', thrown('TR', 'TL'), pass('TL', 'WL'), run('replace', 'TR', 'now', at(3, 14))),
  beat(
    'curl',
    thrown('TL', 'WL'),
    carry('WL', at(-10, 4)),
    pick('CL', at(1, 6), 'CR'),
    run('cut', 'CR', 'now', at(0, 8.5), at(-3.5, 5.5)),
  ),
  beat('seep', arrived('CR'), run('sneak', 'WR', 'whenOpen', at(4.5, 2.5)), run('flash', 'CL', 'now', at(2, 8))),
  beat('up', arrived('WL'), hold('WL', 0.6), pass('WL', 'TL')),
  beat(
    'swing',
    thrown('WL', 'TL'),
    pass('TL', 'TR'),
    run('replace', 'WR', 'now', at(9, 3)),
    run('cut', 'CL', 'now', at(3, 6)),
  ),
  beat('side', thrown('TL', 'TR'), pass('TR', 'WR'), run('replace', 'WL', 'now', at(-9, 2))),
  beat('skip', thrown('TR', 'WR'), hold('WR', 0.4), pass('WR', 'TL', 'skip')),
  beat('last', thrown('WR', 'TL'), pass('TL', 'WL'), run('cut', 'CR', 'now', at(-3, 6))),
  beat('out', thrown('TL', 'WL'), hold('WL', 0.4), pass('WL', 'TR', 'skip')),
]);

export const proPlays: readonly Play[] = [trawl, ratchet, spindle, bellows];

function createPlay(id: string, set: string, starter: string, restart: Point, beats: readonly Beat[]): Play {
  const { spots } = sets[set]!;
  return {
    id,
    name: `${id} (${set})`,
    spots,
    start: { ball: starter, restart },
    beats,
    reads: [],
    reset: { ball: starter, then: 'again' },
  };
}

function beat(id: string, when: Beat['when'], ...actions: readonly Action[]): Beat {
  return { id, when, actions };
}

function thrown(from: string, to: string): Beat['when'] {
  return { kind: 'pass', from, to };
}

function arrived(who: string): Beat['when'] {
  return { kind: 'arrival', who };
}

function pass(by: string, to: string, style: 'adjacent' | 'skip' = 'adjacent'): Action {
  return { kind: 'pass', by, to, style };
}

function carry(by: string, ...path: readonly Point[]): Action {
  return { kind: 'carry', by, path };
}

function run(kind: RunKind, by: string, go: 'now' | 'whenOpen', ...path: readonly Point[]): Action {
  return { kind: 'run', run: kind, by, path, go };
}

function pick(by: string, where: Point, on: string): Action {
  return { kind: 'pick', by, at: where, on };
}

function hold(by: string, seconds: number): Action {
  return { kind: 'hold', by, seconds };
}

function at(x: number, y: number): Point {
  return { x, y };
}
