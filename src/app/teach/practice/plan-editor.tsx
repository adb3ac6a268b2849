import { type ReactNode, useMemo, useState } from 'react';
import {
  dropBlock,
  limits,
  moveBlock,
  noteBlock,
  type Playbook,
  type Practice,
  schemeName,
  setBlockMinutes,
  setBlockReps,
  toEnginePlay,
} from '../../../playbook/index.ts';
import {
  blockTitle,
  clockWords,
  dayWords,
  type LookStand,
  lasting,
  minutesTaken,
  minuteWords,
  practicePages,
  refitPractice,
  repeated,
  runLines,
} from '../../../teach/index.ts';
import { Button } from '../../controls/button.tsx';
import { NumberField } from '../../controls/number-field.tsx';
import { TextField } from '../../controls/text-field.tsx';
import { useScreen } from '../../play/screen-state.ts';
import { FileTools } from '../file-tools.tsx';
import { PageView } from '../page-view.tsx';
import shared from '../tools.module.css';
import { BlockRow } from './block-row.tsx';
import { draftId } from './draft-plan.ts';
import { usePlans } from './plan-state.ts';
import styles from './practice.module.css';
import { usePlanStands } from './use-plan-stands.ts';

/** A change of a plan, under the name by which it is taken back; changes of one kind in one place that follow each other are one. */
export type ChangePlan = (label: string, change: (practice: Practice) => Practice, joins?: string) => void;

export interface PlanEditorProps {
  readonly playbook: Playbook;
  /** Under any id when it is not kept yet. */
  readonly practice: Practice;
  readonly onChange: ChangePlan;
  /** What can be done with the whole plan. */
  readonly tools: ReactNode;
}

/** A plan block by block, to be changed in place, and its pages as they come out of the printer. */
export function PlanEditor({ playbook, practice, onChange, tools }: PlanEditorProps): ReactNode {
  const side = useScreen((state) => state.side);
  const stands = usePlanStands(playbook, practice, side);
  return (
    <div className={styles.plan}>
      <div className={styles.editor}>
        <div className={shared.choices}>
          <PlanName practice={practice} onChange={onChange} />
          <TextField
            label="Day"
            type="date"
            value={practice.date ?? ''}
            onText={(text) => onChange('the day of a practice plan', (plan) => onDay(plan, text))}
          />
        </div>
        <TimeLine practice={practice} onChange={onChange} />
        <div className={shared.tools}>{tools}</div>
        <Blocks playbook={playbook} practice={practice} side={side} onChange={onChange} />
        {(practice.leftOut ?? []).length > 0 && (
          <ul className={styles.left} aria-label="Not today">
            {practice.leftOut!.map((words) => (
              <li key={words}>{words}</li>
            ))}
          </ul>
        )}
      </div>
      <div className={styles.paper}>
        <Pages playbook={playbook} practice={practice} side={side} stands={stands} />
      </div>
    </div>
  );
}

/** The plan on another day; on none for an empty text. */
function onDay({ date: _, ...plan }: Practice, text: string): Practice {
  return text === '' ? plan : { ...plan, date: text };
}

/** What the plan is called; an empty name is not taken, and the one before stays. */
function PlanName({ practice, onChange }: Pick<PlanEditorProps, 'practice' | 'onChange'>): ReactNode {
  const [typed, setTyped] = useState<string>();
  const take = (): void => {
    const name = typed?.trim() ?? '';
    if (name !== '' && name !== practice.name)
      onChange('the name of a practice plan', (plan) => ({ ...plan, name: name.slice(0, limits.name) }));
    setTyped(undefined);
  };
  return (
    <TextField
      label="Name of the plan"
      value={typed ?? practice.name}
      maxLength={limits.name}
      onText={setTyped}
      onBlur={take}
      onKeyDown={(event) => {
        if (event.key === 'Enter') take();
      }}
    />
  );
}

interface BlocksProps extends Pick<PlanEditorProps, 'playbook' | 'practice' | 'onChange'> {
  readonly side: 'left' | 'right';
}

function Blocks({ playbook, practice, side, onChange }: BlocksProps): ReactNode {
  const scheme = (id: string): string => schemeName(playbook, id);
  const several = practice.plays.length > 1;
  let minutes = 0;
  return (
    <ol className={styles.blocks} aria-label="Blocks of the plan">
      {[...practice.blocks.entries()].map(([at, block]) => {
        const isKnown = playbook.plays.some(({ id }) => id === block.play);
        const play = isKnown ? toEnginePlay(playbook, block.play!, side) : undefined;
        const title = blockTitle(block, play, several);
        const from = clockWords(minutes);
        minutes += block.minutes;
        const change = (label: string, edit: (plan: Practice) => Practice, joins?: string): void =>
          onChange(label, edit, joins);
        return (
          <BlockRow
            key={`${at} ${block.kind}`}
            block={block}
            title={title}
            from={from}
            runs={play === undefined ? [] : runLines(block, play, scheme)}
            isFirst={at === 0}
            isLast={at === practice.blocks.length - 1}
            onMinutes={(value) => change(`the minutes of ${title}`, (plan) => timed(plan, at, value))}
            onReps={(value) => change(`the reps of ${title}`, (plan) => counted(plan, at, value))}
            onNote={(note) => change(`the note on ${title}`, (plan) => noteBlock(plan, at, note), `note ${at}`)}
            onMove={(by) => change(`the order of ${title}`, (plan) => moveBlock(plan, at, at + by))}
            onDrop={() => change(`taking out ${title}`, (plan) => dropBlock(plan, at))}
          />
        );
      })}
    </ol>
  );
}

/** With other minutes there is room for other reps, shared out as they were; no other block is touched. */
function timed(plan: Practice, at: number, minutes: number): Practice {
  const changed = setBlockMinutes(plan, at, minutes);
  return {
    ...changed,
    blocks: changed.blocks.map((block, index) => (index === at ? lasting(block, block.minutes) : block)),
  };
}

/** As many reps as the coach wants, shared out as they were; the minutes stay. */
function counted(plan: Practice, at: number, reps: number): Practice {
  const changed = setBlockReps(plan, at, reps);
  const wanted = changed.blocks[at]?.reps ?? 0;
  return { ...changed, blocks: plan.blocks.map((block, index) => (index === at ? repeated(block, wanted) : block)) };
}

/** What the blocks take of the time that there is; and the others fitted to what those that were set by hand leave. */
function TimeLine({ practice, onChange }: Pick<PlanEditorProps, 'practice' | 'onChange'>): ReactNode {
  const tell = usePlans((state) => state.change);
  const said = usePlans((state) => state.said);
  const taken = minutesTaken(practice);
  const over = taken - practice.minutes;
  const words =
    over > 0
      ? `The blocks take ${minuteWords(taken)}: ${minuteWords(over)} more than there is.`
      : `The blocks take ${minuteWords(taken)} of ${minuteWords(practice.minutes)}.`;
  const fit = (): void => {
    const fitted = refitPractice(practice);
    if (fitted === undefined) {
      tell({
        said: 'Even at their shortest the other blocks do not fit: take one out, or shorten one that was set by hand.',
      });
      return;
    }
    tell({ said: '' });
    onChange('fitting the other blocks', () => fitted);
  };
  return (
    <div className={styles.time}>
      <p role="status" className={over > 0 ? styles.over : undefined}>
        {words} {said === '' ? 'What you set stays; the other blocks stay as they are until you fit them.' : said}
      </p>
      <div className={shared.choices}>
        {practice.id !== draftId && (
          <NumberField
            label="Minutes of the whole practice"
            unit="minutes in all"
            value={practice.minutes}
            step={1}
            onNumber={(minutes) => onChange('the minutes of a practice plan', (plan) => withMinutes(plan, minutes))}
          />
        )}
        <Button onClick={fit}>Fit the other blocks</Button>
      </div>
    </div>
  );
}

function withMinutes(plan: Practice, minutes: number): Practice {
  return { ...plan, minutes: Math.min(limits.practiceMinutes, Math.max(1, Math.round(minutes))) };
}

function Pages({
  playbook,
  practice,
  side,
  stands,
}: Pick<BlocksProps, 'playbook' | 'practice' | 'side'> & { readonly stands: readonly LookStand[] }): ReactNode {
  const paper = usePlans((state) => state.paper);
  const made = dayWords(new Date());
  const printed = useMemo(
    () => practicePages(playbook, practice, stands, { side, paper, made }),
    [playbook, practice, stands, side, paper, made],
  );
  return (
    <>
      <div className={shared.tools}>
        <FileTools pages={printed} about={practice.name} />
      </div>
      <PageView pages={printed.pages} />
    </>
  );
}
