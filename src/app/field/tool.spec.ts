import { describe, expect, it } from 'vitest';
import type { Point } from '../../engine/index.ts';
import { demoPlaybook, toEnginePlay } from '../../playbook/index.ts';
import type { FieldOrder, Verb } from './field-order.ts';
import { type FieldStep, fieldStep } from './grips.ts';
import { type AimMark, aimMark, idleTool, nextTool, pendingOrder, type Tool, type ToolEvent } from './tool.ts';

const lantern = toEnginePlay(demoPlaybook, 'lantern');
const reach = 1.4;

interface Driver {
  down(x: number, y: number): Driver;
  move(x: number, y: number): Driver;
  up(x: number, y: number): Driver;
  tap(x: number, y: number): Driver;
  drag(from: readonly [number, number], to: readonly [number, number]): Driver;
  choose(by: string, verb: Verb): Driver;
  cancel(): Driver;
  /** Moves the mark of who points by keys. */
  aim(x: number, y: number): Driver;
  take(): Driver;
  mark(): AimMark | undefined;
  tool(): Tool;
  orders(): readonly FieldOrder[];
  selected(): string | null | undefined;
  pending(): FieldOrder | undefined;
}

/** A hand on the field, without a screen. */
function hand(step: number): Driver {
  const field: FieldStep = fieldStep(lantern, step);
  let tool: Tool = idleTool;
  const orders: FieldOrder[] = [];
  let selected: string | null | undefined;
  const send = (event: ToolEvent): Driver => {
    const answer = nextTool(tool, event, field);
    tool = answer.tool;
    if (answer.order !== undefined) orders.push(answer.order);
    if (answer.select !== undefined) selected = answer.select;
    return driver;
  };
  const driver: Driver = {
    down: (x: number, y: number): Driver => send({ kind: 'down', at: { x, y }, reach }),
    move: (x: number, y: number): Driver => send({ kind: 'move', at: { x, y }, reach }),
    up: (x: number, y: number): Driver => send({ kind: 'up', at: { x, y }, reach }),
    tap: (x: number, y: number): Driver => driver.down(x, y).up(x, y),
    drag: (from: readonly [number, number], to: readonly [number, number]): Driver =>
      driver
        .down(...from)
        .move((from[0] + to[0]) / 2, (from[1] + to[1]) / 2)
        .move(...to)
        .up(...to),
    choose: (by: string, verb: Verb): Driver => send({ kind: 'choose', by, verb }),
    cancel: (): Driver => send({ kind: 'cancel' }),
    aim: (x: number, y: number): Driver => send({ kind: 'aim', at: { x, y } }),
    take: (): Driver => send({ kind: 'take' }),
    mark: () => aimMark(tool, field),
    tool: () => tool,
    orders: () => orders,
    selected: () => selected,
    pending: () => pendingOrder(tool, field, reach),
  };
  return driver;
}

// Lantern, from a 2-3-1: TR 7,14 has the ball; TL -7,14, WR 11,4, WL -11,4, C 0,6, X 0,-6.
describe('on the set', () => {
  it('a drag moves a home, and one drag is one order', () => {
    expect(hand(0).drag([7, 14], [9, 12]).orders()).toEqual([{ kind: 'moveHome', spot: 'TR', to: { x: 9, y: 12 } }]);
  });

  it('a press that hardly moves chooses the man and changes nothing', () => {
    const done = hand(0).down(7, 14).move(7.2, 14.1).up(7.2, 14.1);
    expect(done.orders()).toEqual([]);
    expect(done.selected()).toBe('TR');
  });

  it('a press on the grass chooses nobody', () => {
    expect(hand(0).tap(7, 14).tap(3, 10).selected()).toBeNull();
  });

  it('the restart can be taken elsewhere', () => {
    expect(hand(0).drag([21, 12], [21, 9]).orders()).toEqual([{ kind: 'moveRestart', to: { x: 21, y: 9 } }]);
  });

  it('Escape in a drag leaves all as it was', () => {
    const done = hand(0).down(7, 14).move(9, 12).cancel().up(9, 12);
    expect(done.orders()).toEqual([]);
    expect(done.tool()).toEqual(idleTool);
  });

  it('what is still held is what would be done', () => {
    const held = hand(0).down(0, 6).move(0, 7).move(1, 8);
    expect(held.pending()).toEqual({ kind: 'moveHome', spot: 'C', to: { x: 1, y: 8 } });
    expect(held.orders()).toEqual([]);
  });
});

// Step 2 of Lantern: TL, who has the ball, throws to WL; C cuts from 0,6 to -2,6.
describe('in a step', () => {
  it.each<[string, readonly [number, number], readonly [number, number], FieldOrder]>([
    ['the ball dragged to a mate is thrown', [-7, 14], [-11, 4], { kind: 'throwTo', to: 'WL' }],
    ['the ball dragged to the goal is shot', [-7, 14], [0.5, 0.5], { kind: 'tell', by: 'TL', verb: 'shoot' }],
    ['the ball dragged to the grass is carried', [-7, 14], [-4, 11], { kind: 'send', by: 'TL', to: { x: -4, y: 11 } }],
    ['a man without it runs', [11, 4], [6, 3], { kind: 'send', by: 'WR', to: { x: 6, y: 3 } }],
    ['a man without it runs even past a mate', [11, 4], [7, 14], { kind: 'send', by: 'WR', to: { x: 7, y: 14 } }],
    [
      'the end of a way is moved',
      [-2, 6],
      [-3, 7],
      { kind: 'movePoint', beat: 'down', action: 1, point: 0, to: { x: -3, y: 7 } },
    ],
  ])('%s', (_, from, to, order) => {
    expect(hand(2).drag(from, to).orders()).toEqual([order]);
  });
});

describe('with a verb chosen', () => {
  it('a man is pointed at', () => {
    expect(hand(2).choose('TL', 'fake').tap(7, 14).orders()).toEqual([
      { kind: 'tell', by: 'TL', verb: 'fake', on: 'TR' },
    ]);
  });

  it('whoever points beside all men points again', () => {
    const done = hand(2).choose('TL', 'skip').tap(2, 10);
    expect(done.orders()).toEqual([]);
    expect(done.tap(11, 4).orders()).toEqual([{ kind: 'tell', by: 'TL', verb: 'skip', on: 'WR' }]);
  });

  it('nobody throws to himself', () => {
    expect(hand(2).choose('TL', 'pass').tap(-7, 14).orders()).toEqual([]);
  });

  it('a place is pointed at, and seen before it is taken', () => {
    const aiming = hand(2).choose('C', 'pop').move(3, 9);
    expect(aiming.pending()).toEqual({ kind: 'tell', by: 'C', verb: 'pop', at: { x: 3, y: 9 } });
    expect(aiming.tap(3, 10).orders()).toEqual([{ kind: 'tell', by: 'C', verb: 'pop', at: { x: 3, y: 10 } }]);
  });

  it('a pick takes its place first, then its man', () => {
    const picking = hand(2).choose('C', 'pick').tap(3, 9);
    expect(picking.orders()).toEqual([]);
    const place: Point = { x: 3, y: 9 };
    expect(picking.tap(7, 14).orders()).toEqual([{ kind: 'tell', by: 'C', verb: 'pick', at: place, on: 'TR' }]);
  });

  it('a pick that is pointed at its man at once stands beside him, on the side it comes from', () => {
    const [order] = hand(2).choose('C', 'pick').tap(7, 14).orders();
    expect(order).toMatchObject({ kind: 'tell', by: 'C', verb: 'pick', on: 'TR' });
    const { at } = order as Extract<FieldOrder, { kind: 'tell' }>;
    expect(Math.hypot(7 - at!.x, 14 - at!.y)).toBeCloseTo(1.8, 9);
    expect(at!.x).toBeLessThan(7);
  });

  it('what needs no aim is done at once', () => {
    expect(hand(2).choose('TL', 'hold').orders()).toEqual([{ kind: 'tell', by: 'TL', verb: 'hold' }]);
  });

  it('its verb chosen again gives it up, and another verb takes its place', () => {
    const givenUp = hand(2).choose('C', 'pick').tap(3, 9).choose('C', 'pick');
    expect(givenUp.tool()).toEqual(idleTool);
    expect(givenUp.tap(7, 14).orders()).toEqual([]);
    expect(hand(2).choose('C', 'pick').choose('C', 'pop').tool()).toMatchObject({ kind: 'aiming', verb: 'pop' });
    expect(hand(2).choose('TL', 'hold').choose('TL', 'hold').orders()).toHaveLength(2);
  });

  it('Escape gives it up', () => {
    expect(hand(2).choose('C', 'pick').tap(3, 9).cancel().tap(7, 14).orders()).toEqual([]);
  });
});

describe('by keys', () => {
  it('the mark begins at the man, and only where a place is asked for', () => {
    expect(hand(2).choose('C', 'pop').mark()).toMatchObject({ by: 'C', at: { x: 0, y: 6 }, isMoved: false });
    expect(hand(2).choose('TL', 'skip').mark()).toBeUndefined();
    expect(hand(2).mark()).toBeUndefined();
  });

  it('what the mark points at is seen, and done when it is taken', () => {
    const aiming = hand(2).choose('C', 'pop').aim(0.5, 6).aim(0.5, 6.5);
    const order: FieldOrder = { kind: 'tell', by: 'C', verb: 'pop', at: { x: 0.5, y: 6.5 } };
    expect(aiming.mark()).toMatchObject({ at: { x: 0.5, y: 6.5 }, isMoved: true });
    expect(aiming.pending()).toEqual(order);
    expect(aiming.take().orders()).toEqual([order]);
    expect(aiming.tool()).toEqual(idleTool);
    expect(aiming.selected()).toBe('C');
  });

  it('a mark that was not moved is not taken', () => {
    const aiming = hand(2).choose('C', 'pop').take();
    expect(aiming.orders()).toEqual([]);
    expect(aiming.mark()).toBeDefined();
  });

  it('a pick takes its place by the mark and then its man', () => {
    const picking = hand(2).choose('C', 'pick').aim(3, 9).take();
    expect(picking.orders()).toEqual([]);
    expect(picking.mark()).toBeUndefined();
    expect(picking.tap(7, 14).orders()).toEqual([
      { kind: 'tell', by: 'C', verb: 'pick', at: { x: 3, y: 9 }, on: 'TR' },
    ]);
  });

  it('Escape gives it up, and there is no mark without a verb', () => {
    expect(hand(2).choose('C', 'pop').aim(1, 7).cancel().take().orders()).toEqual([]);
    expect(hand(2).aim(1, 7).take().orders()).toEqual([]);
  });

  it('a pointer takes over from the mark', () => {
    const aiming = hand(2).choose('C', 'pop').aim(1, 7);
    expect(aiming.tool()).toMatchObject({ byKeys: true });
    expect(aiming.move(3, 9).tool()).toMatchObject({ byKeys: false, at: { x: 3, y: 9 } });
  });
});
