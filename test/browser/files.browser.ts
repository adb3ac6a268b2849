import type { Download, Page } from 'playwright-core';
import { describe, expect } from 'vitest';
import { browserTest, type Visitor } from './browser-test.ts';
import { expectAccessible } from './expect-accessible.ts';
import { keepScreenshot } from './keep-screenshot.ts';

interface Named {
  readonly id: string;
  readonly name: string;
}

/** A playbook's file as far as these tests write in it. */
interface PlaybookText {
  readonly team: {
    readonly name: string;
    readonly roster: readonly { readonly number: number; readonly name: string }[];
  };
  readonly plays: readonly (Named & { readonly beats: readonly object[]; readonly notes?: string })[];
}

async function textOf(download: Download): Promise<string> {
  const parts: Uint8Array[] = [];
  for await (const part of await download.createReadStream()) parts.push(part as Uint8Array);
  return Buffer.concat(parts).toString('utf8');
}

/** Presses a button that saves a file; gives the file. */
async function save(page: Page, button: string): Promise<{ readonly fileName: string; readonly text: string }> {
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: button }).click(),
  ]);
  return { fileName: download.suggestedFilename(), text: await textOf(download) };
}

/** Chooses a file, as the window of the device does. */
async function choose(page: Page, name: string, text: string): Promise<void> {
  await page
    .locator('input[type=file]')
    .setInputFiles({ name, mimeType: 'application/json', buffer: Buffer.from(text) });
}

/** Drags a file over the page and lets go of it. */
async function drop(page: Page, name: string, text: string): Promise<void> {
  const dataTransfer = await page.evaluateHandle(
    ([title, content]) => {
      const held = new DataTransfer();
      held.items.add(new File([content], title, { type: 'application/json' }));
      return held;
    },
    [name, text] as const,
  );
  await page.dispatchEvent('body', 'dragover', { dataTransfer });
  await page.getByText('Let go to open it.').waitFor();
  await page.dispatchEvent('body', 'drop', { dataTransfer });
}

async function openPlaybookPlace({ page }: Visitor, address: string): Promise<void> {
  await page.goto(`${address}#/playbook`);
  await page.getByRole('heading', { level: 1, name: 'Tamarack Harriers' }).waitFor();
  await page.getByText('Everything is saved on this device.').waitFor();
}

const heading = (page: Page, name: string | RegExp) => page.getByRole('heading', { name });

function changed(text: string, change: (file: PlaybookText) => PlaybookText): string {
  return JSON.stringify(change(JSON.parse(text)), null, 2);
}

function withPlay(id: string, part: Partial<PlaybookText['plays'][number]>): (file: PlaybookText) => PlaybookText {
  return (file) => ({ ...file, plays: file.plays.map((play) => (play.id === id ? { ...play, ...part } : play)) });
}

describe('the playbook as a file', () => {
  browserTest('goes out with names or without, and says so in its name', async ({ visit, address }) => {
    const visitor = await visit();
    const { page } = visitor;
    await openPlaybookPlace(visitor, address);
    await expectAccessible(page);
    await keepScreenshot(page, 'playbook');
    const named = await save(page, 'Save with names');
    expect(named.fileName).toMatch(/^tamarack-harriers-\d{4}-\d\d-\d\d\.json$/);
    const { roster } = (JSON.parse(named.text) as PlaybookText).team;
    expect(roster.map(({ name }) => name)).toContain('Odell Marsh');
    const nameless = await save(page, 'Save without names');
    expect(nameless.fileName).toMatch(/-numbers-only\.json$/);
    for (const part of roster.flatMap(({ name }) => name.split(' '))) expect(nameless.text).not.toContain(part);
    await page.getByRole('status').filter({ hasText: nameless.fileName }).waitFor();
  });

  browserTest('is not touched by a broken file, which says where it is wrong', async ({ visit, address }) => {
    const visitor = await visit();
    const { page } = visitor;
    await openPlaybookPlace(visitor, address);
    const { text } = await save(page, 'Save with names');
    await choose(page, 'cut.json', `${text.slice(0, 700)}\n<img src=x onerror=alert(1)>`);
    await heading(page, '“cut.json” cannot be opened').waitFor();
    await page
      .getByText(/^Wrong, line \d+, column \d+/)
      .first()
      .waitFor();
    expect(await page.getByText('Nothing in your playbook was changed.').count()).toBe(1);
    await expectAccessible(page);
    await keepScreenshot(page, 'broken-file');
    await page.getByRole('button', { name: 'Back' }).click();
    await heading(page, 'Tamarack Harriers').waitFor();
    expect(await page.getByRole('button', { name: /^Undo/ }).isDisabled()).toBe(true);
    expect((await save(page, 'Save with names')).text.replace(/,\s*"copies".*/s, '')).toBe(
      text.replace(/,\s*"copies".*/s, ''),
    );
  });

  browserTest('can be opened half written, in place of what is here, and taken back', async ({ visit, address }) => {
    const visitor = await visit();
    const { page } = visitor;
    await openPlaybookPlace(visitor, address);
    const { text } = await save(page, 'Save with names');
    const half = changed(text, (file) => ({
      ...withPlay('ferry', { beats: [{ id: 'give', on: 'start', do: ['P pass'] }] })(file),
      team: { ...file.team, name: 'Half Written' },
    }));
    await choose(page, 'half.json', half);
    await heading(page, '“half.json” is not finished').waitFor();
    await page
      .getByText(/^Wrong, line \d+, column \d+/)
      .first()
      .waitFor();
    await expectAccessible(page);
    await keepScreenshot(page, 'unfinished-file');
    await page.getByRole('button', { name: 'Open it in place of mine' }).click();
    await heading(page, 'Half Written').waitFor();
    await page.getByRole('button', { name: 'Undo it' }).click();
    await heading(page, 'Tamarack Harriers').waitFor();
  });

  browserTest('is opened when it is dropped on the page', async ({ visit, address }) => {
    const visitor = await visit();
    const { page } = visitor;
    await openPlaybookPlace(visitor, address);
    const { text } = await save(page, 'Save with names');
    await drop(page, 'dropped.json', text);
    await heading(page, '“dropped.json” can be opened').waitFor();
  });

  browserTest('is opened in the Playbook place wherever it is dropped', async ({ visit, address }) => {
    const visitor = await visit();
    const { page } = visitor;
    await openPlaybookPlace(visitor, address);
    const { text } = await save(page, 'Save with names');
    for (const place of ['Play', 'Team', 'Scout']) {
      await page.getByRole('link', { name: place, exact: true }).click();
      await page.getByRole('heading', { level: 1 }).waitFor();
      await drop(page, `${place}.json`, text);
      await heading(page, `“${place}.json” can be opened`).waitFor();
      await page.getByText('Let go to open it.').waitFor({ state: 'hidden' });
    }
    // Nothing is opened before the coach says so.
    await page.getByRole('link', { name: 'Playbook' }).click();
    await page.getByRole('link', { name: 'Play', exact: true }).click();
    await page.getByRole('heading', { level: 1, name: 'Lantern' }).waitFor();
  });

  browserTest(
    'is merged with a copy that comes back changed, by choice where both changed',
    async ({ visit, address }) => {
      const visitor = await visit();
      const { page } = visitor;
      await openPlaybookPlace(visitor, address);
      const { text } = await save(page, 'Save with names');
      await choose(page, 'mine.json', changed(text, withPlay('lantern', { name: 'Lantern of the coach' })));
      await page.getByRole('button', { name: 'Open it in place of mine' }).click();
      const theirs = (file: PlaybookText) =>
        withPlay('quarry', { notes: 'Tried on Tuesday.' })(
          withPlay('lantern', { name: 'Lantern of the assistant' })(file),
        );
      await choose(page, 'assistant.json', changed(text, theirs));
      await page.getByRole('button', { name: 'Merge it with mine' }).click();
      await page.getByText('1 change comes in by itself. You decide: 1 as yours.').waitFor();
      expect(await page.getByText('Play “Quarry”').count()).toBe(1);
      await page.getByText('Lantern of the assistant').waitFor();
      await page.getByText('Play “Quarry”').click();
      await page.getByText('Tried on Tuesday.').waitFor();
      await expectAccessible(page);
      await keepScreenshot(page, 'merge');
      await page.getByRole('radio', { name: 'Both' }).click();
      await page.getByRole('button', { name: 'Take these' }).click();
      await page.getByText('“assistant.json” was merged.').waitFor();
      const merged = JSON.parse((await save(page, 'Save with names')).text) as PlaybookText;
      expect(merged.plays.map(({ name }) => name)).toEqual([
        'Lantern of the coach',
        'Lantern of the assistant (2)',
        'Quarry',
        'Ferry',
      ]);
      expect(merged.plays[2]!.notes).toBe('Tried on Tuesday.');
    },
  );
});

describe('what the playbook was before', () => {
  browserTest('is looked at, and comes back as a step that can be undone', async ({ visit, address }) => {
    const visitor = await visit();
    const { page } = visitor;
    await openPlaybookPlace(visitor, address);
    await page.getByLabel('Team').fill('Hillside');
    await page.getByLabel('Level').selectOption('10U');
    await page.getByText(/no team is ever a man up in games/).waitFor();
    await page.getByRole('button', { name: 'Start empty' }).click();
    await heading(page, 'Hillside').waitFor();
    const row = page.getByRole('listitem').filter({ hasText: 'When the page was opened' });
    await row.getByRole('button', { name: /^What changed/ }).click();
    await row.getByText('Play “Lantern”').click();
    await row.getByText('X skips to TR').waitFor();
    await expectAccessible(page);
    await keepScreenshot(page, 'versions');
    await row.getByRole('button', { name: /^Bring back/ }).click();
    await heading(page, 'Tamarack Harriers').waitFor();
    await page.getByRole('button', { name: 'Undo it' }).click();
    await heading(page, 'Hillside').waitFor();
    await page.getByRole('button', { name: 'Start from the demo' }).click();
    await heading(page, 'Tamarack Harriers').waitFor();
  });
});

describe('when what is typed is not safe', () => {
  browserTest('a browser that keeps nothing is told of, with a way to save a file', async ({ visit, address }) => {
    const { page, context } = await visit();
    await context.addInitScript(() => Object.defineProperty(window, 'indexedDB', { value: undefined }));
    await page.goto(`${address}#/playbook`);
    await page.getByText('None is kept: this browser does not let the page save.').waitFor();
    await expectAccessible(page);
    await keepScreenshot(page, 'nothing-kept');
    expect((await save(page, 'Save a file now')).text).toContain('Odell Marsh');
  });

  browserTest('a full device is told of, and that it is over', async ({ visit, address }) => {
    const { page, context } = await visit();
    await context.addInitScript(() => {
      const add = IDBObjectStore.prototype.add;
      IDBObjectStore.prototype.add = function (...args) {
        if (sessionStorage.getItem('full') !== null) throw new DOMException('no room', 'QuotaExceededError');
        return add.apply(this, args);
      };
    });
    await page.clock.install();
    await openPlaybookPlace({ page } as Visitor, address);
    await page.evaluate(() => sessionStorage.setItem('full', 'yes'));
    await page.getByRole('button', { name: 'Start from the demo' }).click();
    await page.getByLabel('Team').fill('Hillside');
    await page.getByRole('button', { name: 'Start empty' }).click();
    const banner = page.getByRole('status').filter({ hasText: 'This device has no room left' });
    await banner.waitFor();
    await expectAccessible(page);
    await keepScreenshot(page, 'device-full');
    await page.evaluate(() => sessionStorage.clear());
    // It is tried again by itself after a while, which need not be waited for.
    await page.clock.fastForward(30_000);
    await banner.waitFor({ state: 'hidden' });
  });

  browserTest('what was damaged is told of, can be downloaded, and is kept beside', async ({ visit, address }) => {
    const visitor = await visit();
    const { page } = visitor;
    await openPlaybookPlace(visitor, address);
    await page.evaluate(
      () =>
        new Promise<void>((resolve, reject) => {
          const request = indexedDB.open('sliderule/playbook');
          request.onerror = () => reject(request.error);
          request.onsuccess = () => {
            const transaction = request.result.transaction('updates', 'readwrite');
            const updates = transaction.objectStore('updates');
            updates.openCursor().onsuccess = (event) => {
              const cursor = (event.target as IDBRequest<IDBCursorWithValue>).result;
              cursor.update({ ...cursor.value, bytes: new Uint8Array([1, 2, 3]) });
            };
            transaction.oncomplete = () => {
              request.result.close();
              resolve();
            };
          };
        }),
    );
    await page.reload();
    const banner = page.getByRole('status').filter({ hasText: 'could not be read whole' });
    await banner.waitFor();
    await expectAccessible(page);
    await keepScreenshot(page, 'found-damaged');
    expect((await save(page, 'Download what was found')).text).toContain('sliderule-raw-updates');
    await banner.getByRole('button', { name: 'Go on beside it' }).click();
    await banner.waitFor({ state: 'hidden' });
    await heading(page, 'Found damaged').waitFor();
    await page.getByRole('button', { name: 'Take number 1 out' }).click();
    await page.getByRole('button', { name: 'Take it out' }).click();
    await heading(page, 'Found damaged').waitFor({ state: 'hidden' });
  });
});

describe('the guided first minute', () => {
  const card = (page: Page) => page.getByRole('region', { name: 'Guided first minute' });

  browserTest('is offered once, is left with Escape, and can be asked for again', async ({ visit, address }) => {
    const { page } = await visit({ firstMinute: true });
    await page.goto(address);
    await card(page).getByRole('heading', { name: 'Drag a man' }).waitFor();
    await expectAccessible(page);
    await keepScreenshot(page, 'first-minute');
    for (const title of ['See the answers change', 'Press play', 'Find where it fails', 'Make it your own']) {
      await card(page).getByRole('button', { name: 'Next' }).press('Enter');
      await card(page).getByRole('heading', { name: title }).waitFor();
    }
    await page.keyboard.press('Escape');
    await card(page).waitFor({ state: 'hidden' });
    await page.reload();
    await page.getByText('Saved here').waitFor();
    expect(await card(page).count()).toBe(0);
    await page.getByRole('link', { name: 'Playbook' }).click();
    await page.getByRole('button', { name: 'Show me round' }).click();
    await card(page).getByRole('heading', { name: 'Drag a man' }).waitFor();
    expect(await page.evaluate(() => document.activeElement?.textContent)).toBe('Drag a man');
  });

  browserTest('leads to an empty playbook on a phone', async ({ visit, address }) => {
    const { page } = await visit({ firstMinute: true, viewport: { width: 360, height: 740 }, hasTouch: true });
    await page.goto(address);
    // By key: the card goes from place to place under the finger while the page is still being laid out.
    for (let step = 0; step < 4; step++) await card(page).getByRole('button', { name: 'Next' }).press('Enter');
    await card(page).getByRole('heading', { name: 'Make it your own' }).waitFor();
    const box = await card(page).boundingBox();
    expect(box!.x).toBeGreaterThanOrEqual(0);
    expect(box!.x + box!.width).toBeLessThanOrEqual(360);
    expect(box!.y + box!.height).toBeLessThanOrEqual(740);
    await card(page).getByRole('link', { name: 'Start empty' }).tap();
    await page.getByRole('button', { name: 'Start empty' }).waitFor();
    expect(await card(page).count()).toBe(0);
  });
});
