import type { PlotOptions } from '@observablehq/plot';
import type { GroupReport, PlanBin } from '../../teach/index.ts';

type Plots = typeof import('@observablehq/plot');

/** Height of a line of a chart, and room for its axis, px. */
const lineHeight = 34;
const axisHeight = 66;
const below = 44;

const centred = { labelArrow: 'none', labelAnchor: 'center', labelOffset: 38 } as const;
const style = {
  background: 'none',
  color: 'var(--ink)',
  fontFamily: 'inherit',
  fontSize: '13px',
  overflow: 'visible',
} as const;

/** A line for each group: where its share lies as a bar, what was counted as a dot, the best guess as a stroke; what is usual as a dashed line over all. */
export function drawGroups(plots: Plots, groups: readonly GroupReport[], usual: number, isGuess: boolean): PlotOptions {
  const rows = groups.map(({ name, numbers: { raw, shrunk } }) => ({ name, ...raw, guess: shrunk.mean }));
  return {
    style,
    height: rows.length * lineHeight + axisHeight,
    marginLeft: 128,
    marginRight: 12,
    marginTop: 22,
    marginBottom: below,
    x: {
      domain: [0, 1],
      tickFormat: (share: number) => `${Math.round(share * 100)}`,
      ticks: 5,
      label: 'goals in 100 chances',
      ...centred,
    },
    y: { label: null, domain: rows.map(({ name }) => name), tickFormat: shortName },
    marks: [
      plots.ruleX([usual], { stroke: 'var(--quiet)', strokeDasharray: '4 3' }),
      plots.text([isGuess ? 'guessed' : 'usual'], { x: usual, frameAnchor: 'top', dy: -14, fill: 'var(--quiet)' }),
      plots.ruleY(rows, {
        y: 'name',
        x1: 'low',
        x2: 'high',
        stroke: 'var(--offense)',
        strokeWidth: 5,
        strokeOpacity: 0.45,
        strokeLinecap: 'round',
      }),
      plots.tickX(rows, { x: 'guess', y: 'name', stroke: 'var(--ink)', strokeWidth: 2, inset: 8 }),
      plots.dot(rows, { x: 'mean', y: 'name', r: 5, fill: 'var(--offense)' }),
    ],
  };
}

/** What came against what was expected, a line for each bin, with the slope on which the two are the same. */
export function drawPlan(plots: Plots, bins: readonly PlanBin[]): PlotOptions {
  const rows = bins.map(({ expected, came }) => ({ expected, ...came }));
  const axis = { domain: [0, 1], ticks: 5, tickFormat: (share: number) => `${Math.round(share * 100)}` };
  return {
    style,
    height: 260,
    marginLeft: 40,
    marginRight: 16,
    marginTop: 26,
    marginBottom: below,
    x: { ...axis, label: 'expected goals in 100 chances', ...centred },
    y: { ...axis, label: 'goals that came', labelArrow: 'none' },
    marks: [
      plots.line(
        [
          [0, 0],
          [1, 1],
        ],
        { stroke: 'var(--quiet)', strokeDasharray: '4 3' },
      ),
      plots.ruleX(rows, {
        x: 'expected',
        y1: 'low',
        y2: 'high',
        stroke: 'var(--offense)',
        strokeWidth: 5,
        strokeOpacity: 0.45,
        strokeLinecap: 'round',
      }),
      plots.dot(rows, { x: 'expected', y: 'mean', r: 5, fill: 'var(--offense)' }),
    ],
  };
}

/** Letters of a name that have room beside a chart. */
const longestName = 17;

function shortName(name: string): string {
  return name.length > longestName ? `${name.slice(0, longestName - 1)}…` : name;
}
