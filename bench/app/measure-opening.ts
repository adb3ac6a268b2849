import type { Browser } from 'playwright-core';
import { keepRecords, waitForRecord } from './page-record.ts';

/** One first visit, in milliseconds since the address was asked for. */
export interface Opening {
  readonly interactive: number;
  /** When every scheme had its first guess; undefined when that was not seen. */
  readonly firstAnswer: number | undefined;
  readonly longestTask: number;
}

/** Milliseconds after which a visit is given up. */
const patience = 60_000;

/** Opens the workbench for the first time, in a browser that knows nothing of it, so many times. */
export async function measureOpening(browser: Browser, address: string, visits: number): Promise<readonly Opening[]> {
  const openings: Opening[] = [];
  for (let visit = 0; visit < visits; visit++) {
    const context = await browser.newContext({ viewport: { width: 1280, height: 800 } });
    await keepRecords(context);
    const page = await context.newPage();
    await page.goto(address);
    const interactive = await waitForRecord(page, (record) => record.interactive ?? undefined, patience);
    if (interactive === undefined) throw new Error('the field could not be taken hold of in time');
    const firstAnswer = await waitForRecord(
      page,
      ({ measures }) => endOf(measures, 'sliderule:first-answer'),
      patience,
    );
    const longestTask = await waitForRecord(
      page,
      ({ longTasks }) => Math.max(0, ...longTasks.map(({ duration }) => duration)),
      patience,
    );
    openings.push({ interactive, firstAnswer, longestTask: longestTask ?? 0 });
    await context.close();
  }
  return openings;
}

function endOf(
  measures: readonly { readonly name: string; readonly start: number; readonly duration: number }[],
  wanted: string,
): number | undefined {
  const found = measures.find(({ name }) => name === wanted);
  return found && found.start + found.duration;
}
