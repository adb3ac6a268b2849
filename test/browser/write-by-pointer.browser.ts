import { describe, expect } from 'vitest';
import { browserTest } from './browser-test.ts';
import { expectAccessible } from './expect-accessible.ts';
import { fieldHand } from './field-hand.ts';
import { keepScreenshot } from './keep-screenshot.ts';
import {
  answersOnce,
  type CardAnswer,
  makeFirstPlay,
  savedPlay,
  savedPlaybook,
  startEmpty,
  step,
  wholeTask,
} from './play-place.ts';

const width = ({ low, high }: { readonly low: number; readonly high: number }): number => high - low;

/** The same question has an answer from more trials by now. */
function isSharper(all: readonly CardAnswer[], before: CardAnswer): boolean {
  const now = all.find(({ name }) => name === before.name);
  return (
    now !== undefined && !now.isGuess && (before.isGuess ? width(now) < width(before) : width(now) <= width(before))
  );
}

describe('a play written with the pointer', () => {
  browserTest('from an empty playbook to the gain of a change', wholeTask, async ({ page }) => {
    await startEmpty(page);
    await expectAccessible(page);
    await keepScreenshot(page, 'no-play-yet');
    await makeFirstPlay(page, 'Harbor', '2-2-2 low');
    const field = fieldHand(page);
    const verb = (name: string) => page.getByRole('group', { name: /^Tell / }).getByRole('button', { name });

    // The set: a top man wider than the 2-2-2 has him.
    await step(page, 'set').click();
    await field.dragMan('TR', 9, 13);
    await page.getByRole('button', { name: 'Undo: move TR' }).waitFor();

    // The first step: the ball goes to the other top, from him to the wing, and a crease man cuts meanwhile.
    await step(page, 'step-1').click();
    await field.dragOnto('TR', 'TL');
    await field.dragMan('CR', 5, 4);
    await field.tap(await field.manAt('CL'));
    await verb('pick').click();
    await field.tap(await field.at(-5, 7));
    await field.tap(await field.manAt('WL'));
    await page.getByRole('button', { name: 'Undo: tell CL to pick' }).waitFor();

    // Dragging the ball on makes a step that waits for the catch, and goes there.
    await field.dragOnto('TL', 'WL');
    await page.getByRole('region', { name: 'Step step-2' }).waitFor();
    await page.getByRole('button', { name: 'Step', exact: true }).click();
    await page.getByRole('region', { name: 'Step step-3' }).waitFor();
    await field.drag(await field.manAt('WL'), await field.at(0, 0));

    // A read, chosen from lists as the mouse does it.
    await step(page, 'step-2').click();
    const read = page.getByRole('form', { name: 'Teach a read' });
    await read.getByLabel('Who has it').selectOption('TL');
    await read.getByLabel('If').selectOption('left');
    await read.getByRole('combobox', { name: 'Man' }).selectOption('CR');
    await read.getByLabel('Then').selectOption('feed');
    await read.getByRole('button', { name: 'Teach' }).click();
    // What is seen of the defense as a whole asks for no man.
    await read.getByLabel('If').selectOption('the crease defender is pulled up');
    await read.getByLabel('Then').selectOption('shoot');
    expect(await read.getByRole('combobox', { name: 'Man' }).count()).toBe(0);
    await read.getByRole('button', { name: 'Teach' }).click();
    await page.getByRole('button', { name: /^Take out the read: if the crease defender is pulled up/ }).waitFor();

    const written = await savedPlay(page, 'Harbor');
    expect(written).toMatchObject({
      set: '2-2-2-low',
      spots: { TR: [9, 13] },
      start: { ball: 'TR' },
      beats: [
        { id: 'step-1', on: 'start', do: ['TR pass TL', 'CR cut to 5,4', 'CL pick at -5,7 on WL'] },
        { id: 'step-2', on: 'catch TL', do: [expect.stringMatching(/^TL (pass|skip) WL$/)] },
        { id: 'step-3', on: 'catch WL', do: ['WL shoot'] },
      ],
      reads: [
        { carrier: 'TL', if: ['left CR'], then: 'feed CR' },
        { carrier: 'TL', if: ['crease up'], then: 'shoot' },
      ],
    });

    const first = await answersOnce(page, (all) => all.length === 9);
    expect(new Set(first.map(({ name }) => name)).size).toBe(9);
    // Sharper: the answer to the same question with more trials.
    await answersOnce(page, (all) => first.every((before) => isSharper(all, before)));
    await keepScreenshot(page, 'play-written');
    await expectAccessible(page);

    await step(page, 'set').click();
    await field.dragMan('WL', -11, 4);
    const changed = await answersOnce(
      page,
      (all) => all.length === 9 && all.every(({ difference }) => difference !== undefined),
    );
    for (const { difference } of changed)
      expect(difference).toMatch(/^[+−]?\d*\.\d\d \([+−]?\d*\.\d\d to [+−]?\d*\.\d\d\)$/);
    await page.getByText(/by your last change/).waitFor();
    await keepScreenshot(page, 'play-changed');
    await expectAccessible(page);

    await page
      .getByRole('region', { name: 'Against the schemes' })
      .getByRole('button', { name: /, first look / })
      .first()
      .click();
    await page
      .getByRole('button', { name: /^Show me one: / })
      .first()
      .click();
    // It plays up to where the look has opened, and stands still there.
    await page.getByText(/^Trial \d+: the .* opens at /).waitFor();
    await page.getByRole('button', { name: 'Play', exact: true }).waitFor();
    await keepScreenshot(page, 'play-watched');
    await expectAccessible(page);
    expect((await savedPlaybook(page)).plays.map(({ spots }) => spots)).toEqual([{ TR: [9, 13], WL: [-11, 4] }]);
  });
});
