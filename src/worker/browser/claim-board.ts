import type { Claim } from './sent-request.ts';

/** Hands out claims on answers, and takes them back when an answer is not wanted any more. */
export interface ClaimBoard {
  /** Null when there is no place left, or no memory to share: then every answer counts as wanted. */
  claim(): Claim | null;
  release(claim: Claim | null): void;
}

/** Questions that can be open at once: a page has some dozens. */
const places = 1024;

/**
 * A board in memory that the threads see at once, while a message would wait until the thread has done what it was sent before. Browsers
 * share memory only with pages that are isolated from others.
 */
export function createClaimBoard(): ClaimBoard {
  const board = typeof SharedArrayBuffer === 'undefined' ? null : new Int32Array(new SharedArrayBuffer(4 * places));
  const free = Array.from({ length: places }, (_, place) => place);
  let next = 0;
  return {
    claim: () => {
      const place = board === null ? undefined : free.pop();
      if (board === null || place === undefined) return null;
      // Never the number of an older claim on the same place, nor that of an empty one.
      next = next === lastTicket ? 1 : next + 1;
      Atomics.store(board, place, next);
      return { board, place, ticket: next };
    },
    release: (claim) => {
      if (board === null || claim === null || Atomics.load(board, claim.place) !== claim.ticket) return;
      Atomics.store(board, claim.place, 0);
      free.push(claim.place);
    },
  };
}

const lastTicket = 2 ** 31 - 1;
