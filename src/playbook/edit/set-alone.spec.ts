import { describe, expect, test } from 'vitest';
import { demoPlaybook } from '../demo.ts';
import { hasErrors } from '../diagnostic.ts';
import { parsePlaybook } from '../parse.ts';
import { serializePlaybook } from '../serialize.ts';
import { lineUpFor, toEnginePlay } from '../to-engine.ts';
import { moveSpot } from './edit-spots.ts';
import { groundOf } from './play-ground.ts';
import { setAlone, setAloneId } from './set-alone.ts';

const [lantern] = demoPlaybook.plays;

describe('the set without the play', () => {
  test.each(demoPlaybook.plays.map((play) => [play.id, play] as const))(
    'of %s can be played by the same six in the same places, and asks nobody for anything',
    (id, play) => {
      const book = { ...demoPlaybook, plays: [setAlone(play)] };
      const { value, diagnostics } = parsePlaybook(serializePlaybook(book));
      expect(hasErrors(diagnostics)).toBe(false);
      const [whole, alone] = [toEnginePlay(demoPlaybook, id), toEnginePlay(value!, setAloneId)];
      expect(alone.spots).toEqual(whole.spots);
      expect(alone.start).toEqual(whole.start);
      expect([...alone.beats.flatMap(({ actions }) => actions), ...alone.reads]).toEqual([]);
      expect(alone.lastTen).toBeUndefined();
      const numbers = (play: typeof whole) => lineUpFor(demoPlaybook, play).players.map(({ number }) => number);
      expect(numbers(alone)).toEqual(numbers(whole));
    },
  );

  test('is the same whatever the steps are, and another one where a man stands elsewhere', () => {
    const { beats, ...rest } = lantern!;
    expect(setAlone({ ...rest, beats: beats.slice(0, 1), reads: [], notes: 'short', id: 'other' })).toEqual(
      setAlone(lantern!),
    );
    const moved = moveSpot(lantern!, groundOf(demoPlaybook), 'TR', { x: 8, y: 14 });
    expect(moved.kind).toBe('edited');
    if (moved.kind === 'edited') expect(setAlone(moved.play)).not.toEqual(setAlone(lantern!));
  });
});
