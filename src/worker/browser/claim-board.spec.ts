import { expect, it, vi } from 'vitest';
import { createClaimBoard } from './claim-board.ts';
import type { Claim } from './sent-request.ts';

const isWanted = ({ board, place, ticket }: Claim): boolean => Atomics.load(board, place) === ticket;

it('a claim holds until it is released, and not again when its place is given to another', () => {
  const board = createClaimBoard();
  const [one, other] = [board.claim()!, board.claim()!];
  expect([one, other].map(isWanted)).toEqual([true, true]);
  board.release(one);
  const next = board.claim()!;
  expect(next.place).toBe(one.place);
  expect([one, other, next].map(isWanted)).toEqual([false, true, true]);
  // A second release is none: it would take the place from the one who has it now.
  board.release(one);
  expect(isWanted(next)).toBe(true);
});

it('when all places are taken there is no claim, and then again one', () => {
  const board = createClaimBoard();
  const claims = Array.from({ length: 1024 }, () => board.claim());
  expect(claims.every((claim) => claim !== null && isWanted(claim))).toBe(true);
  expect(board.claim()).toBeNull();
  board.release(null);
  board.release(claims[7]!);
  expect(board.claim()).not.toBeNull();
});

it('without memory to share there is none', () => {
  vi.stubGlobal('SharedArrayBuffer', undefined);
  expect(createClaimBoard().claim()).toBeNull();
  vi.unstubAllGlobals();
});
