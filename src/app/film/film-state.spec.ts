import { expect, it } from 'vitest';
import { useFilm } from './film-state.ts';

// "Begin a man-up" was "A man-up begins at this frame" of another opponent's film.
it('keeps the film of each opponent apart, and finds it as it was left', () => {
  const { turnTo, change } = useFilm.getState();
  const film = { name: 'half.mp4', key: 'half.mp4 1 2', url: 'blob:1', width: 4, height: 3, length: 60 };
  turnTo('copper-falls');
  change({ film, filmTime: 12, chance: 'one', begins: { one: 10 } });
  turnTo('northgate');
  expect(useFilm.getState()).toMatchObject({ film: undefined, chance: undefined, begins: {}, filmTime: 0 });
  turnTo('copper-falls');
  expect(useFilm.getState()).toMatchObject({ film, filmTime: 12, chance: 'one', begins: { one: 10 } });
});
