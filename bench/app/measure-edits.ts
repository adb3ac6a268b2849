import type { Page } from 'playwright-core';
import { gripSelector, type PageRecord, readRecord, waitForRecord } from './page-record.ts';

/** One drag of one man: milliseconds from the lifting of the pointer to each stage of the answers; undefined for a stage not reached. */
export interface Edit {
  readonly first: number | undefined;
  readonly near: number | undefined;
  readonly fair: number | undefined;
  /** To the picture in which the man stands where he was let go; not under 32, which is as fine as it is measured. */
  readonly painted: number;
  /** The longest task of the page meanwhile. */
  readonly longestTask: number;
}

/** Milliseconds after which an answer is given up. */
const patience = 20_000;

/** Drags men of the play about, each time to a place where none has been, and waits for what the simulation says. */
export async function measureEdits(page: Page, count: number): Promise<readonly Edit[]> {
  const edits: Edit[] = [];
  const men = page.locator(`${gripSelector}[aria-pressed]`);
  const six = await men.count();
  if (six === 0) throw new Error('there is no man to drag on the field');
  for (let edit = 0; edit < count; edit++) {
    const before = await readRecord(page);
    const box = await men.nth(edit % six).boundingBox();
    if (box === null) throw new Error('a man of the field is not to be seen');
    const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
    // There and back, by another width each time: nobody is pushed onto his neighbour, and no place comes twice.
    const step = (edit % (2 * six) < six ? 1 : -1) * (10 + 2 * edit);
    await page.mouse.move(x, y);
    await page.mouse.down();
    for (let part = 1; part <= 5; part++) await page.mouse.move(x + (step * part) / 5, y + (6 * part) / 5);
    await page.mouse.up();
    const after = (wanted: string) =>
      waitForRecord(
        page,
        ({ measures, lifted }) => {
          const ends = measures.filter(({ name }) => name === wanted).map(({ start, duration }) => start + duration);
          const end = lifted > before.lifted ? ends.find((one) => one >= lifted) : undefined;
          return end === undefined ? undefined : end - lifted;
        },
        patience,
      );
    const near = await after('sliderule:within-0.05');
    const fair = await after('sliderule:within-0.03');
    const record = await readRecord(page);
    // The place is asked about from the last move on: a guess may be there before the pointer is lifted, and is then waited for no more.
    const first = near === undefined ? undefined : (firstEnd(record) ?? 0);
    const { longTasks, lifts, lifted } = record;
    const during = longTasks.filter(({ start }) => start >= lifted - 500).map(({ duration }) => duration);
    const painted = lifts.find(({ start }) => start >= lifted - 1)?.duration ?? 32;
    edits.push({ first, near, fair, painted, longestTask: Math.max(0, ...during) });
  }
  return edits;
}

/** Milliseconds from the lifting of the pointer to the first guess that came after it; undefined when none did. */
function firstEnd({ measures, lifted }: PageRecord): number | undefined {
  const ends = measures
    .filter(({ name }) => name === 'sliderule:first-answer')
    .map(({ start, duration }) => start + duration - lifted);
  return ends.find((end) => end >= 0);
}
