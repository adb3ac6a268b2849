import { describe, expect, test } from 'vitest';
import { mirrorPlay, type Order, type Play } from '../../engine/index.ts';
import { demoPlaybook, toEnginePlay } from '../../playbook/index.ts';
import { playSteps } from '../../render/index.ts';
import { cutPart, menOfPart, type PlayPart } from './cut-part.ts';
import { type TaughtLook, taughtLooks } from './taught-looks.ts';

const plays = demoPlaybook.plays.map(({ id }) => toEnginePlay(demoPlaybook, id));
const all = [...plays, ...plays.map(mirrorPlay)].flatMap((play) =>
  taughtLooks(play).flatMap((look) =>
    [3, 4, 5].flatMap((most) =>
      [null, ...play.spots.map(({ id }) => id)].map((opener): readonly [Play, TaughtLook, string | null, number] => [
        play,
        look,
        opener,
        most,
      ]),
    ),
  ),
);

/** Every action of the part stands in the step of the play that it names, or is what the read of its look has its man do. */
function expectSubScript(play: Play, part: PlayPart, look: TaughtLook): void {
  const order = playSteps(play).map(({ beat }) => beat);
  let last = -1;
  for (const { beat, actions, read } of part.steps) {
    const at = order.findIndex(({ id }) => id === beat);
    expect(at, `${beat} in the order of the play`).toBeGreaterThan(last);
    last = at;
    const own: readonly Order[] = order[at]!.actions;
    const taught = read === null ? [] : [play.reads[read]!.then];
    for (const action of actions) expect([...own, ...taught]).toContain(action);
    const places = actions.flatMap((action) => own.indexOf(action)).filter((place) => place >= 0);
    expect(
      [...places].sort((a, b) => a - b),
      'in the order of the step',
    ).toEqual(places);
    if (read !== null) expect(read).toBe(look.read);
  }
}

/** Who throws has the ball, and what he throws comes to the look. */
function expectBallConnects(part: PlayPart): void {
  let holder = part.men[0];
  const throws: string[] = [];
  for (const { actions } of part.steps)
    for (const action of actions) {
      if (['carry', 'shot', 'hold', 'fake'].includes(action.kind)) expect(action.by, action.kind).toBe(holder);
      if (action.kind !== 'pass') continue;
      expect(action.by).toBe(holder);
      throws.push(`${action.by} ${action.to}`);
      holder = action.to;
    }
  const { from, to } = part.look;
  if (from !== to) expect(throws.at(-1)).toBe(`${from} ${to}`);
  expect(holder).toBe(to);
}

describe('a part of a play', () => {
  test('is a piece of its script, in its order, and its ball goes from hand to hand to the look', () => {
    expect(all.length).toBeGreaterThan(200);
    for (const [play, look, opener, most] of all) {
      const part = cutPart(play, look, menOfPart(play, look, opener, most));
      expectSubScript(play, part, look);
      expectBallConnects(part);
    }
  });

  test('has three to five men, each once, among them the two of the look', () => {
    for (const [play, look, opener, most] of all) {
      const men = menOfPart(play, look, opener, most);
      expect(new Set(men).size).toBe(men.length);
      expect(men.length).toBeGreaterThanOrEqual(3);
      expect(men.length).toBeLessThanOrEqual(Math.max(3, most));
      expect(men).toContain(look.from);
      expect(men).toContain(look.to);
      expect(cutPart(play, look, men).men).toEqual(men);
    }
  });

  test('is that of the mirrored play, mirrored', () => {
    const play = plays[0]!;
    const [look, mirrored] = [taughtLooks(play)[0]!, taughtLooks(mirrorPlay(play))[0]!];
    const [part, other] = [
      cutPart(play, look, ['X', 'TR', 'TL']),
      cutPart(mirrorPlay(play), mirrored, ['X', 'TL', 'TR']),
    ];
    expect(other.steps.map(({ beat }) => beat)).toEqual(part.steps.map(({ beat }) => beat));
  });

  test('of Lantern: X carries, skips to TR, who steps in and shoots', () => {
    const play = plays[0]!;
    const part = cutPart(play, taughtLooks(play)[0]!, ['X', 'TR', 'C']);
    expect(
      part.steps.map(({ beat, actions }) => `${beat}: ${actions.map(({ by, kind }) => `${by} ${kind}`).join(', ')}`),
    ).toEqual(['look: X carry, C run, TR run', 'finish: X pass, TR stepIn', 'rip: TR shot']);
  });

  test('needs the two of its look', () => {
    const play = plays[0]!;
    expect(() => cutPart(play, taughtLooks(play)[0]!, ['X', 'C', 'WL'])).toThrow(RangeError);
  });
});

describe('taughtLooks', () => {
  test.each<[string, readonly string[]]>([
    ['lantern', ['X skip TR', 'WL shot WL', 'X feed WR', 'X feed C', 'TR pass TL']],
    ['quarry', ['WL feed CR', 'TL shot TL', 'WL skip WR', 'WL pass TL']],
    ['ferry', ['WL feed P', 'TR feed P', 'WL shot WL']],
  ])('of %s', (id, expected) => {
    const looks = taughtLooks(toEnginePlay(demoPlaybook, id));
    expect(looks.map(({ from, kind, to }) => `${from} ${kind} ${to}`)).toEqual(expected);
  });
});
