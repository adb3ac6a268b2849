import type { Page } from 'playwright-core';
import { describe } from 'vitest';
import { browserTest } from './browser-test.ts';
import { expectAccessible } from './expect-accessible.ts';
import { keepScreenshot } from './keep-screenshot.ts';

/** A place of the workbench, and what tells that it is there. */
interface Place {
  readonly name: string;
  readonly hash: string;
  readonly isThere: (page: Page) => Promise<void>;
}

const places: readonly Place[] = [
  { name: 'play', hash: '#/play', isThere: (page) => page.getByRole('region', { name: 'The field' }).waitFor() },
  {
    name: 'reads',
    hash: '#/reads',
    isThere: (page) => page.getByRole('button', { name: 'Find the reads' }).waitFor(),
  },
  {
    name: 'team',
    hash: '#/team',
    isThere: (page) => page.getByRole('textbox', { name: 'Number of Odell Marsh' }).waitFor(),
  },
  {
    name: 'opponents',
    hash: '#/opponents',
    isThere: (page) => page.getByRole('navigation', { name: 'Opponents and own schemes' }).waitFor(),
  },
  {
    name: 'playbook',
    hash: '#/playbook',
    isThere: (page) => page.getByText('Everything is saved on this device.').waitFor(),
  },
];

/** What is drawn in a look, apart from paper, which every other test is in. */
const looks = ['dark', 'sun'] as const;

describe('every place is read by everybody', () => {
  for (const look of looks) {
    browserTest(`in the look "${look}"`, async ({ visit, address }) => {
      const { page, context } = await visit();
      await context.addInitScript((name) => {
        if (location.protocol === 'http:') localStorage.setItem('sliderule:look', name);
      }, look);
      for (const { name, hash, isThere } of places) {
        await page.goto(`${address}${hash}`);
        await isThere(page);
        await expectAccessible(page);
        await keepScreenshot(page, `${name}-${look}`);
      }
      await page.locator('input[type=file]').setInputFiles({
        name: 'empty.json',
        mimeType: 'application/json',
        buffer: Buffer.from('{ "format": "sliderule-playbook", }'),
      });
      await page.getByRole('heading', { name: '“empty.json” cannot be opened' }).waitFor();
      await expectAccessible(page);
      await keepScreenshot(page, `broken-file-${look}`);
    });
  }
});
