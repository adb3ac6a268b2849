import { type Block, beside, paragraph, stack, type TextLook } from './block.ts';
import type { PageMark } from './page.ts';

/** Shots that a goalkeeper faced, by quarters of the mouth as the shooter sees it: high left, high right, low left, low right. */
export interface KeeperOnPage {
  readonly quarters: readonly {
    readonly goals: number;
    readonly shots: number;
    /** Beside his other quarters. */
    readonly verdict: 'more' | 'less' | 'cannotTell';
  }[];
}

const heading: TextLook = { size: 14, weight: 'bold', tone: 'ink', leading: 1.35 };
const body: TextLook = { size: 11.5, weight: 'regular', tone: 'ink', leading: 1.3 };

/** Side of the drawn mouth, points. */
const side = 76;
const columnGap = 10;

/** Their goalkeeper: the mouth in quarters with goals of shots, and where he is beaten more than luck explains. */
export function keeperBlock(keeper: KeeperOnPage, width: number): Block {
  const left = side + 4 + columnGap;
  return stack(
    [
      paragraph('Their goalkeeper', heading, width),
      beside([
        { left: 0, block: mouth(keeper) },
        { left, block: paragraph(keeperWords(keeper), body, width - left) },
      ]),
    ],
    2,
  );
}

const names = ['high left', 'high right', 'low left', 'low right'] as const;

/** What the counts say, and what they do not. */
export function keeperWords({ quarters }: KeeperOnPage): string {
  const shots = quarters.reduce((sum, one) => sum + one.shots, 0);
  const goals = quarters.reduce((sum, one) => sum + one.goals, 0);
  const where = (verdict: 'more' | 'less'): string =>
    quarters.flatMap((one, at) => (one.verdict === verdict ? [names[at]] : [])).join(' and ');
  const [weak, strong] = [where('more'), where('less')];
  const all = `As the shooter sees it; ${goals} of ${shots} went in.`;
  if (weak === '' && strong === '') return `${all} No quarter stands out beyond luck: shoot where you shoot best.`;
  const parts = [
    ...(weak === '' ? [] : [`He is beaten most ${weak}: more than luck explains.`]),
    ...(strong === '' ? [] : [`Keep away from ${strong}: he saves more there than luck explains.`]),
  ];
  return `${all} ${parts.join(' ')}`;
}

function mouth({ quarters }: KeeperOnPage): Block {
  const half = side / 2;
  return {
    height: side + 4,
    draw: (left, top) => [
      ...quarters.flatMap(({ goals, shots, verdict }, at): readonly PageMark[] => {
        const [x, y] = [left + 2 + (at % 2) * half, top + 2 + (at < 2 ? 0 : half)];
        return [
          {
            kind: 'box',
            left: x,
            top: y,
            width: half,
            height: half,
            fill: verdict === 'more' ? 'tint' : 'none',
            edge: 0.5,
          },
          {
            kind: 'text',
            at: { x: x + half / 2, y: y + half / 2 + 4 },
            text: shots === 0 ? '-' : `${goals}/${shots}`,
            size: 11,
            weight: verdict === 'more' ? 'bold' : 'regular',
            tone: 'ink',
            anchor: 'middle',
          },
        ];
      }),
      { kind: 'box', left: left + 2, top: top + 2, width: side, height: side, fill: 'none', edge: 2 },
    ],
  };
}
