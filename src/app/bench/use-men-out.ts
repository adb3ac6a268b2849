import { useMemo } from 'react';
import { type BenchState, servingNumbers } from '../../teach/index.ts';

/** Numbers of ours who cannot be sent on, out of the game or in the box: the same list for as long as they are the same men. */
export function useMenOut({ absent, box }: Pick<BenchState, 'absent' | 'box'>): readonly number[] {
  const text = JSON.stringify([...new Set([...absent, ...servingNumbers(box)])]);
  return useMemo(() => JSON.parse(text) as readonly number[], [text]);
}
