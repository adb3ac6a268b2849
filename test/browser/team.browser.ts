import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { browserTest } from './browser-test.ts';
import { expectAccessible } from './expect-accessible.ts';
import { keepScreenshot } from './keep-screenshot.ts';

/** Men of the demo's roster. */
const demoMen = 10;

async function openTeam(page: Page, address: string): Promise<void> {
  await page.goto(`${address}#/team`);
  await page.getByRole('textbox', { name: 'Number of Odell Marsh' }).waitFor();
}

/** Goes with Tab alone until a cell of the roster has the focus, and down to its empty row. */
async function tabToEmptyRow(page: Page): Promise<void> {
  for (let presses = 0; presses < 40; presses++) {
    await page.keyboard.press('Tab');
    const isInTable = await page.evaluate(
      () => document.activeElement instanceof HTMLElement && document.activeElement.dataset.cell !== undefined,
    );
    if (isInTable) {
      await page.keyboard.press('Control+ArrowDown');
      return;
    }
  }
  throw new Error('the roster cannot be reached with Tab');
}

const eight = [
  ['31', 'Gus Hollander', 'l'],
  ['32', 'Ike Toll', 'r'],
  ['33', 'Sam Brill', 'b'],
  ['34', 'Lou Carver', 'r'],
  ['35', 'Max Fenn', 'l'],
  ['36', 'Ray Osgood', 'r'],
  ['37', 'Abe Quill', 'r'],
  ['38', 'Ned Ruddock', 'l'],
] as const;

const handOf = (letter: string): string => ({ l: 'left', r: 'right', b: 'both' })[letter] ?? '';

browserTest(
  'a roster of eight is typed by keys alone, taken back cell by cell, and found again',
  async ({ page, address }) => {
    await openTeam(page, address);
    await tabToEmptyRow(page);
    for (const [number, name, hand] of eight) {
      await page.keyboard.type(number);
      await page.keyboard.press('Tab');
      await page.keyboard.type(name);
      await page.keyboard.press('Tab');
      await page.keyboard.press(hand);
      await page.keyboard.press('Enter');
    }
    for (const [number, name, hand] of eight) {
      expect(await page.getByRole('textbox', { name: `Number of ${name}` }).inputValue()).toBe(number);
      expect(await page.getByRole('combobox', { name: `Hand of ${name}` }).inputValue()).toBe(handOf(hand));
    }
    // The last man's hand, his name, and he himself, a cell a step.
    const last = page.getByRole('textbox', { name: 'Number of Ned Ruddock' });
    await page.keyboard.press('Control+z');
    expect(await page.getByRole('combobox', { name: 'Hand of Ned Ruddock' }).inputValue()).toBe('right');
    await page.keyboard.press('Control+z');
    await last.waitFor({ state: 'detached' });
    expect(await page.getByRole('textbox', { name: 'Number of number 38' }).inputValue()).toBe('38');
    await page.keyboard.press('Control+z');
    await page.getByRole('textbox', { name: 'Number of number 38' }).waitFor({ state: 'detached' });
    for (let steps = 0; steps < 3; steps++) await page.keyboard.press('Control+y');
    await last.waitFor();
    await page.getByRole('status').filter({ hasText: 'Saved here' }).waitFor();
    await page.reload();
    await last.waitFor();
    expect(await page.getByRole('textbox', { name: /^Name of (?!new man)/ }).count()).toBe(demoMen + eight.length);
    await expectAccessible(page);
    await keepScreenshot(page, 'team-roster');
  },
);

browserTest('what cannot be kept stays in its cell and is told beside it', async ({ page, address }) => {
  await openTeam(page, address);
  const number = page.getByRole('textbox', { name: 'Number of Teo Brandt' });
  await number.fill('eleven');
  await page.keyboard.press('Tab');
  await page.getByText('“eleven” is no jersey number').waitFor();
  expect(await number.inputValue()).toBe('eleven');
  await number.fill('4');
  await page.keyboard.press('Tab');
  await page.getByText('Odell Marsh wears 4 too').waitFor();
  expect(await number.getAttribute('aria-invalid')).toBe('true');
  await expectAccessible(page);
  await keepScreenshot(page, 'team-problems');
  await number.focus();
  await page.keyboard.press('Control+z');
  expect(await number.inputValue()).toBe('11');
  expect(await page.getByText('wears 4 too').count()).toBe(0);
});

browserTest(
  'a number that is typed anew keeps its place in the depth order, also on the way past another man’s',
  async ({ page, address }) => {
    await openTeam(page, address);
    // On the way from 4 to 19x stands 1, the goalkeeper's, and 19, who is second at X.
    await page.getByRole('textbox', { name: 'Number of Odell Marsh' }).click();
    await page.keyboard.type('199');
    await page.keyboard.press('Tab');
    await page.getByText('Spots and absences').click();
    const order = page.getByRole('region', { name: 'Order at each spot' });
    await order.getByText('1. 199 Odell Marsh').waitFor();
    await order.getByText('2. 19 Mateus Keller').waitFor();
  },
);

browserTest('ten rows are pasted from a spreadsheet, looked at, taken, and taken back', async ({ visit, address }) => {
  const { page, context } = await visit();
  await context.grantPermissions(['clipboard-read', 'clipboard-write']);
  await openTeam(page, address);
  const rows = Array.from(
    { length: 10 },
    (_, i) => `${50 + i}\tMan ${String.fromCharCode(65 + i)}\tleft\t${i === 3 ? '9' : '4'}`,
  );
  await page.evaluate((text) => navigator.clipboard.writeText(text), ['No\tName\tHand\tShoot', ...rows].join('\n'));
  await page.getByRole('textbox', { name: 'Number of new man' }).focus();
  await page.keyboard.press('Control+v');
  const table = page.getByRole('dialog', { name: 'Take in a table' });
  await table.getByText('"9" is no grade').waitFor();
  await expectAccessible(page);
  await keepScreenshot(page, 'team-paste');
  await table.getByRole('button', { name: 'Take in 10 men' }).click();
  expect(await page.getByRole('textbox', { name: 'Shoot: speed and aim of shots of Man A' }).inputValue()).toBe('4');
  expect(await page.getByRole('textbox', { name: 'Shoot: speed and aim of shots of Man D' }).inputValue()).toBe('');
  await page.getByRole('button', { name: /^Undo/ }).click();
  await page.getByRole('textbox', { name: 'Number of Man A' }).waitFor({ state: 'detached' });
  expect(await page.getByRole('textbox', { name: /^Name of (?!new man)/ }).count()).toBe(demoMen);
});

browserTest('readings are typed in the unit of the coach and say what they count as', async ({ page, address }) => {
  await openTeam(page, address);
  await page.getByRole('radio', { name: 'Readings' }).click();
  await page.getByRole('radio', { name: 'km/h' }).click();
  // 58 mph are 93.3 km/h: the mile is 1.609344 km by definition.
  const shots = page.getByRole('textbox', { name: 'Speed of his shots, km/h, each try of Ravi Lindqvist' });
  expect(await shots.inputValue()).toMatch(/^93\.3 /);
  await expectAccessible(page);
  await keepScreenshot(page, 'team-readings');
  await page.getByRole('button', { name: 'All of Ravi Lindqvist' }).click();
  const panel = page.getByRole('dialog', { name: 'Ravi Lindqvist' });
  await panel.getByText(/5 readings, mean 96\.6 km\/h\. Counts as/).waitFor();
  await panel.getByText('His shot readings and his shots on goal count instead of this grade.').waitFor();
  await expectAccessible(page);
});

browserTest('an absence changes the six at once, and a man can be fixed at a spot', async ({ page, address }) => {
  await openTeam(page, address);
  await page.getByText('Spots and absences').click();
  const best = page.getByRole('region', { name: 'Best six, as it is written' });
  const at = (spot: string) => best.getByRole('listitem').filter({ has: page.getByText(spot, { exact: true }) });
  expect(await at('X').textContent()).toContain('4 Odell Marsh');
  expect(await at('X').textContent()).toMatch(/Without him: .*[\d.]+ points? of fit less/);
  await page.getByRole('button', { name: 'Odell Marsh is absent today' }).click();
  await at('X').getByText('19 Mateus Keller').waitFor();
  await page.getByRole('combobox', { name: 'Add a man at C' }).selectOption({ label: '28 Silas Prewitt' });
  await at('C').getByText('28 Silas Prewitt').waitFor();
  expect(await at('C').textContent()).toContain('fixed there by you');
  await expectAccessible(page);
  await keepScreenshot(page, 'team-spots');
  await page.keyboard.press('Control+z');
  await at('C').getByText('16 Jonah Whitlock').waitFor();
});

browserTest('at 8U the page says that no team is a man up in games', async ({ page, address }) => {
  await openTeam(page, address);
  await page.getByRole('combobox', { name: 'Level', exact: true }).selectOption('8U');
  await page.getByText('At this age no team is a man up in games').waitFor();
});

browserTest('on a phone the roster is cards, and a man opens over the whole screen', async ({ visit, address }) => {
  const { page } = await visit({ viewport: { width: 360, height: 740 }, hasTouch: true });
  await page.goto(`${address}#/team`);
  await page.getByRole('button', { name: /Odell Marsh.*Right hand/ }).tap();
  const panel = page.getByRole('dialog', { name: 'Odell Marsh' });
  expect((await panel.boundingBox())?.width).toBe(360);
  await panel
    .getByRole('radiogroup', { name: 'Shoot, 1 to 5' })
    .or(panel.getByRole('group', { name: 'Shoot, 1 to 5' }))
    .getByText('4')
    .tap();
  await expectAccessible(page);
  await panel.getByRole('button', { name: 'Close' }).tap();
  await page
    .getByText(/Right hand · .*shoot 4/)
    .first()
    .waitFor();
  await expectAccessible(page);
});

browserTest('a column of readings is pasted over the men from a cell on', async ({ visit, address }) => {
  const { page, context } = await visit();
  await context.grantPermissions(['clipboard-read', 'clipboard-write']);
  await openTeam(page, address);
  await page.getByRole('radio', { name: 'Readings' }).click();
  await page.evaluate(() => navigator.clipboard.writeText('52 54\nfast\n61'));
  const shots = (name: string) => page.getByRole('textbox', { name: `Speed of his shots, mph, each try of ${name}` });
  await shots('Teo Brandt').focus();
  await page.keyboard.press('Control+v');
  const block = page.getByRole('dialog', { name: 'Paste into the roster' });
  await block.getByText('“fast” is no reading').waitFor();
  await expectAccessible(page);
  await block.getByRole('button', { name: 'Paste 2 cells' }).click();
  expect(await shots('Teo Brandt').inputValue()).toBe('52 54');
  expect(await shots('Caleb Osei').inputValue()).toBe('');
  expect(await shots('Jonah Whitlock').inputValue()).toBe('61');
});
