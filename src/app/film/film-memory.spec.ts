import { IDBFactory } from 'fake-indexeddb';
import { describe, expect, it } from 'vitest';
import { type FilmMemory, filmKey, filmsOf, recallFilm, rememberFilm } from './film-memory.ts';

const memory = (name: string, at: number, opponent = 'copper-falls'): FilmMemory => ({
  views: [{ time: 0, places: [{ id: 'net', seen: { x: 3, y: 4 } }], lines: [] }],
  begins: { one: 2.5 },
  ...{ opponent, name, at },
});

describe('what was marked of a film', () => {
  it('is found again by the file, and another file of its name is another film', async () => {
    const factory = new IDBFactory();
    const [key, other] = [1, 2].map((size) => filmKey({ name: 'half.mp4', size, lastModified: 7 })) as [string, string];
    await rememberFilm(key, memory('half.mp4', 1), factory);
    expect(await recallFilm(key, factory)).toEqual(memory('half.mp4', 1));
    expect(await recallFilm(other, factory)).toBeUndefined();
  });

  it('names the films of an opponent, the last first, and forgets the oldest of many', async () => {
    const factory = new IDBFactory();
    for (let film = 0; film < 63; film++) await rememberFilm(`f ${film}`, memory(`f ${film}`, film), factory);
    await rememberFilm('theirs', memory('theirs', 99, 'northgate'), factory);
    const names = await filmsOf('copper-falls', factory);
    expect([names.length, names[0], names.at(-1)]).toEqual([59, 'f 62', 'f 4']);
    expect(await recallFilm('f 0', factory)).toBeUndefined();
  });

  it('is nothing where the browser keeps nothing, or kept something broken', async () => {
    expect(await recallFilm('f', undefined)).toBeUndefined();
    await rememberFilm('f', memory('f', 1), undefined);
    const factory = new IDBFactory();
    await rememberFilm('f', { ...memory('f', 1), views: [{ time: 'soon' }] } as unknown as FilmMemory, factory);
    expect(await recallFilm('f', factory)).toBeUndefined();
    expect(await filmsOf('copper-falls', factory)).toEqual([]);
  });
});
