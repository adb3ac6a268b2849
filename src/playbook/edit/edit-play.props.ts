import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Action, Cue, ReadOrder, Trigger } from '../../engine/index.ts';
import { checkPlaybook } from '../check-playbook.ts';
import { demoPlaybook } from '../demo.ts';
import { createReport } from '../report.ts';
import { type Playbook, type PlayEntry, playbookSchema, playSchema } from '../schema.ts';
import { toEnginePlay } from '../to-engine.ts';
import { changeSet } from './change-set.ts';
import {
  type ActionVerb,
  addAction,
  changeTarget,
  changeVerb,
  putAction,
  removeAction,
  setWhenOpen,
} from './edit-actions.ts';
import { addBeat, addBeatAfter, changeTrigger, renameBeat } from './edit-beats.ts';
import { addPathPoint, movePathPoint, removePathPoint, reorderPathPoint } from './edit-paths.ts';
import { addRead, changeRead, moveRead, removeRead } from './edit-reads.ts';
import type { PlayEdit } from './edit-result.ts';
import { moveSpot, resetSpot } from './edit-spots.ts';
import { addLastTen, removeLastTen, setReset, setRestart, setStartBall } from './edit-start.ts';
import { mirrorEntry } from './mirror-entry.ts';
import { passTo } from './pass-to.ts';
import { groundOf } from './play-ground.ts';
import { beatsOf } from './play-script.ts';
import { playTiming } from './play-timing.ts';
import { removeBeat } from './remove-beat.ts';

const ground = groundOf(demoPlaybook);

/** A step that somebody may take at the workbench: numbers that are turned into what the play has. */
type Step = (play: PlayEntry) => PlayEdit;

const spot = fc.constantFrom('P', 'TR', 'TL', 'WR', 'WL', 'C', 'CR', 'CL', 'X');
const point = fc.record({
  x: fc.double({ min: -32, max: 32, noNaN: true }),
  y: fc.double({ min: -17, max: 42, noNaN: true }),
});
const path = fc.array(point, { minLength: 1, maxLength: 3 });
const verb = fc.constantFrom<ActionVerb[]>(
  'pass',
  'skip',
  'feed',
  'carry',
  'step',
  'fake',
  'hold',
  'shoot',
  'cut',
  'replace',
  'pick',
  'seal',
);
type BallAction = Exclude<ReadOrder, { kind: 'runIn' | 'reset' }>;
const ballAction = fc.tuple(spot, spot, path, fc.nat(7)).map(([by, to, way, kind]): BallAction => {
  const actions: BallAction[] = [
    { kind: 'pass', by, to, style: 'adjacent' },
    { kind: 'pass', by, to, style: 'skip' },
    { kind: 'carry', by, path: way },
    { kind: 'stepIn', by, to: way[0]! },
    { kind: 'fake', by, toward: to },
    { kind: 'hold', by, seconds: way.length },
    { kind: 'shot', by },
    { kind: 'pass', by, to, style: 'feed' },
  ];
  return actions[kind]!;
});
const runAction = fc.tuple(spot, spot, path, fc.nat(4)).map(([by, on, way, kind]): Action => {
  const actions: Action[] = [
    { kind: 'run', run: 'cut', by, path: way, go: 'now' },
    { kind: 'run', run: 'sneak', by, path: way, go: 'whenOpen' },
    { kind: 'run', run: 'replace', by, path: way, go: 'now' },
    { kind: 'pick', by, at: way[0]!, on },
    { kind: 'seal', by, on },
  ];
  return actions[kind]!;
});
const action: fc.Arbitrary<Action> = fc.oneof(ballAction, runAction);
const readOrder: fc.Arbitrary<ReadOrder> = fc.oneof(
  { weight: 7, arbitrary: ballAction },
  { weight: 1, arbitrary: spot.map((by): ReadOrder => ({ kind: 'reset', by })) },
  { weight: 1, arbitrary: spot.map((by): ReadOrder => ({ kind: 'runIn', by })) },
);
const cue: fc.Arbitrary<Cue> = fc.oneof(
  fc.constantFrom<Cue[]>({ kind: 'iAmFree' }, { kind: 'creaseUp' }, { kind: 'farLowLooksAway' }),
  fc.record({ kind: fc.constantFrom('open', 'left', 'laneTaken'), who: spot }),
);
const script = fc.constantFrom('main', 'lastTen');
const index = fc.nat(6);

const beatOf = (play: PlayEntry, i: number) => {
  const all = [...play.beats, ...beatsOf(play, 'lastTen')];
  return all[i % all.length]!;
};
const at = (play: PlayEntry, i: number, k: number) => {
  const beat = beatOf(play, i);
  return { beat: beat.id, action: k % Math.max(1, beat.do.length) };
};
const trigger = (play: PlayEntry, i: number, one: string, other: string): Trigger => {
  const triggers: Trigger[] = [
    { kind: 'start' },
    { kind: 'catch', by: one },
    { kind: 'pass', from: one, to: other },
    { kind: 'arrival', who: one },
    { kind: 'call', beat: beatOf(play, i).id, seconds: i / 4 },
  ];
  return triggers[i % triggers.length]!;
};

/** Steps that change a part of a play. */
const localStep: fc.Arbitrary<Step> = fc.oneof(
  fc.tuple(spot, point).map(
    ([id, to]): Step =>
      (play) =>
        moveSpot(play, ground, id, to),
  ),
  spot.map(
    (id): Step =>
      (play) =>
        resetSpot(play, id),
  ),
  fc.tuple(index, index, index, point).map(
    ([i, k, n, to]): Step =>
      (play) =>
        movePathPoint(play, ground, at(play, i, k), n % 2, to),
  ),
  fc.tuple(index, index, index, fc.oneof(point, spot)).map(
    ([i, k, n, to]): Step =>
      (play) =>
        addPathPoint(play, ground, at(play, i, k), n % 2, to),
  ),
  fc.tuple(index, index, index).map(
    ([i, k, n]): Step =>
      (play) =>
        removePathPoint(play, ground, at(play, i, k), n % 2),
  ),
  fc.tuple(index, index).map(
    ([i, k]): Step =>
      (play) =>
        reorderPathPoint(play, ground, at(play, i, k), 0, 1),
  ),
  fc.tuple(index, action).map(
    ([i, what]): Step =>
      (play) =>
        addAction(play, ground, beatOf(play, i).id, what),
  ),
  fc.tuple(index, action).map(
    ([i, what]): Step =>
      (play) =>
        putAction(play, ground, beatOf(play, i).id, what),
  ),
  fc.tuple(index, index).map(
    ([i, k]): Step =>
      (play) =>
        removeAction(play, at(play, i, k)),
  ),
  fc.tuple(index, index, verb).map(
    ([i, k, word]): Step =>
      (play) =>
        changeVerb(play, ground, at(play, i, k), word),
  ),
  fc.tuple(index, index, spot).map(
    ([i, k, id]): Step =>
      (play) =>
        changeTarget(play, ground, at(play, i, k), id),
  ),
  fc.tuple(index, index, fc.boolean()).map(
    ([i, k, waits]): Step =>
      (play) =>
        setWhenOpen(play, ground, at(play, i, k), waits),
  ),
  index.map(
    (i): Step =>
      (play) =>
        addBeatAfter(play, ground, beatOf(play, i).id),
  ),
  fc.tuple(index, fc.boolean()).map(
    ([i, rest]): Step =>
      (play) =>
        removeBeat(play, ground, beatOf(play, i).id, rest ? 'withRest' : 'keepRest'),
  ),
  fc.tuple(index, index).map(
    ([i, k]): Step =>
      (play) =>
        renameBeat(play, ground, beatOf(play, i).id, `beat-${k}`),
  ),
  fc.tuple(index, index, spot, spot).map(
    ([i, k, one, other]): Step =>
      (play) =>
        changeTrigger(play, ground, beatOf(play, i).id, trigger(play, k, one, other)),
  ),
  fc.tuple(script, readOrder, fc.array(cue, { maxLength: 2 })).map(
    ([name, then, cues]): Step =>
      (play) =>
        addRead(play, ground, name, { carrier: then.by, cues, then }),
  ),
  fc.tuple(script, index, ballAction).map(
    ([name, i, then]): Step =>
      (play) =>
        changeRead(play, ground, name, i, { carrier: then.by, cues: [], then }),
  ),
  fc.tuple(script, index).map(
    ([name, i]): Step =>
      (play) =>
        removeRead(play, name, i),
  ),
  fc.tuple(script, index, index).map(
    ([name, i, k]): Step =>
      (play) =>
        moveRead(play, name, i, k),
  ),
  spot.map(
    (id): Step =>
      (play) =>
        setStartBall(play, ground, id),
  ),
  point.map(
    (to): Step =>
      (play) =>
        setRestart(play, ground, to),
  ),
  fc.tuple(spot, fc.constantFrom('again', 'free')).map(
    ([ball, then]): Step =>
      (play) =>
        setReset(play, ground, { ball, then }),
  ),
  fc.constant<Step>((play) => addLastTen(play)),
  fc.constant<Step>((play) => removeLastTen(play)),
  fc.tuple(index, spot).map(
    ([i, id]): Step =>
      (play) =>
        passTo(play, ground, beatOf(play, i).id, id),
  ),
);

/** And those that write it anew. */
const step: fc.Arbitrary<Step> = fc.oneof(
  { weight: 12, arbitrary: localStep },
  { weight: 1, arbitrary: fc.constant<Step>((play) => mirrorEntry(play, ground)) },
  {
    weight: 1,
    arbitrary: fc.constantFrom('2-3-1', '3-3', '2-2-2-low', '3-2-1').map(
      (set): Step =>
        (play) =>
          changeSet(play, ground, set),
    ),
  },
);

const demo = fc.constantFrom(...demoPlaybook.plays);
const steps = fc.array(step, { minLength: 1, maxLength: 12 });

function run(play: PlayEntry, all: readonly Step[]): PlayEntry {
  return all.reduce((before, each) => {
    const edit = each(before);
    return edit.kind === 'edited' ? edit.play : before;
  }, play);
}

const inBook = (play: PlayEntry): Playbook => ({ ...demoPlaybook, plays: [play] });

function errorsOf(playbook: Playbook): readonly string[] {
  const report = createReport();
  checkPlaybook({ playbook, broken: [], doubtful: [] }, report);
  return report.finish().flatMap((each) => (each.severity === 'error' ? [each.code] : []));
}

describe('whatever is done at the workbench', () => {
  test('the play is one that a file may hold, and an engine runs it when the check finds no error', () => {
    let sound = 0;
    fc.assert(
      fc.property(demo, steps, (play, all) => {
        const after = run(play, all);
        const shape = playSchema.safeParse(after);
        expect(shape.success, JSON.stringify(shape.error?.issues)).toBe(true);
        expect(playTiming(after, ground).ends).toBeLessThan(200);
        const book = inBook(after);
        if (errorsOf(book).length > 0) return;
        sound++;
        expect(toEnginePlay(book, after.id).id).toBe(after.id);
      }),
      { numRuns: 400 },
    );
    // Without plays that can be run the law would say nothing.
    expect(sound).toBeGreaterThan(40);
  });

  test('no phrase that was written cannot be read', () => {
    const unreadable = new Set([
      'action-syntax',
      'trigger-syntax',
      'cue-syntax',
      'read-syntax',
      'spot-unknown',
      'beat-unknown',
      'place-in-crease',
      'place-out-of-bounds',
      'self-target',
      'spots-overlap',
      'restart-in-box',
      'id-twice',
    ]);
    fc.assert(
      fc.property(demo, steps, (play, all) => {
        expect(errorsOf(inBook(run(play, all))).filter((code) => unreadable.has(code))).toEqual([]);
      }),
      { numRuns: 400 },
    );
  });

  test('turned over twice it is the same', () => {
    fc.assert(
      fc.property(demo, steps, (play, all) => {
        const after = run(play, all);
        const once = mirrorEntry(after, ground);
        const twice = once.kind === 'edited' ? mirrorEntry(once.play, ground) : once;
        expect(twice.kind === 'edited' && twice.play).toEqual(after);
      }),
    );
  });

  test('what was added and is taken out leaves the play as it was', () => {
    fc.assert(
      fc.property(demo, steps, index, action, (play, all, i, what) => {
        const before = run(play, all);
        const beat = beatOf(before, i);
        const added = addAction(before, ground, beat.id, what);
        if (added.kind === 'edited') {
          const back = removeAction(added.play, added.at!);
          expect(back.kind === 'edited' && back.play).toEqual(before);
        }
        const more = addBeat(before, ground, 'main', { kind: 'catch', by: before.start.ball });
        if (more.kind === 'edited') {
          const back = removeBeat(more.play, ground, more.at!.beat, 'withRest');
          expect(back.kind === 'edited' && back.play).toEqual(before);
        }
      }),
    );
  });

  test('a beat, a read and a script that an edit does not change are the same objects, and a refusal is a sentence', () => {
    fc.assert(
      fc.property(demo, steps, localStep, (play, all, last) => {
        const before = run(play, all);
        const edit = last(before);
        if (edit.kind === 'refused') {
          expect(edit.reason).toMatch(/^["A-Z].*\.$/);
          return;
        }
        expect(keptApart(edit.play, before)).toEqual([]);
        for (const sentence of edit.also) expect(sentence).toMatch(/^["A-Z].*\.$/);
      }),
    );
  });
});

/** Parts of a play that say the same as before and are other objects. */
function keptApart(after: PlayEntry, before: PlayEntry): readonly unknown[] {
  const parts = (play: PlayEntry) => [
    ...play.beats,
    ...(play.reads ?? []),
    play.spots,
    play.start,
    play.reset,
    play.lastTen,
  ];
  const known = parts(before);
  return parts(after).filter((part) => {
    const same = known.find((each) => JSON.stringify(each) === JSON.stringify(part));
    return same !== undefined && !known.includes(part);
  });
}

test('the demo is what the laws take it for', () => {
  expect(playbookSchema.safeParse(demoPlaybook).success).toBe(true);
  expect(errorsOf(demoPlaybook)).toEqual([]);
});
