import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect } from 'vitest';
import { browserTest, type VisitOptions, type Visitor } from './browser-test.ts';
import { expectAccessible } from './expect-accessible.ts';
import { keepScreenshot } from './keep-screenshot.ts';

// The page as a player gets it: a file on a phone, with the network off.

let folder = '';
let address = '';
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'clip-page-'));
  const out = join(folder, 'clip.html');
  const sliderule = (...words: readonly string[]) => {
    const { status, stderr } = spawnSync(process.execPath, ['dist/sliderule.js', ...words], { encoding: 'utf8' });
    expect(stderr).toBe('');
    expect(status).toBe(0);
  };
  sliderule('demo', join(folder, 'demo'));
  sliderule(
    'clip',
    join(folder, 'demo', 'playbook.json'),
    '--play',
    'lantern',
    '--against',
    'box-zone,jump',
    '--out',
    out,
  );
  address = pathToFileURL(out).href;
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const phone: VisitOptions = { viewport: { width: 360, height: 740 }, hasTouch: true };

/** Opens the page with the network off; `asked` are the addresses that it asked for beside its own. */
async function openClip(
  visit: (options?: VisitOptions) => Promise<Visitor>,
  options: VisitOptions = {},
): Promise<{ readonly page: Page; readonly asked: readonly string[] }> {
  const { page, context } = await visit({ ...phone, ...options });
  const asked: string[] = [];
  page.on('request', (request) => {
    if (request.url() !== address) asked.push(request.url());
  });
  await context.setOffline(true);
  await page.goto(address);
  return { page, asked };
}

/** The machine may be busy: this only ends a test that hangs. Milliseconds. */
const patiently = { timeout: 30_000 };

const timeOf = (page: Page): Promise<number> => page.getByLabel('Moment of the play').inputValue().then(Number);
const pictureOf = (page: Page): Promise<string> => page.locator('#field').innerHTML();

describe('the page of a clip on a phone without a network', () => {
  browserTest('plays, stops, and asks for nothing', async ({ visit }) => {
    const { page, asked } = await openClip(visit);
    expect(await timeOf(page)).toBe(0);
    await page.getByRole('button', { name: 'Play', exact: true }).tap();
    await expect.poll(() => timeOf(page), patiently).toBeGreaterThan(1);
    await page.getByRole('button', { name: 'Stop', exact: true }).tap();
    const stopped = await timeOf(page);
    const picture = await pictureOf(page);
    await page.waitForTimeout(300);
    expect(await timeOf(page)).toBe(stopped);
    expect(await pictureOf(page)).toBe(picture);
    expect(asked).toEqual([]);
  });

  browserTest('plays by itself where motion is welcome, and stands where less is asked for', async ({ visit }) => {
    const moving = await openClip(visit, { reducedMotion: 'no-preference' });
    await expect.poll(() => timeOf(moving.page), patiently).toBeGreaterThan(0.3);
    const { page } = await openClip(visit, { reducedMotion: 'reduce' });
    await page.waitForTimeout(300);
    expect(await timeOf(page)).toBe(0);
  });

  browserTest('steps to what happens next and back, and says it', async ({ visit }) => {
    const { page } = await openClip(visit);
    const said = page.locator('#said');
    expect(await said.getAttribute('aria-live')).toBe('polite');
    const lines = await page.getByRole('listitem').allTextContents();
    for (let step = 0; step < 4; step += 1) await page.getByRole('button', { name: 'Next', exact: true }).tap();
    const fourth = (await said.textContent()) ?? '';
    const time = await timeOf(page);
    expect(lines.some((line) => fourth.endsWith(wordsOf(line)))).toBe(true);
    await page.keyboard.press('ArrowRight');
    expect(await timeOf(page)).toBeGreaterThan(time);
    expect(await said.textContent()).not.toBe(fourth);
    await page.keyboard.press('ArrowLeft');
    expect(await said.textContent()).toBe(fourth);
    await page.getByRole('listitem').last().getByRole('button').tap();
    expect((await said.textContent())?.endsWith(wordsOf(lines.at(-1)!))).toBe(true);
    expect(await page.getByRole('listitem').last().getByRole('button').getAttribute('aria-current')).toBe('step');
  });

  browserTest('shows another scheme, from its beginning', async ({ visit }) => {
    const { page } = await openClip(visit);
    await page.getByLabel('Moment of the play').fill('4');
    const [before, listed] = [await pictureOf(page), await page.getByRole('list').textContent()];
    await page.getByLabel('Against', { exact: true }).selectOption({ label: 'Jump' });
    expect(await timeOf(page)).toBe(0);
    await page.getByLabel('Moment of the play').fill('4');
    expect(await pictureOf(page)).not.toBe(before);
    expect(await page.getByRole('list').textContent()).not.toBe(listed);
    expect(await page.getByRole('img').getAttribute('aria-label')).toContain('against Jump');
  });

  browserTest('turns round the man whose view it is, who is marked at the bottom', async ({ visit }) => {
    const { page } = await openClip(visit);
    await page.getByLabel('Moment of the play').fill('4');
    const field = (await page.locator('#field').boundingBox())!;
    const unit = await page.locator('#world').getAttribute('transform');
    expect(await page.locator('.me:visible').count()).toBe(0);
    for (const spot of ['X', 'TR']) {
      await page.getByLabel('Follow me').selectOption(await optionOf(page, spot));
      expect(await page.locator('#world').getAttribute('transform')).not.toBe(unit);
      const me = (await page.locator('.me:visible').boundingBox())!;
      const goal = (await page.locator('.creaseArea circle').boundingBox())!;
      const middle = (box: typeof me) => ({ x: box.x + box.width / 2, y: box.y + box.height / 2 });
      expect(Math.abs(middle(me).x - middle(field).x)).toBeLessThan(0.06 * field.width);
      expect(middle(me).y).toBeGreaterThan(field.y + 0.6 * field.height);
      expect(middle(goal).y).toBeLessThan(middle(me).y);
    }
    await page.getByLabel('Follow me').selectOption('Whole unit');
    expect(await page.locator('#world').getAttribute('transform')).toBe(unit);
  });

  browserTest.for([
    ['Half', 0.5],
    ['Real', 1],
    ['Double', 2],
  ] as const)('runs as fast as is chosen: %s', async ([words, speed], { visit }) => {
    const { page, context } = await visit(phone);
    await context.setOffline(true);
    // A clock that the test turns: a second is a second, however busy the machine is.
    await page.clock.install({ time: 0 });
    await page.goto(address);
    await page.getByRole('radio', { name: words }).check();
    await page.getByRole('button', { name: 'Play', exact: true }).tap();
    const before = await timeOf(page);
    await page.clock.runFor(2000);
    // A tenth is what the slider rounds to; another may pass between two calls, at the speed of the clip.
    expect(Math.abs((await timeOf(page)) - before - 2 * speed)).toBeLessThan(0.15 + 0.15 * speed);
  });

  browserTest('plays and stops by the space bar, from the keyboard alone', async ({ visit }) => {
    const { page } = await openClip(visit);
    await page.keyboard.press('Space');
    await expect.poll(() => timeOf(page), patiently).toBeGreaterThan(0.3);
    await page.keyboard.press('Space');
    const stopped = await timeOf(page);
    await page.waitForTimeout(200);
    expect(await timeOf(page)).toBe(stopped);
    await page.keyboard.press('Tab');
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('against');
  });

  browserTest.for(['light', 'dark'] as const)('can be read by everybody, %s', async (colorScheme, { visit }) => {
    const { page, asked } = await openClip(visit, { colorScheme });
    await page.getByRole('listitem').nth(4).getByRole('button').tap();
    await expectAccessible(page);
    await keepScreenshot(page, `clip-${colorScheme}`);
    const low = await page
      .locator('button, select, .speeds label')
      .evaluateAll((parts) =>
        parts.filter((part) => part.getBoundingClientRect().height < 43.5).map((part) => part.outerHTML),
      );
    expect(low).toEqual([]);
    // Letters of the men, as large as they are on the screen.
    const letters = await page
      .locator('#men .attackerText, #men .carrierText')
      .evaluateAll((parts) =>
        parts.map(
          (part) => Number.parseFloat(getComputedStyle(part).fontSize) * (part as SVGGraphicsElement).getScreenCTM()!.a,
        ),
      );
    expect(Math.min(...letters)).toBeGreaterThan(11.9);
    expect(asked).toEqual([]);
  });
});

/** A line of the list without its time. */
function wordsOf(line: string): string {
  return line.replace(/^\d+\.\d s/, '');
}

async function optionOf(page: Page, spot: string): Promise<string> {
  const words = await page.getByLabel('Follow me').locator('option').allTextContents();
  return words.find((one) => one.startsWith(`${spot},`)) ?? '';
}
