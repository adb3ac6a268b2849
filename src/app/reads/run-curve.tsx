import type { ReactNode } from 'react';
import type { ValuedTime } from '../../engine/index.ts';
import { goalsText } from '../schemes/goal-words.ts';
import { type CurvePlane, curvePlane } from './curve-plane.ts';
import styles from './run-curve.module.css';

/** Goals a chance that the curve reaches to at least on both sides. */
const leastReach = 0.05;

/** What each moment to go gains over the play, with its interval. The table beside it says the same in figures. */
export function RunCurve({ times }: { readonly times: readonly ValuedTime[] }): ReactNode {
  const longest = times.at(-1)!.after;
  const plane = curvePlane(
    times.map(({ gain }) => gain),
    longest,
    leastReach,
  );
  const { height, across, down } = plane;
  return (
    <svg className={styles.curve} aria-hidden="true" width="100%" height={height}>
      <Levels plane={plane} longest={longest} />
      {times.map(({ after, gain }) => (
        <g key={after}>
          <line
            className={styles.range}
            x1={across(after)}
            x2={across(after)}
            y1={down(gain.low)}
            y2={down(gain.high)}
          />
          <circle className={styles.mean} cx={across(after)} cy={down(gain.mean)} r="3.5" />
        </g>
      ))}
      {wholeSeconds(longest).map((seconds) => (
        <text key={seconds} x={across(seconds)} y={height - 6} textAnchor="middle">
          {seconds === 0 ? 'at once' : `${seconds} s`}
        </text>
      ))}
    </svg>
  );
}

function Levels({ plane, longest }: { readonly plane: CurvePlane; readonly longest: number }): ReactNode {
  const { reach, across, down } = plane;
  const levels = [
    { goals: reach, text: `+${goalsText(reach)}` },
    { goals: 0, text: 'the play' },
    { goals: -reach, text: `−${goalsText(reach)}` },
  ];
  return levels.map(({ goals, text }) => (
    <g key={text}>
      <line
        className={goals === 0 ? styles.none : styles.edge}
        x1={across(0)}
        x2={across(longest)}
        y1={down(goals)}
        y2={down(goals)}
      />
      <text x="0" y={down(goals)} dominantBaseline="middle">
        {text}
      </text>
    </g>
  ));
}

function wholeSeconds(longest: number): readonly number[] {
  return Array.from({ length: Math.floor(longest) + 1 }, (_, second) => second);
}
