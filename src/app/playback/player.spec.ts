import { describe, expect, it } from 'vitest';
import { createPlayer } from './player.ts';
import { showSpan } from './playhead.ts';

function handCranked() {
  let waiting: ((nowMs: number) => void)[] = [];
  const player = createPlayer((callback) => waiting.push(callback));
  const frame = (nowMs: number): void => {
    const due = waiting;
    waiting = [];
    for (const callback of due) callback(nowMs);
  };
  return { player, frame, waiting: () => waiting.length };
}

describe('a player', () => {
  it('asks for one picture of a change at rest, and then for none', () => {
    const { player, frame, waiting } = handCranked();
    const seen: number[] = [];
    player.onFrame(({ time }) => seen.push(time));
    player.change((head) => ({ ...showSpan(head, 0, 10), time: 3 }));
    player.change((head) => ({ ...head, time: 4 }));
    expect([seen.length, waiting()]).toEqual([0, 1]);
    frame(0);
    expect(seen).toEqual([4]);
    expect(waiting()).toBe(0);
  });

  it('moves by the time between pictures, and draws each', () => {
    const { player, frame } = handCranked();
    const seen: number[] = [];
    player.onFrame(({ time }) => seen.push(time));
    player.change((head) => ({ ...showSpan(head, 0, 10), running: true }));
    for (const nowMs of [1000, 1016, 1050]) frame(nowMs);
    expect(seen.map((time) => Math.round(time * 1000))).toEqual([0, 16, 50]);
  });

  it('does not jump when its tab slept', () => {
    const { player, frame } = handCranked();
    player.change((head) => ({ ...showSpan(head, 0, 10), running: true }));
    frame(0);
    frame(60_000);
    expect(player.head().time).toBeCloseTo(0.1, 9);
  });

  it('stands still while it is held, and goes on from there', () => {
    const { player, frame, waiting } = handCranked();
    player.change((head) => ({ ...showSpan(head, 0, 10), running: true }));
    for (const nowMs of [0, 50]) frame(nowMs);
    player.hold(true);
    frame(100);
    expect(waiting()).toBe(0);
    expect(player.head()).toMatchObject({ time: 0.05, running: true });
    player.hold(false);
    for (const nowMs of [5000, 5020]) frame(nowMs);
    expect(player.head().time).toBeCloseTo(0.07, 9);
  });

  it('is quiet to the buttons while it only moves, and tells them when it stops', () => {
    const { player, frame, waiting } = handCranked();
    let told = 0;
    player.onChange(() => told++);
    player.change((head) => ({ ...showSpan(head, 0, 0.15), running: true, loops: false }));
    frame(0);
    frame(100);
    expect(told).toBe(1);
    frame(200);
    expect(told).toBe(2);
    expect(player.head().running).toBe(false);
    expect(waiting()).toBe(0);
  });

  it('asks for one picture at a time, however often it is changed', () => {
    const { player, waiting } = handCranked();
    for (let i = 0; i < 3; i++) player.change((head) => ({ ...head, to: 10 + i, running: true }));
    expect(waiting()).toBe(1);
  });

  it('leaves a listener alone who no longer listens', () => {
    const { player } = handCranked();
    let drawn = 0;
    const stop = player.onFrame(() => drawn++);
    stop();
    player.change((head) => ({ ...head, to: 4 }));
    expect(drawn).toBe(0);
  });
});
