import { spawn, spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import mediaInfoFactory from 'mediainfo.js';
import omggif from 'omggif';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect } from 'vitest';
import { browserTest } from './browser-test.ts';
import { expectAccessible } from './expect-accessible.ts';
import { keepScreenshot } from './keep-screenshot.ts';

// Films are read back by what did not write them: MediaInfo for video, omggif for GIF.

/** Milliseconds in which a film is made even on a busy machine. */
const patience = 120_000;

let folder = '';
let playbook = '';
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'clip-film-'));
  const { status } = spawnSync(process.execPath, ['dist/sliderule.js', 'demo', join(folder, 'demo')]);
  expect(status).toBe(0);
  playbook = join(folder, 'demo', 'playbook.json');
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** What MediaInfo says of a video. */
async function videoFacts(bytes: Uint8Array) {
  const reader = await mediaInfoFactory({ format: 'object', full: true });
  const { media } = await reader.analyzeData(bytes.length, (size, offset) => bytes.subarray(offset, offset + size));
  reader.close();
  const general = media?.track.find((track) => track['@type'] === 'General');
  const video = media?.track.find((track) => track['@type'] === 'Video');
  return { file: general, video };
}

async function openPanel(page: Page, address: string, play: string): Promise<void> {
  await page.goto(`${address}#/teach/clip/${play}`);
  await page.getByRole('img', { name: /as it is shown/ }).waitFor({ timeout: patience });
}

async function madeAndSaved(page: Page, button: string) {
  await page.getByRole('button', { name: button }).click();
  const save = page.getByRole('button', { name: 'Save', exact: true });
  await save.waitFor({ timeout: patience });
  const [file] = await Promise.all([page.waitForEvent('download'), save.click()]);
  const parts: Buffer[] = [];
  for await (const part of await file.createReadStream()) parts.push(part);
  return { name: file.suggestedFilename(), bytes: new Uint8Array(Buffer.concat(parts)) };
}

/** How long the film of the preview is, s. */
async function seconds(page: Page): Promise<number> {
  return Number(await page.getByLabel('Moment of the film').getAttribute('max'));
}

describe('a clip from the workbench', () => {
  browserTest('is seen, and made as the page that the shell makes', async ({ page, address }) => {
    await openPanel(page, address, 'lantern');
    await expectAccessible(page);
    await page.getByLabel('Moment of the film').fill('14');
    await keepScreenshot(page, 'clip-panel');
    const { name, bytes } = await madeAndSaved(page, 'Make the page');
    expect(name).toBe('lantern-clip.html');
    const out = join(folder, 'shell.html');
    const asked = ['clip', playbook, '--play', 'lantern', '--seed', '20260', '--out', out];
    const against = 'box-zone,jump';
    spawnSync(process.execPath, ['dist/sliderule.js', ...asked, '--against', against]);
    await page.getByRole('combobox', { name: 'Against' }).selectOption({ label: 'some that I tick' });
    const ticks = page.getByRole('group', { name: 'Shown one after another' }).getByRole('checkbox');
    for (const tick of await ticks.all()) await tick.uncheck();
    await page.getByText('Choose one scheme at least.').waitFor();
    for (const scheme of ['Box-and-one zone', 'Jump']) await page.getByRole('checkbox', { name: scheme }).check();
    const two = await madeAndSaved(page, 'Make the page');
    expect(Buffer.from(two.bytes).toString()).toBe(readFileSync(out, 'utf8'));
    expect(bytes.length).toBeGreaterThan(two.bytes.length);
  });

  browserTest('is made as a video that is what it says, or is stopped without a trace', async ({ page, address }) => {
    await openPanel(page, address, 'ferry');
    await page.getByRole('radio', { name: 'Video' }).check();
    await page.getByRole('combobox', { name: 'Speed' }).selectOption('real');
    await page.getByRole('img', { name: /^Ferry against Box-and-one zone, as it is shown/ }).waitFor();
    const threads = page.workers().length;
    await page.getByRole('button', { name: 'Make the video' }).click();
    await expect.poll(() => page.getByRole('progressbar').getAttribute('value').then(Number)).toBeGreaterThan(0);
    await expectAccessible(page);
    expect(page.workers()).toHaveLength(threads + 1);
    await page.getByRole('button', { name: 'Cancel' }).click();
    await page.getByText('Stopped. Nothing was made.').waitFor();
    await expect.poll(() => page.workers().length).toBe(threads);
    expect(await page.getByRole('button', { name: 'Save', exact: true }).count()).toBe(0);

    const length = await seconds(page);
    const { name, bytes } = await madeAndSaved(page, 'Make the video');
    expect(name).toBe('ferry-against-box-and-one-zone.mp4');
    const { file, video } = await videoFacts(bytes);
    expect(file).toMatchObject({ Format: 'MPEG-4', IsStreamable: 'Yes' });
    expect(video).toMatchObject({ Format: 'AVC', Width: 1280, Height: 720, FrameRate: 30 });
    expect(video).toMatchObject({ FrameCount: Math.round(length * 30) });
    expect(Math.abs(Number(file && 'Duration' in file ? file.Duration : 0) - length)).toBeLessThan(0.05);
  });

  browserTest('is made as a GIF on a phone, names by choice alone', async ({ visit, address }) => {
    const { page } = await visit({ viewport: { width: 360, height: 740 } });
    await openPanel(page, address, 'quarry');
    await page.getByRole('radio', { name: 'GIF' }).check();
    await page.getByRole('combobox', { name: 'Speed' }).selectOption('real');
    expect(await page.getByRole('checkbox', { name: 'Names beside the numbers' }).isChecked()).toBe(false);
    await page.getByRole('img', { name: /^Quarry against Box-and-one zone, as/ }).waitFor();
    const length = await seconds(page);
    const { name, bytes } = await madeAndSaved(page, 'Make the GIF');
    expect(name).toBe('quarry-against-box-and-one-zone.gif');
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(360);
    await expectAccessible(page);
    const gif = new omggif.GifReader(bytes);
    expect([gif.width, gif.height, gif.loopCount()]).toEqual([640, 800, 0]);
    const delays = Array.from({ length: gif.numFrames() }, (_, frame) => gif.frameInfo(frame).delay);
    expect(delays.reduce((sum, delay) => sum + delay, 0)).toBe(Math.round(length * 100));
    expect(delays.length).toBeGreaterThan(60);
    expect(bytes.length).toBeLessThan(5_000_000);
  });

  browserTest('says where there is no encoder, and what can be made instead', async ({ visit, address }) => {
    const { page } = await visit();
    await page.addInitScript(() => {
      Reflect.deleteProperty(window, 'VideoEncoder');
    });
    await openPanel(page, address, 'lantern');
    await page.getByRole('radio', { name: 'Video' }).check();
    await page.getByText('This browser cannot make videos. Make a page or a GIF of it').waitFor();
    expect(await page.getByRole('button', { name: 'Make the video' }).count()).toBe(0);
  });

  browserTest('is made on the page itself where threads have no canvas', async ({ visit, address }) => {
    const { page } = await visit();
    await page.addInitScript(() => {
      Reflect.deleteProperty(window, 'OffscreenCanvas');
    });
    await openPanel(page, address, 'quarry');
    await page.getByRole('radio', { name: 'GIF' }).check();
    await page.getByRole('combobox', { name: 'Speed' }).selectOption('real');
    await page.getByRole('img', { name: /^Quarry against Box-and-one zone, as/ }).waitFor();
    const threads = page.workers().length;
    const make = page.getByRole('button', { name: 'Make the GIF' });
    // From the keyboard alone: what can be done next has the focus.
    await make.focus();
    await page.keyboard.press('Enter');
    await page.getByRole('button', { name: 'Cancel' }).and(page.locator(':focus')).waitFor();
    expect(page.workers()).toHaveLength(threads);
    await page.keyboard.press('Enter');
    await make.and(page.locator(':focus')).waitFor();
    const { bytes } = await madeAndSaved(page, 'Make the GIF');
    expect(new omggif.GifReader(bytes).numFrames()).toBeGreaterThan(60);
  });
});

describe('a clip from the shell', () => {
  /** Runs in a folder for temporary files of its own, so that what stays behind is seen. */
  function machine(name: string) {
    const temporary = join(folder, name);
    mkdirSync(temporary);
    return { temporary, env: { ...process.env, TMPDIR: temporary } };
  }
  const words = (out: string, ...more: readonly string[]) => [
    'dist/sliderule.js',
    'clip',
    playbook,
    '--play',
    'lantern',
    '--against',
    'jump',
    '--out',
    out,
    ...more,
  ];

  browserTest.for([
    ['mp4', 'AVC', ['--speed', 'real'], [1280, 720]],
    ['webm', 'VP9', ['--speed', 'real', '--form', 'tall'], [720, 1280]],
  ] as const)('is written as %s by a browser that leaves nothing behind', async ([ending, codec, more, size]) => {
    const { temporary, env } = machine(ending);
    const out = join(folder, `film.${ending}`);
    const run = spawnSync(process.execPath, words(out, ...more), { env, encoding: 'utf8' });
    expect(run.stderr).toBe('');
    const [, length] = /MB, (\d+) s, against 1 of 1 schemes\.$/m.exec(run.stdout) ?? [];
    const { file, video } = await videoFacts(readFileSync(out));
    expect(video).toMatchObject({ Format: codec, Width: size[0], Height: size[1] });
    const duration = Number(file && 'Duration' in file ? file.Duration : 0);
    expect(Math.abs(duration - Number(length))).toBeLessThan(0.6);
    expect(readdirSync(temporary)).toEqual([]);
  });

  browserTest('stops at Ctrl-C: no file, no browser, no profile', async () => {
    const { temporary, env } = machine('stopped');
    const out = join(folder, 'stopped.mp4');
    const child = spawn(process.execPath, words(out), { env, stdio: ['ignore', 'pipe', 'pipe'] });
    let said = '';
    child.stderr.setEncoding('utf8').on('data', (text: string) => {
      said += text;
    });
    // The browser has its profile among its words.
    const browsers = () =>
      spawnSync('ps', ['-eo', 'args'], { encoding: 'utf8' })
        .stdout.split('\n')
        .filter((line) => line.includes(`--user-data-dir=${temporary}`)).length;
    await expect.poll(browsers, { timeout: patience }).toBe(1);
    child.kill('SIGINT');
    const code = await new Promise((resolve) => child.once('close', resolve));
    expect(code).toBe(130);
    expect(said).toBe('Stopped. Nothing was written.\n');
    expect(existsSync(out)).toBe(false);
    expect(browsers()).toBe(0);
    expect(readdirSync(temporary)).toEqual([]);
  });

  browserTest('says what to do where there is no browser', async () => {
    const env = { ...process.env, CHROMIUM_PATH: join(folder, 'no-browser') };
    const out = join(folder, 'none.mp4');
    const { status, stderr } = spawnSync(process.execPath, words(out), { env, encoding: 'utf8' });
    expect(status).toBe(2);
    expect(stderr.replace(/\s+/g, ' ')).toMatch(/^CHROMIUM_PATH names no program: .*\.gif \(a film\) or \.html/);
    expect(existsSync(out)).toBe(false);
  });
});
