import type { ReactNode } from 'react';
import type { Chance, ChanceMark } from '../../playbook/index.ts';
import { tenth } from '../../render/index.ts';
import { Button } from '../controls/button.tsx';
import { NumberField } from '../controls/number-field.tsx';
import { Segments } from '../controls/segments.tsx';
import panel from '../opponents/panel.module.css';
import { useFilm } from './film-state.ts';
import type { Marked } from './film-tool.ts';
import styles from './moment-bar.module.css';
import {
  type MomentEdit,
  markMan,
  momentAt,
  momentsOf,
  mostOfOneSide,
  repeatMoment,
  retimeMoment,
  unmarkMan,
} from './moment-edits.ts';
import { markedName, markedOfName } from './use-marking.ts';

export interface MomentBarProps {
  readonly chance: Chance;
  readonly time: number;
  readonly moment: ChanceMark | undefined;
  /** It is known when this is, so that marks have a time. */
  readonly canMark: boolean;
  readonly edit: (label: string, edit: (chance: Chance) => MomentEdit) => void;
  readonly onGo: (seconds: number) => void;
}

type ManTool = Marked['kind'] | 'look';

/** What the next press sets. It stands above the field, so nothing in it comes or goes while somebody presses there. */
export function MomentTools({ chance, time, canMark, edit }: MomentBarProps): ReactNode {
  const { film, filmTime, begins, hand, send, change } = useFilm();
  const what = hand.tool.kind === 'man' ? hand.tool.what : undefined;
  if (!canMark) {
    return (
      <div className={styles.bar}>
        <p className={panel.quiet}>
          This man-up was marked without this film, or on another day. Go to the frame at which it begins.
        </p>
        <Button tone="main" onClick={() => change({ begins: { ...begins, [chance.id]: filmTime } })}>
          It begins at this frame
        </Button>
      </div>
    );
  }
  return (
    <div className={styles.tools}>
      <Segments<ManTool>
        label="What the next press sets"
        value={what ?? 'look'}
        options={[
          { value: 'look', text: 'Move' },
          { value: 'ball', text: 'Ball' },
          { value: 'defender', text: 'Defender' },
          { value: 'attacker', text: 'Attacker' },
        ]}
        onChange={(tool) =>
          send({ kind: 'choose', tool: tool === 'look' ? { kind: 'look' } : { kind: 'man', what: tool } })
        }
      />
      <Button
        disabled={what === undefined}
        onClick={() => {
          if (what === undefined) return;
          edit(`mark ${what === 'attacker' ? 'an attacker' : what === 'ball' ? 'the ball' : 'a defender'}`, (one) =>
            markMan(one, time, { kind: 'set', what, at: startPlace }, film === undefined ? 'field' : 'film'),
          );
        }}
      >
        Put it on the field
      </Button>
    </div>
  );
}

/** What is said of the moment, what can be done with whoever is chosen, and the moments of the man-up. Below the field, where it may come and go. */
export function MomentNotes(props: MomentBarProps): ReactNode {
  const { time, moment, canMark } = props;
  const { hand, notice } = useFilm();
  if (!canMark) return null;
  const tool: ManTool = hand.tool.kind === 'man' ? hand.tool.what : 'look';
  return (
    <div className={styles.bar}>
      <p role="status" className={notice === '' ? panel.quiet : styles.notice}>
        {notice === '' ? hint(moment, tool, time) : notice}
      </p>
      <ChosenTools {...props} />
      <Moments {...props} />
    </div>
  );
}

/** For whoever is chosen, and for the time of the moment. */
function ChosenTools({ moment, edit, onGo }: MomentBarProps): ReactNode {
  const { film, selected, change } = useFilm();
  const chosen = selected === undefined ? undefined : markedOfName(selected);
  if (moment === undefined) return null;
  return (
    <div className={styles.tools}>
      {chosen !== undefined && (
        <Button
          tone="risky"
          onClick={() => {
            edit(`take out ${markedName(chosen).toLowerCase()}`, (now) => unmarkMan(now, moment.time, chosen));
            change({ selected: undefined });
          }}
        >
          {chosen.kind === 'ball' ? 'Take out the whole moment' : `Take out ${markedName(chosen).toLowerCase()}`}
        </Button>
      )}
      {film === undefined && (
        <NumberField
          label="Seconds since the man-up began"
          unit="at s"
          step={0.5}
          value={moment.time}
          onNumber={(to) => {
            edit('move the moment', (now) => retimeMoment(now, moment.time, to));
            onGo(to);
          }}
        />
      )}
    </div>
  );
}

function Moments({ chance, time, moment, edit, onGo }: MomentBarProps): ReactNode {
  const film = useFilm((state) => state.film);
  const moments = momentsOf(chance).filter(({ by }) => by !== 'tick');
  if (moments.length === 0) return null;
  return (
    <div className={panel.tools}>
      {moments.map((one) => (
        <Button key={one.time} pressed={one === moment} onClick={() => onGo(one.time)}>
          {`${tenth(one.time)} s`}
        </Button>
      ))}
      {film === undefined && (
        <Button
          onClick={() => {
            const last = moments.at(-1)!;
            edit('add a moment', (now) => repeatMoment(now, last.time, last.time + 1));
            onGo(last.time + 1);
          }}
        >
          A moment later
        </Button>
      )}
      {film !== undefined && moment === undefined && (
        <Button
          disabled={time < 0}
          onClick={() => edit('add a moment', (now) => repeatMoment(now, before(now, time), time))}
        >
          Take over those of the moment before
        </Button>
      )}
    </div>
  );
}

/** Where who marks by keys begins: in front of the crease, seen by all. */
const startPlace = { x: 0, y: 7 };

function before(chance: Chance, time: number): number {
  const at = momentsOf(chance).filter((mark) => mark.by !== 'tick');
  const latest = at.filter((mark) => mark.time < time).at(-1) ?? at[0];
  return latest === undefined || momentAt(chance, latest.time) < 0 ? 0 : latest.time;
}

function hint(moment: ChanceMark | undefined, tool: ManTool, time: number): string {
  if (time < 0) return 'This frame is before the man-up begins.';
  if (moment === undefined)
    return tool === 'ball'
      ? 'Press where the ball is, in the film or on the field.'
      : 'Nothing is marked here yet. Choose Ball and press where it is: a moment begins with it.';
  const count = moment.defenders.length;
  if (count > mostOfOneSide)
    return `${count} defenders are marked, and no more than ${mostOfOneSide} can be on the field beside the goalkeeper. Choose whoever is none, and take him out.`;
  if (tool === 'defender')
    return `Press each defender at his feet. ${count} so far${count === mostOfOneSide ? ', as many as can be on the field' : ''}; whoever is out of sight is left out.`;
  if (tool === 'attacker')
    return 'Press each attacker at his feet. Attackers are marked where they are not at their spots.';
  return count === 0
    ? 'Choose Defender and press each of them.'
    : 'Drag whoever is not where he belongs, or choose him and take him out.';
}
