import type { Page } from 'playwright-core';

/** A play as the saved file has it, as far as these tests read it. */
export interface SavedPlay {
  readonly id: string;
  readonly name: string;
  readonly set: string;
  readonly spots?: Readonly<Record<string, readonly [number, number]>>;
  readonly start: { readonly ball: string; readonly restart: readonly [number, number] };
  readonly beats: readonly { readonly id: string; readonly on: string; readonly do: readonly string[] }[];
  readonly reads?: readonly { readonly carrier: string; readonly if: readonly string[]; readonly then: string }[];
}

export interface SavedPlaybook {
  readonly team: { readonly name: string };
  readonly plays: readonly SavedPlay[];
}

/** Milliseconds for what the simulation, or another tab, has to come to on a busy machine. */
export const longPatience = 120_000;

/** The bound of a test of many steps: it only ends a hung one, also where eight share the machine. Milliseconds. */
export const wholeTask = { timeout: 600_000 } as const;

/** Looks again until what is seen is as `isSo` wants it, and gives it; throws an Error with what was seen last when that takes too long. */
export async function seenOnce<T>(page: Page, look: () => Promise<T>, isSo: (seen: T) => boolean): Promise<T> {
  const late = Date.now() + longPatience;
  for (;;) {
    const seen = await look();
    if (isSo(seen)) return seen;
    if (Date.now() > late) throw new Error(`what is seen is still: ${JSON.stringify(seen)}`);
    await page.waitForTimeout(100);
  }
}

/** From the workbench as it opened: an empty playbook, by its Playbook place; then at Play. */
export async function startEmpty(page: Page, team = 'Elmwood'): Promise<void> {
  await page.getByRole('link', { name: 'Playbook' }).click();
  await page.getByLabel('Team').fill(team);
  await page.getByRole('button', { name: 'Start empty' }).click();
  await page.getByRole('heading', { level: 1, name: team }).waitFor();
  await page.getByRole('link', { name: 'Play', exact: true }).click();
  await page.getByText('This playbook has no play yet.').waitFor();
}

/** Makes a play by its window, with the pointer. The playbook has none yet. */
export async function makeFirstPlay(page: Page, name: string, set: string): Promise<void> {
  await page.getByRole('button', { name: 'New play' }).click();
  const window = page.getByRole('dialog', { name: 'New play' });
  await window.getByLabel('What you call it').fill(name);
  await window.getByRole('radio', { name: new RegExp(`^${set}\\b`) }).check();
  await window.getByRole('button', { name: 'Make the play' }).click();
  await window.waitFor({ state: 'hidden' });
  await page.getByRole('heading', { level: 1, name }).waitFor();
}

export const step = (page: Page, name: string | RegExp) =>
  page.getByRole('group', { name: 'Steps of the play' }).getByRole('button', { name });

/** The playbook as a file, by the button of the Playbook place; then back to the play. Also waits until all of it is kept. */
export async function savedPlaybook(page: Page): Promise<SavedPlaybook> {
  const place = new URL(page.url()).hash;
  await page.getByRole('link', { name: 'Playbook' }).click();
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save with names' }).click(),
  ]);
  const parts: Uint8Array[] = [];
  for await (const part of await download.createReadStream()) parts.push(part as Uint8Array);
  const saved = JSON.parse(Buffer.concat(parts).toString('utf8')) as SavedPlaybook & { readonly copies?: unknown };
  await page.evaluate((hash) => {
    window.location.hash = hash;
  }, place);
  await page.getByRole('region', { name: 'The field' }).or(page.getByText('This playbook has no play yet.')).waitFor();
  // What a file says of the moment at which it was saved is no part of the playbook.
  const { copies: _, ...playbook } = saved;
  return playbook;
}

export async function savedPlay(page: Page, name: string): Promise<SavedPlay> {
  const play = (await savedPlaybook(page)).plays.find((each) => each.name === name);
  if (play === undefined) throw new Error(`the file holds no play "${name}"`);
  return play;
}

/** What a scheme's card says. */
export interface CardAnswer {
  readonly name: string;
  readonly goals: number;
  readonly low: number;
  readonly high: number;
  readonly isGuess: boolean;
  /** The difference by the last edit, with its interval, as it is written; undefined when there is none. */
  readonly difference: string | undefined;
}

const cardWords =
  /^(?<name>.+): (?<goals>[\d.]+) goals a chance, (?<low>[\d.]+) to (?<high>[\d.]+)(?<guess>, a first guess)?(?:, (?<difference>[^,]+) against before)?/;

/** All cards that have an answer. */
export async function answers(page: Page): Promise<readonly CardAnswer[]> {
  const cards = page.getByRole('region', { name: 'Against the schemes' }).getByRole('button');
  const names = await cards.evaluateAll((all) => all.map((card) => card.getAttribute('aria-label') ?? ''));
  return names.flatMap((words) => {
    const found = cardWords.exec(words)?.groups;
    if (found === undefined) return [];
    const { name, goals, low, high, guess, difference } = found;
    return [
      {
        name: name!,
        goals: Number(goals),
        low: Number(low),
        high: Number(high),
        isGuess: guess !== undefined,
        difference,
      },
    ];
  });
}

/** The answers once they are as `isSo` wants them. */
export function answersOnce(page: Page, isSo: (all: readonly CardAnswer[]) => boolean): Promise<readonly CardAnswer[]> {
  return seenOnce(page, () => answers(page), isSo);
}

export const undoButton = (page: Page) => page.getByRole('button', { name: /^Undo/ });
export const redoButton = (page: Page) => page.getByRole('button', { name: /^Redo/ });
