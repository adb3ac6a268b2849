import type { BrowserContext, Page } from 'playwright-core';

/** What a page has written down about itself since it was opened. All times are milliseconds since then. */
export interface PageRecord {
  /** When the field could first be taken hold of; `null` as long as it cannot. */
  readonly interactive: number | null;
  /** When and for how long nothing could be answered, as far as it was longer than 50 ms. */
  readonly longTasks: readonly { readonly start: number; readonly duration: number }[];
  /** The app's own measures: src/app/answers/mark-answers.ts. */
  readonly measures: readonly { readonly name: string; readonly start: number; readonly duration: number }[];
  /** When the pointer was last lifted. */
  readonly lifted: number;
  /** When the pointer was lifted, and how long until the picture that shows what came of it, where that took more than two pictures. */
  readonly lifts: readonly { readonly start: number; readonly duration: number }[];
}

/** What can be taken hold of on the field. */
export const gripSelector = 'main svg [role=button]';

/** Has every page of a context write its record. Belongs to the bench: the app knows nothing of it. */
export async function keepRecords(context: BrowserContext): Promise<void> {
  await context.addInitScript((selector) => {
    const record: {
      interactive: number | null;
      longTasks: { start: number; duration: number }[];
      measures: { name: string; start: number; duration: number }[];
      lifted: number;
      lifts: { start: number; duration: number }[];
    } = { interactive: null, longTasks: [], measures: [], lifted: 0, lifts: [] };
    Object.assign(window, { benchRecord: record });
    new PerformanceObserver((list) => {
      for (const { startTime, duration } of list.getEntries()) record.longTasks.push({ start: startTime, duration });
    }).observe({ type: 'longtask', buffered: true });
    new PerformanceObserver((list) => {
      for (const { name, startTime, duration } of list.getEntries())
        record.measures.push({ name, start: startTime, duration });
    }).observe({ type: 'measure', buffered: true });
    new PerformanceObserver((list) => {
      for (const { name, startTime, duration } of list.getEntries())
        if (name === 'pointerup') record.lifts.push({ start: startTime, duration });
    }).observe({ type: 'event', durationThreshold: 32, buffered: true } as PerformanceObserverInit);
    addEventListener('pointerup', ({ timeStamp }) => Object.assign(record, { lifted: timeStamp }), { capture: true });
    const look = () => {
      if (document.querySelector(selector) === null) requestAnimationFrame(look);
      // After the frame's own work, when a press would be answered.
      else setTimeout(() => Object.assign(record, { interactive: performance.now() }));
    };
    requestAnimationFrame(look);
  }, gripSelector);
}

export function readRecord(page: Page): Promise<PageRecord> {
  return page.evaluate(() => (window as unknown as { benchRecord: PageRecord }).benchRecord);
}

/** Waits until the record has what is asked for; `undefined` when it has not within so many milliseconds. */
export async function waitForRecord<T>(
  page: Page,
  find: (record: PageRecord) => T | undefined,
  patience: number,
): Promise<T | undefined> {
  const late = Date.now() + patience;
  while (Date.now() < late) {
    const found = find(await readRecord(page));
    if (found !== undefined) return found;
    await page.waitForTimeout(50);
  }
  return undefined;
}
