import { existsSync, mkdtempSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { demoPlaybook, demoText } from '../../playbook/index.ts';
import type { Clip } from '../../render/index.ts';
import { manDownSchemeIds } from '../../worker/index.ts';
import { runRecorded } from '../recorded-io.fixture.ts';

let folder = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'clip-'));
  writeFileSync(join(folder, 'demo.json'), demoText);
});
afterEach(() => {
  rmSync(folder, { recursive: true, force: true });
});

/** The real program of the page is put into it; the test run builds it first. */
async function clip(...words: readonly string[]) {
  return clipUntil(new AbortController().signal, ...words);
}

async function clipUntil(signal: AbortSignal, ...words: readonly string[]) {
  const ran = await runRecorded(['clip', join(folder, 'demo.json'), ...words], { signal });
  return { ...ran, err: ran.err.replace(/\s+/g, ' ') };
}

const path = (name: string): string => join(folder, name);

function clipIn(name: string): Clip {
  return JSON.parse(/id="clip">(.*)<\/script>/.exec(readFileSync(path(name), 'utf8'))?.[1] ?? '');
}

describe('clip', () => {
  it.each(demoPlaybook.plays.map(({ id }) => id))(
    'writes %s against every scheme as one page under 300 kB',
    async (play) => {
      const { code, out } = await clip('--play', play, '--out', path('all.html'));
      expect(code).toBe(0);
      expect(statSync(path('all.html')).size).toBeLessThan(300_000);
      const schemes = manDownSchemeIds(demoPlaybook).length;
      expect(schemes).toBeGreaterThanOrEqual(12);
      expect(clipIn('all.html').schemes).toHaveLength(schemes);
      expect(out).toMatch(new RegExp(`Written: .*all\\.html, \\d+ kB, against ${schemes} of ${schemes} schemes\\.`));
    },
  );

  it('writes the same page for the same luck, and another for another', async () => {
    const asked = ['--play', 'ferry', '--against', 'jump,box-zone'];
    const pages = [];
    for (const [name, seed] of [
      ['a', '1'],
      ['b', '1'],
      ['c', '2'],
    ] as const) {
      await clip(...asked, '--seed', seed, '--out', path(`${name}.html`));
      pages.push(readFileSync(path(`${name}.html`), 'utf8'));
    }
    expect(pages[1]).toBe(pages[0]);
    expect(pages[2]).not.toBe(pages[0]);
    expect(clipIn('a.html').schemes.map(({ name }) => name)).toEqual(['Jump', 'Box-and-one zone']);
  });

  it('names nobody by itself, and begins with the view that was asked for', async () => {
    const names = demoPlaybook.team.roster.map(({ name }) => name);
    await clip('--play', 'lantern', '--against', 'jump', '--follow', 'x', '--out', path('a.html'));
    await clip('--play', 'lantern', '--against', 'jump', '--names', '--out', path('b.html'));
    const [bare, named] = ['a.html', 'b.html'].map((name) => readFileSync(path(name), 'utf8'));
    expect(names.filter((name) => bare!.includes(name))).toEqual([]);
    expect(names.filter((name) => named!.includes(name))).toHaveLength(6);
    const { spots, follow, men } = clipIn('a.html');
    expect(spots[follow]).toBe('X');
    expect(men.every((man) => /^number \d+$/.test(man))).toBe(true);
    expect(clipIn('b.html').follow).toBe(-1);
  });

  it('mirrors the play for the left side', async () => {
    for (const side of ['left', 'right'])
      await clip('--play', 'ferry', '--against', 'jump', '--side', side, '--out', path(`${side}.html`));
    const [left, right] = ['left.html', 'right.html'].map(clipIn);
    // A spot with "R" in its name stands on the offense's right in both: it is another man's now.
    const sidesOf = ({ spots, schemes }: Clip) => spots.map((_, man) => Math.sign(schemes[0]!.x_byMan[man]![0]!));
    expect(left!.spots).not.toEqual(right!.spots);
    expect(sidesOf(left!)).toEqual(sidesOf(right!).map((side) => -side + 0));
  });

  it.each([
    [[], 'a clip is that of one play: name one of lantern'],
    [
      ['--play', 'lantern', '--out', 'clip.pdf'],
      'invalid --out: clip.pdf (expected a name that ends in .html for a page, or in .mp4, .webm or .gif for a film)',
    ],
    [['--play', 'lantern', '--follow', 'X', '--out', 'a.gif'], 'a film shows the whole unit'],
    [['--play', 'lantern', '--speed', 'half', '--out', 'a.html'], '--speed is for a film'],
    [['--play', 'lantern', '--form', 'card'], '--form is for a film'],
    [['--play', 'lantern', '--speed', '2', '--out', 'a.mp4'], 'invalid --speed: 2 (expected half or real)'],
    [['--play', 'lantern', '--form', 'round', '--out', 'a.mp4'], 'invalid --form: round (expected wide, tall, card)'],
    [['--play', 'lantern', '--against', 'jump', '--follow', 'Q'], 'unknown spot after --follow: Q (expected '],
  ])('is refused with a reason: %o', async (words, reason) => {
    const { code, err, out } = await clip(...words);
    expect(code).toBe(2);
    expect(out).toBe('');
    expect(err).toContain(reason);
  });

  it('films a GIF without a browser, or nothing of it when it is stopped', async () => {
    const asked = ['--play', 'quarry', '--against', 'jump', '--speed', 'real'];
    const { code, out, err } = await clip(...asked, '--out', path('a.gif'));
    expect(code).toBe(0);
    expect(err).toBe('');
    expect(out).toMatch(/^Written: .*a\.gif, [01]\.\d MB, 1\d s, against 1 of 1 schemes\.\n$/);
    // Its name and its size: https://www.w3.org/Graphics/GIF/spec-gif89a.txt, sections 17 and 18.
    const bytes = readFileSync(path('a.gif'));
    expect(bytes.subarray(0, 6).toString()).toBe('GIF89a');
    expect([bytes.readUInt16LE(6), bytes.readUInt16LE(8)]).toEqual([640, 800]);
    const stop = new AbortController();
    const stopped = clipUntil(stop.signal, ...asked, '--out', path('b.gif'));
    stop.abort();
    expect(await stopped).toMatchObject({ code: 130, err: 'Stopped. Nothing was written. ' });
    expect(existsSync(path('b.gif'))).toBe(false);
  });

  it('leaves a file that is there as it is', async () => {
    writeFileSync(path('mine.html'), 'mine');
    const { code } = await clip('--play', 'ferry', '--against', 'jump', '--out', path('mine.html'));
    expect(code).toBe(2);
    expect(readFileSync(path('mine.html'), 'utf8')).toBe('mine');
  });
});
