import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect } from 'vitest';
import { type Quiz, type QuizQuestion, readResultCode } from '../../src/render/index.ts';
import { browserTest, type VisitOptions } from './browser-test.ts';
import { expectAccessible } from './expect-accessible.ts';
import { keepScreenshot } from './keep-screenshot.ts';

// A quiz from the coach's desk to a player's phone and back: made and saved in the workbench, played as a file with the network off, its code loaded.

let folder = '';
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'quiz-page-'));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** Milliseconds in which a quiz is made even on a busy machine. */
const patience = 150_000;
const phone: VisitOptions = { viewport: { width: 360, height: 740 }, hasTouch: true };

/** Where the page of the first test lies: the second opens the same, as another phone would. */
let saved: string | undefined;

/** Makes a quiz in the workbench and saves its page; gives where. */
async function savedQuiz(page: Page, address: string): Promise<{ readonly path: string; readonly quiz: Quiz }> {
  await page.goto(`${address}#/teach/quiz/ferry`);
  const panel = page.getByRole('region', { name: 'A quiz of the reads' });
  await panel.getByLabel('Against').selectOption({ label: 'Jump' });
  await panel.getByLabel('Questions').selectOption('6');
  await panel.getByLabel('Time to answer').selectOption('3');
  await panel.getByRole('button', { name: 'Make the quiz' }).click();
  await panel.getByRole('progressbar', { name: 'How far the quiz is' }).waitFor();
  await panel.getByRole('list', { name: 'The questions' }).waitFor({ timeout: patience });
  const saving = page.waitForEvent('download');
  await panel.getByRole('button', { name: 'Save the page' }).click();
  const path = join(folder, 'quiz.html');
  await (await saving).saveAs(path);
  saved = path;
  const html = readFileSync(path, 'utf8');
  expect(html.length).toBeLessThan(300_000);
  return { path, quiz: JSON.parse(/id="quiz">(.*)<\/script>/.exec(html)?.[1] ?? '') };
}

/** Which question of the quiz stands on the page, by the words of its buttons and who has the ball. */
async function shownQuestion(page: Page, { questions, spots }: Quiz): Promise<number> {
  await page.getByRole('heading', { name: /with the ball/ }).waitFor();
  const [, carrier] = /^You are (\S+)/.exec((await page.locator('#prompt').textContent()) ?? '') ?? [];
  const words = await page.locator('#choices button span:last-child').allTextContents();
  const described = (await page.locator('#field').getAttribute('aria-label')) ?? '';
  const asked = questions.flatMap((question, at) =>
    spots[question.carrier] === carrier && question.choices.map((choice) => choice.words).join() === words.join()
      ? [at]
      : [],
  );
  // Two moments may offer the same: the picture in words tells them apart.
  if (asked.length === 1) return asked[0]!;
  return asked.find((at) => momentKey.get(at) === described) ?? asked.find((at) => !momentKey.has(at))!;
}
const momentKey = new Map<number, string>();

async function choose(page: Page, question: QuizQuestion, right: boolean): Promise<void> {
  const at = question.choices.findIndex((choice) => choice.right === right);
  await page.locator('#choices button').nth(at).tap();
  await page.getByRole('heading', { name: right ? /^Right/ : /^Not this time/ }).waitFor();
}

describe('a quiz', () => {
  browserTest(
    'goes from the desk to a phone without a network, and its code comes back',
    async ({ page, address, visit }) => {
      const { path, quiz } = await savedQuiz(page, address);
      expect(quiz.questions.length).toBeGreaterThanOrEqual(4);
      await page.getByText(`Quiz ${quiz.id} is saved as a page and kept in the playbook`).waitFor();
      await expectAccessible(page);
      await keepScreenshot(page, 'quiz-desk');

      const { page: player, context } = await visit(phone);
      const asked: string[] = [];
      player.on('request', (request) => {
        if (!request.url().startsWith('file:') && !request.url().startsWith('blob:')) asked.push(request.url());
      });
      await context.setOffline(true);
      await player.goto(pathToFileURL(path).href);
      await expectAccessible(player);
      expect(await player.getByRole('button', { name: 'Begin' }).isDisabled()).toBe(true);
      await player.getByLabel('Another number').fill('23');
      await player.getByLabel('No clock').check();
      await player.getByRole('button', { name: /^Begin: \d+ questions$/ }).tap();

      // The first is missed, and comes back after two others; all else is right.
      const order: number[] = [];
      const answers = quiz.questions.map(() => ({ asked: 0, right: 0 }));
      while (await player.locator('#ask').isVisible()) {
        const at = await shownQuestion(player, quiz);
        momentKey.set(at, (await player.locator('#field').getAttribute('aria-label')) ?? '');
        if (order.length === 0) {
          await expectAccessible(player);
          await keepScreenshot(player, 'quiz-question');
        }
        const isRight = order.length > 0;
        await choose(player, quiz.questions[at]!, isRight);
        if (order.length === 0) {
          await expectAccessible(player);
          await keepScreenshot(player, 'quiz-answer');
          expect(await player.locator('#reason').textContent()).toBe(quiz.questions[at]!.reason);
          expect(await player.locator('#said').textContent()).toContain('This one comes back.');
          await player.getByRole('button', { name: /^Watch yours/ }).tap();
          await player.getByRole('button', { name: /^Watch: / }).tap();
        }
        answers[at]!.asked += 1;
        answers[at]!.right += isRight ? 1 : 0;
        order.push(at);
        await player.getByRole('button', { name: 'Next' }).tap();
      }
      expect(order[3]).toBe(order[0]);
      expect(new Set(order.slice(0, 3)).size).toBe(3);
      expect(await player.getByRole('heading', { level: 2 }).textContent()).toBe(
        `${quiz.questions.length - 1} of ${quiz.questions.length} right at once`,
      );
      await expectAccessible(player);
      await keepScreenshot(player, 'quiz-end');
      expect(asked).toEqual([]);

      const code = (await player.locator('#code').textContent()) ?? '';
      const saving = player.waitForEvent('download');
      await player.getByRole('button', { name: 'Save as a file' }).tap();
      const file = join(folder, 'result.json');
      await (await saving).saveAs(file);
      await player.getByRole('button', { name: 'Another round' }).tap();
      await player.getByText(/^Nothing is due before tomorrow/).waitFor();

      const results = page.getByRole('region', { name: 'What came back' });
      const typed = results.getByLabel('Code that a player sent');
      await typed.fill(`${code.slice(0, -1)}${code.endsWith('Z') ? 'Y' : 'Z'}`);
      await results.getByRole('button', { name: 'Load it' }).click();
      await results.getByText(/A letter is wrong|More than one letter/).waitFor();
      await typed.fill(code.toLowerCase());
      await results.getByRole('button', { name: 'Load it' }).click();
      await results.getByText('Number 23, round 1, is kept.').waitFor();
      await results.getByRole('columnheader', { name: '#23' }).waitFor();
      // The file says the same, so it changes nothing.
      await results.getByLabel('or a file').setInputFiles(file);
      const cells = results.getByRole('row').filter({ has: page.getByRole('cell') });
      const said = await cells.evaluateAll((rows) => rows.map((row) => row.lastElementChild?.textContent));
      expect(said).toEqual(answers.map(({ asked: times, right }) => (right === times ? 'yes' : 'later')));
      await expectAccessible(page);
      await results.scrollIntoViewIfNeeded();
      await keepScreenshot(page, 'quiz-results');
      await page.getByRole('button', { name: /^Undo/ }).click();
      await results.getByText(/nothing has come back of it yet/).waitFor();
    },
  );

  browserTest(
    'runs its clock, plays by keys, and moves only where motion is welcome',
    async ({ page, address, visit }) => {
      const path = saved ?? (await savedQuiz(page, address)).path;
      const { page: player } = await visit({ ...phone, reducedMotion: 'no-preference', colorScheme: 'dark' });
      await player.goto(pathToFileURL(path).href);
      await player.locator('#numbers button').first().tap();
      await player.getByRole('button', { name: /^Begin/ }).tap();
      const first = await player.locator('#men').innerHTML();
      await expect.poll(() => player.locator('#men').innerHTML()).not.toBe(first);
      await player.getByRole('heading', { name: /with the ball/ }).waitFor();
      // Nobody chooses: the time runs out by itself, and counts as missed.
      await player.getByRole('heading', { name: /^Time is up/ }).waitFor();
      expect(await player.locator('#prompt').evaluate((heading) => heading === document.activeElement)).toBe(true);
      await expectAccessible(player);
      await player.keyboard.press('Tab');
      await player.keyboard.press('Enter');
      await player.getByRole('heading', { name: /with the ball/ }).waitFor();
      await player.keyboard.press('2');
      await player.getByRole('heading', { name: /^(Right|Not this time)/ }).waitFor();
      // Who has had enough stops, has a code of what he answered, and may go on all the same.
      await player.getByRole('button', { name: 'Stop here and show my code' }).tap();
      await player.getByRole('heading', { name: /^[01] of 2 right at once$/ }).waitFor();
      await player
        .getByText(/You stopped here: \d+ questions? (was|were) not asked, and your code says so\./)
        .waitFor();
      const read = readResultCode((await player.locator('#code').textContent()) ?? '');
      if (read.kind === 'wrong') throw new Error(read.reason);
      expect(read.result.answers.filter(({ asked }) => asked > 0)).toHaveLength(2);
      await expectAccessible(player);
      await keepScreenshot(player, 'quiz-stopped');
      await player.getByRole('button', { name: 'Go on with the rest' }).tap();
      await player.getByRole('heading', { name: /with the ball/ }).waitFor();
      await player.keyboard.press('1');
      await player.getByRole('heading', { name: /^(Right|Not this time)/ }).waitFor();
      // A man on the field is a choice too, wherever one is asked about.
      for (let more = 0; more < 20 && (await player.locator('#ask').isVisible()); more++) {
        await player.getByRole('button', { name: 'Next' }).tap();
        await player.getByRole('heading', { name: /with the ball|right at once/ }).waitFor();
        const man = player.locator('#men .canTap').first();
        if (!(await man.isVisible())) continue;
        await man.locator('.attacker').tap({ force: true });
        break;
      }
      await player.getByRole('heading', { name: /^(Right|Not this time)/ }).waitFor();
      expect(await player.locator('.mine').count()).toBe(1);
    },
  );
});
