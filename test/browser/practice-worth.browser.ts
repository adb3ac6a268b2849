import { expect } from 'vitest';
import { browserTest } from './browser-test.ts';
import { expectAccessible } from './expect-accessible.ts';
import { keepScreenshot } from './keep-screenshot.ts';

/** Milliseconds in which all that the six could practise has been tried a little even on a busy machine: nine skills against the few schemes of one opponent. */
const patience = 150_000;

browserTest(
  'what practice of all six is worth to a play is found, and the search for what each man’s is worth is stopped',
  async ({ page, address }) => {
    await page.goto(`${address}#/reads/lantern`);
    const panel = page.getByRole('region', { name: 'What practice is worth' });
    await panel.waitFor();
    await page.getByLabel('Against').selectOption({ index: 1 });
    await panel.getByRole('button', { name: 'Find what practice is worth' }).click();
    await panel.getByRole('progressbar', { name: /^How far the search/ }).waitFor();
    const unit = panel.getByRole('region', { name: 'All six together' });
    await unit.waitFor({ timeout: patience });
    await panel.getByRole('button', { name: /^Stop/ }).click();
    await panel.getByText('Stopped. What was found until then stays').waitFor();

    expect(await unit.locator('tbody').getByRole('row').count()).toBe(9);
    await unit
      .getByText(
        /^(The best thing for all six to practise: |Known roughly so far|No one thing is surely |Nothing that all six )/,
      )
      .waitFor();
    await unit.getByRole('row', { name: /^shooting [+−]?\d*\.\d \([−\d.]+ to [−\d.]+\)/ }).waitFor();
    await panel.getByText(/4 at X in catching, passing/).waitFor();
    await expectAccessible(page);
    await keepScreenshot(page, 'practice-worth');

    await page.getByLabel('Against').selectOption({ index: 0 });
    await panel.getByText('have changed since this was found').waitFor();
  },
);
