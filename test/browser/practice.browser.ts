import { expect } from 'vitest';
import { browserTest } from './browser-test.ts';
import { expectAccessible } from './expect-accessible.ts';
import { keepScreenshot } from './keep-screenshot.ts';

/** Milliseconds in which a plan against the schemes of one opponent is made even on a busy machine. */
const patience = 150_000;

browserTest(
  'a practice plan is made, changed, kept, and there again after a reload; its pages carry the cautions',
  async ({ page, address }) => {
    await page.goto(`${address}#/teach/practice/quarry`);
    const panel = page.getByRole('region', { name: 'A practice plan' });
    await panel.waitFor();
    await panel.getByLabel('Players who come').fill('14');
    await panel.getByLabel('Players who come').press('Enter');
    await panel.getByLabel('Against').selectOption({ index: 1 });
    await panel.getByRole('combobox', { name: 'Goalkeeper' }).selectOption({ label: 'warms up in this time' });
    await panel.getByRole('button', { name: 'Make a plan' }).click();
    await panel.getByRole('progressbar', { name: 'How far the plan is' }).waitFor();
    const blocks = panel.getByRole('list', { name: 'Blocks of the plan' });
    await blocks.waitFor({ timeout: patience });
    await panel.getByText('The blocks take 20 min of 20 min.').waitFor();
    const kinds = blocks.getByRole('listitem');
    const count = await kinds.count();
    expect(count).toBeGreaterThanOrEqual(7);
    const plan = panel.getByRole('img', { name: /: practice plan$/ });
    for (const caution of ['ND200', 'ND049', 'lightning', 'written clearance', 'AED', 'licensed medical staff'])
      expect(((await plan.textContent()) ?? '').replace(/\s+/g, ' ')).toContain(caution);
    expect(await panel.getByRole('img').count()).toBeGreaterThanOrEqual(2);
    await expectAccessible(page);
    await keepScreenshot(page, 'practice');

    const walk = panel.getByLabel('Minutes of Walk-through');
    await walk.fill('4');
    await walk.press('Enter');
    await panel.getByText(/^The blocks take 2\d½? min: .* more than there is\./).waitFor();
    await panel.getByRole('button', { name: 'Fit the other blocks' }).click();
    await panel.getByText('The blocks take 20 min of 20 min.').waitFor();
    expect(await walk.inputValue()).toBe('4');
    await panel.getByRole('button', { name: 'Take the last change back' }).click();
    await panel.getByText(/more than there is\./).waitFor();
    await panel.getByRole('button', { name: 'Fit the other blocks' }).click();
    await panel.getByLabel('Name of the plan').fill('Tuesday in the rain');
    await panel.getByLabel('Name of the plan').press('Enter');
    await panel.getByRole('textbox', { name: 'Day' }).fill('2026-03-10');
    // Whatever the plan is called, its page says which play it is of, and when.
    await expect.poll(() => plan.textContent()).toMatch(/Quarry.*10 March 2026/s);
    await panel.getByLabel('Note on Walk-through').fill('By the far goal.');
    await panel.getByRole('button', { name: 'Keep it in the playbook' }).click();
    await panel.getByText('Kept in the playbook.').waitFor();

    await panel.getByRole('button', { name: 'Take out Goalkeeper warm-up' }).click();
    await expect.poll(() => kinds.count()).toBe(count - 1);
    await page.getByRole('button', { name: /^Undo/ }).click();
    await expect.poll(() => kinds.count()).toBe(count);

    await page
      .getByText(/^Saved/)
      .first()
      .waitFor();
    await page.reload();
    await panel.waitFor();
    await panel.getByLabel('Kept plans').selectOption({ label: 'Tuesday in the rain, 2026-03-10' });
    expect(await walk.inputValue()).toBe('4');
    expect(await panel.getByLabel('Note on Walk-through').inputValue()).toBe('By the far goal.');
    expect(await plan.textContent()).toContain('By the far goal.');
    // What the printer gets are the same pages.
    await page.evaluate(() => {
      window.print = () => undefined;
    });
    await panel.getByRole('button', { name: 'Print' }).click();
    const papers = page.locator('.printed-page');
    await papers.first().waitFor({ state: 'attached' });
    expect(await papers.count()).toBeGreaterThanOrEqual(2);
    for (const words of await papers.allTextContents()) expect(words).toContain('ND200');
    await page.evaluate(() => window.dispatchEvent(new Event('afterprint')));

    await page.setViewportSize({ width: 360, height: 740 });
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(360);
    await expectAccessible(page);
  },
);
