/** A chance of a table that a test takes in. */
export interface TableLine {
  readonly side: 'ours' | 'theirs';
  readonly date: string;
  readonly opponent: string;
  readonly call: string;
  readonly scheme: string;
  readonly result: string;
  readonly shots: number;
  readonly expected: number;
}

/** 200 chances as a coach's spreadsheet has them, by names: lantern scores in two of three, the others in one of four. */
export const seasonLines: readonly TableLine[] = Array.from({ length: 200 }, (_, at) => {
  const call = (['Lantern', 'Quarry', 'Ferry'] as const)[at % 3]!;
  const turn = Math.floor(at / 3);
  const isGoal = call === 'Lantern' ? turn % 3 !== 0 : turn % 4 === 0;
  return {
    side: at % 5 === 4 ? 'theirs' : 'ours',
    date: `2026-0${2 + Math.floor(at / 70)}-${String(1 + (Math.floor(at / 5) % 28)).padStart(2, '0')}`,
    opponent: (['Copper Falls', 'Northgate Ospreys', 'Harbor, Prep'] as const)[Math.floor(at / 5) % 3]!,
    call: at % 5 === 4 ? '' : call,
    scheme: (['Jump', 'Five-man rotation'] as const)[Math.floor(at / 7) % 2]!,
    result: isGoal ? 'goal' : (['saved', 'wide', 'turnover'] as const)[at % 3]!,
    shots: 1 + (at % 2),
    expected: call === 'Lantern' ? 0.6 : 0.3,
  };
});

/** They as the text of a CSV file; with the result of one line, counted from 0, put wrong. */
export function seasonCsv(wrong?: number): Buffer {
  const lines = seasonLines.map(({ side, date, opponent, call, scheme, result, shots, expected }, at) => {
    const written = at === wrong ? 'scored' : result;
    return [side, date, `"${opponent}"`, call, scheme, written, shots, expected, expected - 0.1, expected + 0.1].join(
      ',',
    );
  });
  const head = 'Side,Day,Opponent,Play,Defense,Outcome,Shots,Expected,Expected low,Expected high';
  return Buffer.from(`${[head, ...lines].join('\r\n')}\r\n`);
}
