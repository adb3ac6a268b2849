import { X } from 'lucide-react';
import { type KeyboardEvent, type PointerEvent, type ReactNode, useRef, useState } from 'react';
import type { KeeperQuarterId } from '../../engine/index.ts';
import { addKeeperShot, type KeeperShot, type Opponent, removeKeeperShot } from '../../playbook/index.ts';
import { percent } from '../../render/index.ts';
import { type KeeperQuarter, keeperQuarters } from '../../teach/index.ts';
import { Button } from '../controls/button.tsx';
import { Segments } from '../controls/segments.tsx';
import styles from './keeper-panel.module.css';
import panel from './panel.module.css';
import { useApply } from './use-apply.ts';

/** Where shots on their goalkeeper went and what became of them: pressed on the mouth of the goal as the shooter sees it. */
export function KeeperPanel({ opponent }: { readonly opponent: Opponent }): ReactNode {
  const apply = useApply();
  const [result, setResult] = useState<KeeperShot['result']>('goal');
  const [aim, setAim] = useState<KeeperShot['at']>();
  const { id, keeper: shots = [] } = opponent;
  const quarters = keeperQuarters(shots);
  const add = (at: KeeperShot['at']): void => {
    apply(result === 'goal' ? 'mark a goal' : 'mark a save', (book) => addKeeperShot(book, id, { at, result }));
  };
  return (
    <section className={panel.panel} aria-label="Their goalkeeper">
      <h3 className={panel.title}>Their goalkeeper</h3>
      <p className={panel.quiet}>
        Press where shots on goal came in, as the shooter sees the goal. {keeperSentence(quarters)}
      </p>
      <div className={panel.tools}>
        <Segments
          label="What became of it"
          value={result}
          options={[
            { value: 'goal', text: 'Goal' },
            { value: 'saved', text: 'Saved' },
          ]}
          onChange={setResult}
        />
      </div>
      <div className={styles.columns}>
        <Mouth shots={shots} aim={aim} onAim={setAim} onShot={add} />
        <table className={styles.table}>
          <thead>
            <tr>
              <th scope="col">Quarter</th>
              <th scope="col">Goals</th>
              <th scope="col">In the long run</th>
              <th scope="col">In the simulation</th>
            </tr>
          </thead>
          <tbody>
            {quarters.map((quarter) => (
              <tr key={quarter.id} data-quarter={quarter.id}>
                <th scope="row">{quarterWords[quarter.id]}</th>
                <td>{quarter.shots === 0 ? 'none seen' : `${quarter.goals} of ${quarter.shots}`}</td>
                <td>{longRun(quarter)}</td>
                <td>{`stops ${Math.round(100 * quarter.stopsOfHalf)} of 100`}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      {shots.length > 0 && (
        <p className={panel.quiet}>
          Plays against this team are tried on this goalkeeper, and our shooters aim by it. In the simulation: of 100
          balls into a quarter that he would stop 50 of if he were alike everywhere, how many he stops, as far as these
          shots can say.
        </p>
      )}
      {shots.length > 0 && (
        <div className={panel.tools}>
          <Button
            icon={<X aria-hidden="true" />}
            onClick={() => apply('take out the last shot', (book) => removeKeeperShot(book, id, shots.length - 1))}
          >
            Take out the last shot
          </Button>
        </div>
      )}
    </section>
  );
}

export const quarterWords: Readonly<Record<KeeperQuarterId, string>> = {
  highLeft: 'High, shooter’s left',
  highRight: 'High, shooter’s right',
  lowLeft: 'Low, shooter’s left',
  lowRight: 'Low, shooter’s right',
};

function longRun({ shots, beaten, verdict }: KeeperQuarter): string {
  const range = `${percent(beaten.low)} to ${percent(beaten.high)}`;
  switch (verdict) {
    case 'more':
      return `${range}: beaten more than elsewhere`;
    case 'less':
      return `${range}: beaten less than elsewhere`;
    case 'cannotTell':
      return shots === 0 ? 'cannot be told' : `${range}: cannot be told from the rest`;
    default:
      return exhaustive(verdict);
  }
}

function keeperSentence(quarters: readonly KeeperQuarter[]): string {
  const weak = quarters.filter(({ verdict }) => verdict === 'more').map(({ id }) => quarterWords[id].toLowerCase());
  if (weak.length > 0) return `He is beaten most ${weak.join(' and ')}: more than luck explains.`;
  const shots = quarters.reduce((sum, one) => sum + one.shots, 0);
  return shots === 0 ? 'A dozen shots say little, fifty begin to.' : 'No quarter stands out beyond luck so far.';
}

/** Feet around the mouth that are shown: half its width and its height are 3 and 6. */
const box = { left: -3.6, top: -6.6, width: 7.2, height: 7.4 } as const;
/** One press of an arrow key, feet. */
const keyStep = 0.5;

function Mouth({
  shots,
  aim,
  onAim,
  onShot,
}: {
  readonly shots: readonly KeeperShot[];
  readonly aim: KeeperShot['at'] | undefined;
  readonly onAim: (at: KeeperShot['at']) => void;
  readonly onShot: (at: KeeperShot['at']) => void;
}): ReactNode {
  const plane = useRef<SVGSVGElement>(null);
  const press = (event: PointerEvent): void => {
    const at = plane.current?.getBoundingClientRect();
    if (at === undefined || event.button !== 0) return;
    const scale = box.width / at.width;
    const place = inside([box.left + (event.clientX - at.left) * scale, -(box.top + (event.clientY - at.top) * scale)]);
    onShot(place);
  };
  const keyDown = (event: KeyboardEvent): void => {
    const [x, y] = aim ?? [0, 3];
    const moved = keyPlaces[event.key]?.([x, y]);
    if (moved !== undefined) {
      event.preventDefault();
      onAim(inside(moved));
      return;
    }
    if (event.key !== 'Enter' && event.key !== ' ') return;
    event.preventDefault();
    onShot([x, y]);
  };
  return (
    <button
      type="button"
      className={styles.mouth}
      aria-label={`Mouth of the goal: press where the shot came in. By keys: arrows move the mark, Enter sets it${aim === undefined ? '' : `; it is ${placeText(aim)}`}`}
      onPointerDown={press}
      onKeyDown={keyDown}
    >
      <svg ref={plane} aria-hidden="true" viewBox={`${box.left} ${box.top} ${box.width} ${box.height}`}>
        <path d="M0 0V-6M-3 -3H3" className={styles.quarters} />
        <path d="M-3 0V-6H3V0" className={styles.pipes} />
        <path d="M-3.6 0H3.6" className={styles.ground} />
        {shots.map(({ at: [x, y], result }, index) =>
          result === 'goal' ? (
            // biome-ignore lint/suspicious/noArrayIndexKey: shots have no names, and two may be alike
            <circle key={index} cx={x} cy={-y} r="0.2" className={styles.goal} />
          ) : (
            <path
              // biome-ignore lint/suspicious/noArrayIndexKey: as above
              key={index}
              d={`M${x - 0.18} ${-y - 0.18}l0.36 0.36M${x - 0.18} ${-y + 0.18}l0.36 -0.36`}
              className={styles.saved}
            />
          ),
        )}
        {aim !== undefined && <circle cx={aim[0]} cy={-aim[1]} r="0.34" className={styles.aim} />}
      </svg>
    </button>
  );
}

const keyPlaces: Readonly<Record<string, ((at: KeeperShot['at']) => KeeperShot['at']) | undefined>> = {
  ArrowLeft: ([x, y]) => [x - keyStep, y],
  ArrowRight: ([x, y]) => [x + keyStep, y],
  ArrowUp: ([x, y]) => [x, y + keyStep],
  ArrowDown: ([x, y]) => [x, y - keyStep],
};

// A press on a pipe means the mouth beside it.
function inside([x, y]: KeeperShot['at']): KeeperShot['at'] {
  return [Math.min(3, Math.max(-3, x)), Math.min(6, Math.max(0, y))];
}

function placeText([x, y]: KeeperShot['at']): string {
  const side = x === 0 ? 'in the middle' : `${Math.abs(x)} ft to the ${x < 0 ? 'left' : 'right'}`;
  return `${side}, ${y} ft high`;
}

function exhaustive(verdict: never): never {
  throw new TypeError(`unknown verdict: ${JSON.stringify(verdict)}`);
}
