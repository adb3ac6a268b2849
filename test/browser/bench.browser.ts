import type { Page } from 'playwright-core';
import { describe, expect } from 'vitest';
import { browserTest } from './browser-test.ts';
import { expectAccessible } from './expect-accessible.ts';
import { keepScreenshot } from './keep-screenshot.ts';
import { savedPlaybook, wholeTask } from './play-place.ts';
import { waitUntilKept } from './wait-until-kept.ts';

/** Least height of what a wet thumb presses, CSS pixels. */
const thumb = 56;

const phone = { width: 360, height: 740 };

/** Milliseconds since 1970 at which the tests begin: 14 March 2026, 15:00 UTC. */
const begun = 1_773_500_400_000;

/** The device's clock, which goes on only when a test says so; its timers run as ever. */
interface DeviceClock {
  readonly goOn: (seconds: number) => Promise<void>;
}

async function deviceClock(page: Page): Promise<DeviceClock> {
  let time = begun;
  await page.clock.setFixedTime(time);
  return {
    goOn: async (seconds) => {
      time += 1_000 * seconds;
      await page.clock.setFixedTime(time);
    },
  };
}

async function openBench(page: Page, address: string): Promise<void> {
  await page.goto(`${address}#/bench`);
  await page.getByRole('heading', { name: 'Before the game' }).waitFor();
}

const press = (page: Page, name: string | RegExp) => page.getByRole('button', { name, exact: true }).click();
const untilBack = (page: Page, time: string) =>
  page.getByRole('timer', { name: 'Until a man is back' }).getByText(time, { exact: true }).waitFor();
const now = (page: Page) => page.getByRole('region', { name: 'What is so now' });

async function foul(page: Page, side: 'On them' | 'On us', time: string, who?: string): Promise<void> {
  await press(page, 'Foul');
  const sheet = page.getByRole('dialog', { name: 'Foul: how long?' });
  await sheet.getByText(side, { exact: true }).click();
  if (who !== undefined) await sheet.getByRole('button', { name: who, exact: true }).click();
  await sheet.getByRole('button', { name: time, exact: true }).click();
  await sheet.waitFor({ state: 'hidden' });
}

/** Buttons in the place or in a window that are lower than a thumb needs. */
const lowButtons = (page: Page, within: string) =>
  page.evaluate(
    ([scope, least]) =>
      [...document.querySelectorAll<HTMLElement>(`${scope} button`)]
        .filter((one) => one.offsetParent !== null && one.getAttribute('aria-label') !== 'Close')
        .filter((one) => one.getBoundingClientRect().height < Number(least))
        .map((one) => one.textContent),
    [within, String(thumb)] as const,
  );

/** What is pressed during a penalty and cannot be seen without scrolling. */
const outOfSight = (page: Page) =>
  page.evaluate(() =>
    [...document.querySelectorAll<HTMLElement>('#place button')]
      .filter((one) => one.offsetParent !== null)
      .filter((one) => {
        const { top, bottom, left, right } = one.getBoundingClientRect();
        return top < 0 || bottom > innerHeight || left < 0 || right > innerWidth;
      })
      .map((one) => one.textContent),
  );

/** What the device was asked to do: pulses, tones, and whether the screen is held awake. */
const noticed = (page: Page) =>
  page.evaluate(() => {
    const { felt, heard, awake } = window as unknown as Readonly<
      Record<'felt' | 'heard' | 'awake', readonly unknown[]>
    >;
    return { felt: felt.length, heard: heard.length, awake };
  });

describe('the bench', () => {
  browserTest(
    'holds a game of six penalties on a phone without a network, through a reload, and writes each man-up down',
    wholeTask,
    async ({ visit, address }) => {
      const { page, context } = await visit({ viewport: phone });
      await page.addInitScript(() => {
        const felt: unknown[] = [];
        const heard: number[] = [];
        const awake: string[] = [];
        Object.assign(window, { felt, heard, awake });
        navigator.vibrate = (pattern) => felt.push(pattern) > 0;
        const start = OscillatorNode.prototype.start;
        OscillatorNode.prototype.start = function (when) {
          heard.push(this.frequency.value);
          start.call(this, when);
        };
        Object.defineProperty(navigator, 'wakeLock', {
          value: {
            request: async (what: string) => {
              awake.push(what);
              return { release: async () => awake.push('released') };
            },
          },
        });
      });
      const clock = await deviceClock(page);
      await openBench(page, address);
      await expectAccessible(page);
      await press(page, 'Try the calls');
      await page.getByRole('progressbar', { name: 'How far the calls are' }).waitFor();
      await page.getByText(/^2 of 3 calls were not tried/).waitFor();
      await press(page, 'Stop');
      await waitUntilKept(page);
      await context.setOffline(true);
      await page.reload();
      await page.getByText(/^2 of 3 calls were not tried/).waitFor();
      expect(await lowButtons(page, '#place')).toEqual([]);
      await press(page, 'Begin the game');
      await press(page, 'Start');
      await clock.goOn(10);
      await page.getByRole('timer', { name: 'Left in the period' }).getByText('11:50', { exact: true }).waitFor();
      await expectAccessible(page);

      // One: under a flag, then six against five; at 14U a goal ends nothing.
      await press(page, 'Flag on them');
      await now(page)
        .getByText(/^Free play/)
        .waitFor();
      await expectAccessible(page);
      await press(page, /^Whistle/);
      const sheet = page.getByRole('dialog', { name: 'Foul: how long?' });
      await sheet.waitFor();
      expect(await lowButtons(page, '[role=dialog]')).toEqual([]);
      await expectAccessible(page);
      await sheet.getByRole('button', { name: '1:00', exact: true }).click();
      await press(page, 'Start');
      await clock.goOn(12);
      await untilBack(page, '0:48');
      await now(page).getByText('6 v 5').waitFor();
      expect(await outOfSight(page)).toEqual([]);
      expect(await lowButtons(page, '#place')).toEqual([]);
      await press(page, 'Draw the call');
      await page.getByRole('status').getByText('Lantern').waitFor();
      await page
        .getByRole('group', { name: 'What they play' })
        .getByRole('button', { name: /^String/ })
        .click();
      await expectAccessible(page);
      await keepScreenshot(page, 'bench-man-up');
      await press(page, 'Goal');
      await press(page, 'feed X to C');
      await page.getByText('1 : 0').waitFor();
      await press(page, 'Start');
      await press(page, 'The ball is ours again: another chance');
      await clock.goOn(5);
      await press(page, 'Saved');
      // A tap too many is taken back, and made again.
      await press(page, 'Take back: saved');
      await press(page, 'Wide');
      await press(page, 'own shot');
      await clock.goOn(34);
      await page.getByRole('alert').getByText('10 seconds until their man is back.').waitFor();
      await clock.goOn(5);
      await page.getByRole('alert').getByText('5 seconds until their man is back.', { exact: true }).waitFor();
      // Felt twice; heard twice and three times; and the screen stays awake through it.
      expect(await noticed(page)).toEqual({ felt: 2, heard: 5, awake: ['screen'] });
      await clock.goOn(5);
      await now(page)
        .getByText(/^Their man is on/)
        .waitFor();
      await clock.goOn(8);
      await now(page).getByText('Even sides.').waitFor();

      // Two: one of ours, who is not sent on; they miss.
      await foul(page, 'On us', '30 s', '7');
      await press(page, 'Start');
      await clock.goOn(10);
      await now(page).getByText('5 v 6').waitFor();
      await expectAccessible(page);
      await press(page, 'Saved');
      await press(page, 'own shot');
      await clock.goOn(30);

      // Three and four: two of theirs; the screen dies in the middle, and time goes on.
      await foul(page, 'On them', '1:00');
      await foul(page, 'On them', '30 s');
      await press(page, 'Start');
      await clock.goOn(8);
      await now(page).getByText('6 v 4').waitFor();
      await untilBack(page, '0:22');
      await page.reload();
      await now(page).getByText('6 v 4').waitFor();
      await untilBack(page, '0:22');
      await clock.goOn(12);
      await untilBack(page, '0:10');
      await now(page).getByText('All are back in 0:40.', { exact: false }).waitFor();
      await press(page, 'Lost it');
      await press(page, 'Another');
      await clock.goOn(60);

      // Five and six: both at once, five against five, then even.
      await press(page, 'Foul');
      await press(page, 'Several fouls at once');
      await press(page, '30 s');
      await sheet.getByText('On us', { exact: true }).click();
      await press(page, '11');
      await press(page, '30 s');
      await press(page, 'Give');
      await press(page, 'Start');
      await clock.goOn(5);
      await now(page).getByText('5 v 5', { exact: true }).waitFor();
      await clock.goOn(40);
      await now(page).getByText('Even sides.').waitFor();
      await press(page, 'More');
      await page.getByRole('dialog', { name: 'More' }).waitFor();
      expect(await lowButtons(page, '[role=dialog]')).toEqual([]);
      await expectAccessible(page);
      await page.getByRole('button', { name: 'Close' }).click();
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(phone.width);

      await page.getByRole('link', { name: 'Play', exact: true }).click();
      expect((await noticed(page)).awake).toEqual(['screen', 'released']);
      const saved = (await savedPlaybook(page)) as unknown as { readonly chances: readonly object[] };
      expect(saved.chances).toMatchObject([
        {
          side: 'ours',
          opponent: 'copper-falls',
          date: '2026-03-14',
          penalty: { seconds: 60 },
          call: 'lantern',
          scheme: 'box-string',
          result: 'goal',
          look: { kind: 'feed' },
        },
        { side: 'ours', start: 'transition', result: 'wide', look: { kind: 'shot' } },
        { side: 'theirs', penalty: { seconds: 30 }, result: 'saved' },
        { side: 'ours', penalty: { seconds: 60, men: 2 }, result: 'turnover' },
      ]);
    },
  );

  browserTest('is one game in two tabs', wholeTask, async ({ visit, address }) => {
    const { page, context } = await visit();
    await openBench(page, address);
    await press(page, 'Begin the game');
    const other = await context.newPage();
    await other.goto(`${address}#/bench`);
    await press(other, 'Goal for us');
    await page.getByText('1 : 0').waitFor();
    await press(page, 'Goal for them');
    await other.getByText('1 : 1').waitFor();
    await press(other, 'Take back: goal for them');
    await page.getByText('1 : 0').waitFor();
    await expectAccessible(page);
  });

  browserTest(
    'says what is wrong where the browser keeps nothing, or kept something damaged',
    wholeTask,
    async ({ visit, address }) => {
      const { page } = await visit();
      await page.addInitScript(() => {
        if (location.protocol === 'http:') localStorage.setItem('sliderule:bench:game', '{"format":"sliderule-bench"');
      });
      await openBenchDamaged(page, address);
      await expectAccessible(page);
      const [download] = await Promise.all([
        page.waitForEvent('download'),
        page.getByRole('button', { name: 'Set it aside and save its text' }).click(),
      ]);
      expect(download.suggestedFilename()).toBe('bench-game.json');
      await page.getByRole('heading', { name: 'Before the game' }).waitFor();
      await page.evaluate(() => {
        Storage.prototype.setItem = () => {
          throw new DOMException('full', 'QuotaExceededError');
        };
      });
      await press(page, 'Begin the game');
      await page.getByText(/^This browser keeps nothing for Sliderule/).waitFor();
      // It goes on all the same.
      await press(page, 'Goal for us');
      await press(page, 'Goal for us');
      await page.getByText('2 : 0').waitFor();
      await expectAccessible(page);
    },
  );
});

async function openBenchDamaged(page: Page, address: string): Promise<void> {
  await page.goto(`${address}#/bench`);
  await page.getByText(/^A game was kept here that cannot be read: what was kept is not whole/).waitFor();
}
