import { summarizeLooks } from '../../engine/index.ts';
import { type Playbook, type Practice, toEnginePlay } from '../../playbook/index.ts';
import { expectKind, type MeasureOptions, type TrialPool } from '../../worker/index.ts';
import { taughtOf } from './block-words.ts';
import { type LookStand, type PracticeQuestion, setupOf, usualPracticeEffort } from './find-practice.ts';
import { exampleOf } from './look-worth.ts';
import { partStand } from './part-stand.ts';
import type { TaughtLook } from './taught-looks.ts';

/** A part of a plan whose look is to be seen as it comes open. */
interface AskedPart {
  readonly play: string;
  readonly scheme: string;
  readonly look: TaughtLook;
}

/**
 * How the looks of a plan's parts come open, for a plan that was made before: the same man-ups are watched again. A part whose play or look is gone is not among them;
 * one whose look never opens is seen as it is run. Rejects as any question to the threads.
 */
export async function knownStands(
  pool: TrialPool,
  playbook: Playbook,
  practice: Pick<Practice, 'blocks'>,
  question: Omit<PracticeQuestion, 'plays' | 'schemes'>,
  options: MeasureOptions = {},
): Promise<readonly LookStand[]> {
  const parts = partsOf(playbook, practice, question.side);
  const whole = { ...question, plays: [], schemes: [] };
  const setups = parts.map(({ play, scheme }) => setupOf(playbook, play, scheme, whole));
  const range = { from: 0, to: usualPracticeEffort.watched };
  options.onPlan?.(2 * parts.length);
  const watched = await pool.answer(
    setups.map((setup) => ({ kind: 'watch', setup, range })),
    options,
  );
  const found = parts.map((part, at) => {
    const { windows } = expectKind(watched[at]!, 'watch').watched;
    const { spots } = toEnginePlay(playbook, part.play, question.side);
    const index = (spot: string): number => spots.findIndex(({ id }) => id === spot);
    const summary = summarizeLooks(windows, range.to).find(
      ({ from, to }) => from === index(part.look.from) && to === index(part.look.to),
    );
    return { ...part, setup: setups[at]!, trial: exampleOf(summary) ?? 0 };
  });
  const traced = await pool.answer(
    found.map(({ setup, trial }) => ({ kind: 'trace', setup, of: 'script', trial })),
    options,
  );
  return found.flatMap(({ play, scheme, look }, at) => {
    const answer = expectKind(traced[at]!, 'trace');
    if (answer.of !== 'script' || answer.script === null) return [];
    return [{ play, from: look.from, to: look.to, stand: partStand(answer.script, answer.cast, look, scheme) }];
  });
}

function partsOf(
  playbook: Playbook,
  { blocks }: Pick<Practice, 'blocks'>,
  side: 'left' | 'right',
): readonly AskedPart[] {
  return blocks.flatMap(({ kind, play, scheme, runs }): readonly AskedPart[] => {
    const [from, to = from] = runs?.[0]?.look ?? [];
    if (kind !== 'part' || play === undefined || scheme === undefined || from === undefined || to === undefined)
      return [];
    if (!playbook.plays.some(({ id }) => id === play)) return [];
    const look = taughtOf(toEnginePlay(playbook, play, side), from, to);
    return look === undefined ? [] : [{ play, scheme, look }];
  });
}
