import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { FilmOrder } from '../../press/index.ts';
import { type FilmDesk, type FilmNews, openFilmDesk } from './film-desk.ts';

const order = { kind: 'mp4', script: {} } as unknown as FilmOrder;
const letters = { regular: new Uint8Array([1]), bold: new Uint8Array([2]) };

let desk: FilmDesk;
let news: FilmNews[] = [];
beforeEach(async () => {
  news = [];
  desk = await openFilmDesk({ order, program: 'make()', letters }, (one) => news.push(one));
});
afterEach(() => desk.close());

const get = (name: string): Promise<Response> => fetch(`${desk.address}${name}`);
const post = (name: string, body: string | Uint8Array): Promise<Response> =>
  fetch(`${desk.address}${name}`, {
    method: 'POST',
    body: typeof body === 'string' ? body : new Blob([new Uint8Array(body)]),
  });

describe('the desk of a film', () => {
  it('hands out the page, its program, its letters and the order, and tells when that was taken', async () => {
    expect(await (await get('')).text()).toContain('<script src="program">');
    expect(await (await get('program')).text()).toBe('make()');
    expect(new Uint8Array(await (await get('bold')).arrayBuffer())).toEqual(letters.bold);
    expect(news).toEqual([]);
    expect(await (await get('order')).json()).toEqual(order);
    expect(news).toEqual([{ kind: 'begun' }]);
  });

  it('tells what comes back', async () => {
    await post('progress', '0.25');
    await post('film', new Uint8Array([7, 8, 9]));
    await post('refused', JSON.stringify({ kind: 'noEncoder', reason: 'none' }));
    expect(news).toEqual([
      { kind: 'progress', share: 0.25 },
      { kind: 'film', bytes: new Uint8Array([7, 8, 9]) },
      { kind: 'refused', refusal: { kind: 'noEncoder', reason: 'none' } },
    ]);
  });

  it('gives nothing to who does not know its address, and takes nothing that it does not know', async () => {
    const { origin } = new URL(desk.address);
    for (const path of ['', 'order', 'film', '0/order']) {
      expect((await fetch(`${origin}/${path}`)).status).toBe(404);
      expect((await fetch(`${origin}/${path}`, { method: 'POST', body: 'x' })).status).toBe(404);
    }
    expect((await get('other')).status).toBe(404);
    expect((await post('order', 'x')).status).toBe(404);
    expect(news).toEqual([]);
    expect(desk.address).toMatch(/^http:\/\/127\.0\.0\.1:\d+\/[0-9a-f-]{36}\/$/);
  });
});
