import type { Locator, Page } from 'playwright-core';
import { expect } from 'vitest';
import { browserTest } from './browser-test.ts';
import { expectAccessible } from './expect-accessible.ts';
import { keepScreenshot } from './keep-screenshot.ts';

/** Milliseconds in which the first answer comes even on a busy machine. */
const patience = 90_000;

browserTest(
  'what the starter of a play should look for is found, taught, and taken back',
  async ({ page, address }) => {
    await page.goto(`${address}#/reads/ferry`);
    await page.getByRole('heading', { level: 1, name: 'Reads' }).waitFor();
    await expectAccessible(page);
    await page.getByRole('button', { name: 'Find the reads' }).click();
    await page.getByRole('progressbar', { name: 'How far the search is' }).waitFor();
    const card = page.getByRole('region', { name: 'The card', exact: true });
    await card.getByText('A first, rough answer.').waitFor({ timeout: patience });
    await page.getByRole('button', { name: 'Stop' }).click();
    await page.getByText('Stopped. What was found until then stays').waitFor();

    await card.getByRole('radio', { name: '1', exact: true }).check();
    const list = card.getByRole('listitem');
    expect(await list.count()).toBe(1);
    expect(await list.getByRole('paragraph').first().textContent()).toMatch(/^If .*, P .*\.$/);
    await card.getByText(/^(No|One|Two|Three|Four) reads? (is|are) worth holding: /).waitFor();
    await card.getByText(/^What each read adds .*: the first read [+−]?\.\d\d \(/).waitFor();
    await expectFrame(page);
    await card.getByText(/^[+−]?\.\d\d \(.* to .*\) goals a chance against leaving it to the play/).waitFor();
    const ways = page.getByRole('region', { name: 'What each way to decide is worth' });
    await ways.getByRole('row', { name: /^a card of 1 read \(the card above\) \.\d\d \(/ }).waitFor();
    const against = page.getByRole('region', { name: 'What the card gains against each scheme' });
    expect(await against.locator('tbody').getByRole('row').count()).toBeGreaterThan(5);
    await expectAccessible(page);
    await keepScreenshot(page, 'reads');

    await card.getByRole('button', { name: 'Teach these reads' }).click();
    await card.getByText('The play teaches P this card. Undo takes it back.').waitFor();
    expect(await card.getByRole('button', { name: 'Teach these reads' }).count()).toBe(0);
    await page.getByRole('button', { name: /^Undo: teach P \d reads?/ }).click();
    await card.getByRole('button', { name: 'Teach these reads' }).waitFor();
  },
);

/** Beside the only read on the card stands the moment at which its cue shows. On a calm device it is played once and comes back to that moment. */
async function expectFrame(page: Page): Promise<void> {
  const frame = page.getByRole('listitem').getByRole('figure');
  await frame
    .getByText(/^Against .*: \d+\.\d s into the play, .*; P .*\. (One of \d+|The only) such chances?/)
    .waitFor();
  const field = frame.getByRole('img', { name: 'The half field at the moment of read 1, P with the ball' });
  await field.waitFor();
  await frame.getByText(/^Now: /).waitFor();
  // A canvas that is not drawn yet is of one shade.
  await expect.poll(async () => new Set(await shadesOf(field)).size).toBeGreaterThan(10);
  const atRest = await shadesOf(field);
  await frame.getByRole('button', { name: 'Play read 1' }).click();
  await frame.getByText('Just before').waitFor();
  await expect.poll(async () => changedShare(await shadesOf(field), atRest)).toBeGreaterThan(0.01);
  await frame.getByRole('button', { name: 'Pause read 1' }).waitFor();
  await frame.getByRole('button', { name: 'Play read 1' }).waitFor();
  await frame.getByText(/^Now: /).waitFor();
  await expect.poll(async () => changedShare(await shadesOf(field), atRest)).toBeLessThan(0.001);
  for (const look of ['Dark', 'Bright sun', 'Paper']) {
    await page.getByRole('button', { name: 'Look of the page' }).click();
    await page.getByRole('menuitem', { name: look }).click();
    await expectAccessible(page);
    await keepScreenshot(page, `read-frame-${look.toLowerCase().replace(' ', '-')}`);
  }
}

/** Of two pictures of a canvas, the share of points that are plainly brighter or darker in one: the same drawn again may differ by a shade. */
function changedShare(one: readonly number[], other: readonly number[]): number {
  expect(one.length).toBe(other.length);
  return one.filter((shade, at) => Math.abs(shade - other[at]!) > 60).length / one.length;
}

/** How bright each point of a canvas is, 0 to 255. */
function shadesOf(field: Locator): Promise<readonly number[]> {
  return field.evaluate((element) => {
    const canvas = element as unknown as Canvas;
    const { data } = canvas.getContext('2d').getImageData(0, 0, canvas.width, canvas.height);
    return Array.from(
      { length: data.length / 4 },
      (_, at) => (data[4 * at]! + data[4 * at + 1]! + data[4 * at + 2]!) / 3,
    );
  });
}

/** What is used of a canvas in the page. */
interface Canvas {
  readonly width: number;
  readonly height: number;
  getContext(kind: '2d'): {
    getImageData(left: number, top: number, width: number, height: number): { readonly data: Uint8ClampedArray };
  };
}

browserTest('reads are found for a mix of schemes that the coach sets himself', async ({ page, address }) => {
  await page.goto(`${address}#/reads/ferry`);
  await page.getByRole('combobox', { name: 'Against' }).selectOption({ label: 'a mix of my own' });
  const mix = page.getByRole('group', { name: 'In how many of ten man-ups you expect each scheme' });
  const weights = mix.getByRole('textbox');
  const count = await weights.count();
  expect(count).toBeGreaterThan(5);
  expect(await mix.getByRole('listitem').first().textContent()).toMatch(new RegExp(`${Math.round(100 / count)} %$`));
  await expectAccessible(page);
  await keepScreenshot(page, 'own-mix');

  const first = weights.first();
  for (const [typed, kept, words] of [
    ['11', '10', /: 0 to 10; 11 was read as 10\.$/],
    ['-1', '0', /: 0 to 10; −1 was read as 0\.$/],
    ['abc', '0', /: 0 to 10; “abc” is no number, so it stays at 0\.$/],
    ['3', '3', /^$/],
  ] as const) {
    await first.fill(typed);
    await first.press('Enter');
    await expect.poll(() => mix.getByRole('status').textContent()).toMatch(words);
    expect(await first.inputValue()).toBe(kept);
  }

  const find = page.getByRole('button', { name: 'Find the reads' });
  for (let at = 0; at < count; at++) {
    await weights.nth(at).fill('0');
    await weights.nth(at).press('Enter');
  }
  await page.getByText('Every scheme of your mix stands at none.').waitFor();
  expect(await find.isDisabled()).toBe(true);
  await weights.nth(1).press('ArrowUp');
  await expect.poll(() => mix.getByRole('listitem').nth(1).textContent()).toMatch(/100 %$/);
  expect(await find.isDisabled()).toBe(false);

  await page.getByRole('link', { name: 'Team' }).click();
  await page.getByRole('link', { name: 'Reads' }).click();
  await expect.poll(() => weights.nth(1).inputValue()).toBe('1');
  expect(await weights.nth(0).inputValue()).toBe('0');
});

browserTest(
  'the play of one place is that of the other, and each place begins at its top',
  async ({ page, address }) => {
    await page.setViewportSize({ width: 800, height: 500 });
    await page.goto(`${address}#/play/lantern`);
    await page.getByRole('button', { name: 'Lantern' }).waitFor();
    const scrolled = (): Promise<number> => page.evaluate('window.scrollY') as Promise<number>;
    const goTo = (place: string): Promise<void> => page.getByRole('link', { name: place, exact: true }).click();
    await goTo('Reads');
    const plays = page.getByRole('combobox', { name: 'Play', exact: true });
    await expect.poll(() => plays.inputValue()).toBe('lantern');
    await plays.selectOption({ label: 'Ferry' });
    await goTo('Play');
    await page.getByRole('button', { name: 'Ferry' }).waitFor();
    await goTo('Reads');
    await expect.poll(() => plays.inputValue()).toBe('ferry');

    await page.mouse.wheel(0, 256);
    await expect.poll(scrolled).toBe(256);
    await goTo('Team');
    await page.getByRole('heading', { level: 1 }).first().waitFor();
    expect(await scrolled()).toBe(0);
  },
);
