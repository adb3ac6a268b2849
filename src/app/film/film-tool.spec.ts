import { describe, expect, it } from 'vitest';
import {
  emptyHand,
  type FilmEvent,
  type FilmHand,
  type FilmTool,
  type Handle,
  type MarkOrder,
  nextHand,
} from './film-tool.ts';

interface Driver {
  readonly choose: (tool: FilmTool) => Driver;
  readonly down: (x: number, y: number, time?: number) => Driver;
  readonly move: (x: number, y: number) => Driver;
  readonly up: (x: number, y: number, time?: number) => Driver;
  readonly press: (x: number, y: number, time?: number) => Driver;
  readonly send: (event: FilmEvent) => Driver;
  readonly hand: () => FilmHand;
  readonly orders: () => readonly MarkOrder[];
}

/** A hand that is driven as a coach drives it. */
function driver(handles: readonly Handle[] = []): Driver {
  let hand: FilmHand = emptyHand;
  const orders: MarkOrder[] = [];
  const send = (event: FilmEvent): Driver => {
    const answer = nextHand(hand, event);
    hand = answer.hand;
    if (answer.order !== undefined) orders.push(answer.order);
    return me;
  };
  const me: Driver = {
    choose: (tool) => send({ kind: 'choose', tool }),
    down: (x, y, time = 0) => send({ kind: 'down', at: { x, y }, reach: 10, time, handles }),
    move: (x, y) => send({ kind: 'move', at: { x, y } }),
    up: (x, y, time = 0) => send({ kind: 'up', at: { x, y }, time }),
    press: (x, y, time = 0) => me.down(x, y, time).up(x, y, time),
    send,
    hand: () => hand,
    orders: () => orders,
  };
  return me;
}

const man: Handle = { what: 'man', who: { kind: 'defender', at: 1 }, at: { x: 100, y: 100 } };
const defender: FilmTool = { kind: 'man', what: 'defender' };
const place = (id: string): FilmTool => ({ kind: 'place', id });

describe('the hand over a film', () => {
  it('sets a ball and goes on with the defenders', () => {
    const hand = driver().choose({ kind: 'man', what: 'ball' }).press(5, 6).press(7, 8);
    expect(hand.orders()).toEqual([
      { kind: 'set', what: 'ball', at: { x: 5, y: 6 } },
      { kind: 'set', what: 'defender', at: { x: 7, y: 8 } },
    ]);
  });

  it('drags a man who is pressed, whatever it would set, and one press alone moves nobody', () => {
    const hand = driver([man]).choose(defender).press(102, 101);
    expect(hand.orders()).toEqual([]);
    hand.down(102, 101).move(140, 90).up(141, 91);
    expect(hand.orders()).toEqual([{ kind: 'move', who: man.who, at: { x: 141, y: 91 } }]);
  });

  it('lets go of a drag on Escape, and of the tool on the next', () => {
    const hand = driver([man]).down(100, 100).move(150, 150).send({ kind: 'cancel' }).up(150, 150);
    expect(hand.orders()).toEqual([]);
    expect(hand.choose(defender).send({ kind: 'cancel' }).hand().tool).toEqual({ kind: 'look' });
  });

  it('sets a place of the camera, moves it by a second press, and takes both back', () => {
    const hand = driver().choose(place('net')).press(10, 10).choose(place('net')).press(30, 30);
    expect(hand.hand().views).toEqual([{ time: 0, places: [{ id: 'net', seen: { x: 30, y: 30 } }], lines: [] }]);
    expect(hand.send({ kind: 'back' }).hand().views[0]!.places[0]!.seen).toEqual({ x: 10, y: 10 });
    expect(hand.send({ kind: 'back' }).hand().views).toEqual([]);
    expect(hand.send({ kind: 'back' }).hand().views).toEqual([]);
  });

  it('takes two presses that lie apart for a line, and Escape takes the first one back', () => {
    const line: FilmTool = { kind: 'line', id: 'end-line', first: undefined };
    const hand = driver().choose(line).press(0, 0).press(3, 0);
    expect(hand.hand().views).toEqual([]);
    hand.send({ kind: 'cancel' });
    expect(hand.hand().tool).toEqual(line);
    hand.press(0, 0).press(90, 4);
    expect(hand.hand().views[0]!.lines).toEqual([
      {
        id: 'end-line',
        seen: [
          { x: 0, y: 0 },
          { x: 90, y: 4 },
        ],
      },
    ]);
  });

  it('keeps the marks before where the camera has moved, and changes those after it', () => {
    const hand = driver().choose(place('net')).press(10, 10, 1).send({ kind: 'own', time: 5 });
    hand.choose(place('net')).press(50, 50, 6);
    expect(hand.hand().views.map(({ time, places }) => [time, places[0]!.seen.x])).toEqual([
      [1, 10],
      [5, 50],
    ]);
    // The same frame has its own already.
    expect(hand.send({ kind: 'own', time: 5.01 }).hand().views).toHaveLength(2);
  });
});
