import { describe, expect, test } from 'vitest';
import { bestAssignment } from './best-assignment.ts';

describe('bestAssignment', () => {
  test.each([
    { name: 'nobody', worth: [], rows: 0, columns: 3, want: [] },
    { name: 'one of three', worth: [1, 7, 3], rows: 1, columns: 3, want: [1] },
    { name: 'the sum beats the greedy choice', worth: [9, 8, 8, 1], rows: 2, columns: 2, want: [1, 0] },
    { name: 'below zero', worth: [-5, -1, -2, -9], rows: 2, columns: 2, want: [1, 0] },
    // The diagonal of an identity table is its only best assignment.
    { name: 'identity', worth: [1, 0, 0, 0, 1, 0, 0, 0, 1], rows: 3, columns: 3, want: [0, 1, 2] },
  ])('$name', ({ worth, rows, columns, want }) => {
    expect(bestAssignment(worth, rows, columns)).toEqual(want);
  });

  test.each([
    { name: 'more rows than columns', worth: [1, 2], rows: 2, columns: 1, says: /rows: 2/ },
    { name: 'a wrong size', worth: [1, 2, 3], rows: 1, columns: 2, says: /3 entries \(expected 2\)/ },
    { name: 'NaN', worth: [1, Number.NaN], rows: 1, columns: 2, says: /NaN at 1/ },
    { name: 'infinity', worth: [Number.POSITIVE_INFINITY], rows: 1, columns: 1, says: /Infinity at 0/ },
  ])('refuses $name', ({ worth, rows, columns, says }) => {
    expect(() => bestAssignment(worth, rows, columns)).toThrow(says);
  });
});
