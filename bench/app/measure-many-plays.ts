import type { Browser } from 'playwright-core';
import { demoPlaybook, type Playbook, serializePlaybook } from '../../src/playbook/index.ts';
import { type Edit, measureEdits } from './measure-edits.ts';
import { keepRecords } from './page-record.ts';

/** Milliseconds in which the answers of the play that is opened become narrow, as before a drag of the demo. */
const settling = 5_000;

/** Opens a playbook of so many plays as a coach would, from a file, and drags men of one of them about. */
export async function measureManyPlays(
  browser: Browser,
  address: string,
  plays: number,
  drags: number,
): Promise<readonly Edit[]> {
  const context = await browser.newContext({ viewport: { width: 1280, height: 800 } });
  await keepRecords(context);
  const page = await context.newPage();
  await page.goto(`${address}#/playbook`);
  await page.keyboard.press('Escape');
  const big = playbookOf(plays);
  await page.locator('input[type=file]').setInputFiles({
    name: 'many.json',
    mimeType: 'application/json',
    buffer: Buffer.from(serializePlaybook(big)),
  });
  await page.getByRole('button', { name: 'Open it in place of mine' }).click();
  await page.goto(`${address}#/play/${big.plays[Math.floor(plays / 2)]!.id}`);
  await page.locator('main svg [role=button][aria-pressed]').first().waitFor();
  await page.waitForTimeout(settling);
  const edits = await measureEdits(page, drags);
  await context.close();
  return edits;
}

/** The demo's plays over and over, each under a name of its own. */
function playbookOf(count: number): Playbook {
  const plays = Array.from({ length: count }, (_, at) => {
    const play = demoPlaybook.plays[at % demoPlaybook.plays.length]!;
    return { ...play, id: `${play.id}-${at + 1}`, name: `${play.name} ${at + 1}` };
  });
  return { ...demoPlaybook, plays };
}
