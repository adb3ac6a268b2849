import { expect } from 'vitest';
import { browserTest } from './browser-test.ts';
import { expectAccessible } from './expect-accessible.ts';

/** Milliseconds in which ten schemes are played even on a busy machine. */
const patience = 150_000;

browserTest(
  'a coach finds out what to run first against an opponent, and what to play when he is short himself',
  async ({ visit, address }) => {
    const { page } = await visit({ viewport: { width: 360, height: 740 } });
    await page.goto(`${address}#/opponents/copper-falls`);
    await page.getByRole('link', { name: 'Find out and stop them' }).click();
    const probe = page.getByRole('region', { name: 'What to run to find out' });
    await probe.getByRole('button', { name: 'Find it' }).click();
    await probe.getByText(/^Without a probe call \w+, 0\.\d\d goals a man-up/).waitFor({ timeout: patience });
    expect(await probe.locator('tbody').getByRole('row').count()).toBeGreaterThan(4);

    const manDown = page.getByRole('region', { name: 'Our own man-down' });
    await manDown.getByRole('button', { name: 'Try our schemes' }).click();
    await manDown.getByRole('img', { name: /^Man-down: / }).waitFor({ timeout: patience });
    const conceded = await manDown.locator('tbody tr td:nth-of-type(1)').allTextContents();
    expect(conceded.length).toBeGreaterThanOrEqual(9);
    expect(conceded).toEqual([...conceded].sort());
    await manDown.getByRole('combobox', { name: 'Sheet of' }).selectOption('Jump');
    await manDown.getByRole('img', { name: /^Man-down: Jump/ }).waitFor();
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(360);
    await expectAccessible(page);

    // Another question: the answer above is of the one before, and says so.
    await page.getByRole('combobox', { name: 'Set on the field' }).selectOption({ index: 1 });
    await probe.getByText('This is an answer to what was chosen before.').waitFor();
    expect(await manDown.getByRole('img').count()).toBe(0);
  },
);
