import type { Locator, Page } from 'playwright-core';

/** More stops than a place of the workbench has. */
const mostStops = 250;

/** Presses Tab until the element has the focus. Throws an Error when it never comes to it. */
export async function tabTo(page: Page, wanted: Locator, key: 'Tab' | 'Shift+Tab' = 'Tab'): Promise<void> {
  await wanted.waitFor();
  // Found once, not at every stop: to look through a whole page for a name takes longer than to press a key.
  let element = await wanted.elementHandle();
  for (let stop = 0; stop < mostStops; stop++) {
    const focus = await element?.evaluate((one) =>
      one === document.activeElement ? 'here' : one.isConnected ? 'elsewhere' : 'gone',
    );
    if (focus === 'here') return;
    if (focus !== 'elsewhere') element = await wanted.elementHandle();
    else await page.keyboard.press(key);
  }
  throw new Error(`Tab never comes to ${wanted}`);
}

/** Goes to a control and presses a key on it. */
export async function pressOn(page: Page, wanted: Locator, key: string): Promise<void> {
  await tabTo(page, wanted);
  await page.keyboard.press(key);
}

/** Goes to a list of choices and down it from its first line until it says `value`. */
export async function pickWithKeys(page: Page, list: Locator, value: string): Promise<void> {
  await tabTo(page, list);
  await page.keyboard.press('Home');
  for (let line = 0; line < 40; line++) {
    if ((await list.inputValue()) === value) return;
    await page.keyboard.press('ArrowDown');
  }
  throw new Error(`the list has no "${value}"`);
}
