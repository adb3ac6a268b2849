import { ChevronDown, ChevronUp, X } from 'lucide-react';
import type { ReactNode } from 'react';
import type { Player } from '../../playbook/index.ts';
import { Button } from '../controls/button.tsx';
import { PickList } from '../controls/pick-list.tsx';
import { Segments } from '../controls/segments.tsx';
import { useDesk, usePlaybook } from '../shell/desk.tsx';
import { GradeSteps } from './grade-steps.tsx';
import { measuredInstead } from './measured-instead.ts';
import { PanelField } from './panel-field.tsx';
import styles from './player-panel.module.css';
import { ReadingList } from './reading-list.tsx';
import { readingSummary } from './reading-summary.ts';
import {
  type ChoiceColumn,
  crosseColumn,
  handColumn,
  heightColumn,
  levelColumn,
  nameColumn,
  notesColumn,
  numberColumn,
  onGoalColumn,
  readingNames,
  roleColumn,
  withGrade,
} from './roster-columns.ts';
import { removePlayer } from './roster-edits.ts';
import { nameOf } from './roster-problems.ts';
import { useTeam } from './team-state.ts';
import { skillNames, skillWords } from './team-words.ts';
import { UnitPicks } from './unit-picks.tsx';
import type { RosterEditor } from './use-roster.ts';

export interface PlayerPanelProps {
  readonly editor: RosterEditor;
  readonly row: string;
  /** Its own way out; a dialog round it has one already. */
  readonly onClose?: () => void;
}

/** All of one man: who he is, his grades, his readings and what they count as. */
export function PlayerPanel({ editor, row, onClose }: PlayerPanelProps): ReactNode {
  const { store } = useDesk();
  const change = useTeam((state) => state.change);
  const index = editor.keys.indexOf(row);
  const player = editor.roster[index];
  if (player === undefined) return null;
  const edit = (what: string, next: (man: Player) => Player): void => editor.edit(row, what, next);
  const go = (by: number): void => change({ open: editor.keys[index + by] });
  const choice = (column: ChoiceColumn): ReactNode => (
    <PickList
      label={column.name}
      value={column.valueOf(player)}
      options={column.options}
      onChange={(value) => edit(`choose ${column.head.toLowerCase()}`, (man) => column.put(man, value))}
    />
  );
  return (
    <div className={styles.panel}>
      {onClose !== undefined && (
        <div className={styles.head}>
          <h2 className={styles.title}>{nameOf(player)}</h2>
          <Button tone="plain" aria-label="Close" icon={<X aria-hidden="true" />} onClick={onClose} />
        </div>
      )}
      <div className={styles.who}>
        <div className={styles.number}>
          <PanelField editor={editor} row={row} column={numberColumn} label="Number" />
        </div>
        <div className={styles.name}>
          <PanelField editor={editor} row={row} column={nameColumn} label="Name" />
        </div>
        <div className={styles.steppers}>
          <Button
            tone="plain"
            aria-label="The man before him"
            disabled={index === 0}
            icon={<ChevronUp aria-hidden="true" />}
            onClick={() => go(-1)}
          />
          <Button
            tone="plain"
            aria-label="The next man"
            disabled={index === editor.roster.length - 1}
            icon={<ChevronDown aria-hidden="true" />}
            onClick={() => go(1)}
          />
        </div>
      </div>
      <div className={styles.choices}>
        <Segments
          label="Hand"
          value={player.hand}
          options={handColumn.options.map(({ value, text }) => ({ value: value as Player['hand'], text }))}
          onChange={(hand) => edit('choose hand', (man) => ({ ...man, hand }))}
        />
        <Button
          pressed={player.absent === true}
          onClick={() =>
            edit(player.absent === true ? 'note the return' : 'note the absence', ({ absent, ...man }) =>
              absent === true ? man : { ...man, absent: true },
            )
          }
        >
          Absent today
        </Button>
      </div>
      <div className={styles.choices}>
        {choice(roleColumn)}
        {choice(crosseColumn)}
        {choice(levelColumn)}
      </div>
      <section className={styles.part} aria-label="Grades">
        <h3>Grades</h3>
        <p className={styles.summary}>
          1 weakest of his level, 5 best. Without one, the usual 3 counts. Press a step again to take it back.
        </p>
        {skillNames.map((skill) => (
          <GradeSteps
            key={skill}
            label={skillWords[skill].name}
            about={skillWords[skill].moves}
            instead={measuredInstead(player, skill)?.sentence}
            grade={player.grades?.[skill]}
            onGrade={(grade) =>
              edit(`grade ${skillWords[skill].name.toLowerCase()}`, (man) => withGrade(man, skill, grade))
            }
          />
        ))}
      </section>
      <Readings editor={editor} row={row} player={player} onEdit={edit} />
      <PanelField editor={editor} row={row} column={notesColumn} label="Notes" />
      <Button
        tone="risky"
        className={styles.out ?? ''}
        onClick={() => {
          change({ open: undefined });
          store.edit(`take ${nameOf(player)} out`, (playbook) =>
            removePlayer(playbook, playbook.team.roster.indexOf(player)),
          );
        }}
      >
        Take {nameOf(player)} out of the roster
      </Button>
    </div>
  );
}

interface ReadingsProps {
  readonly editor: RosterEditor;
  readonly row: string;
  readonly player: Player;
  readonly onEdit: (what: string, change: (player: Player) => Player) => void;
}

function Readings({ editor, row, player, onEdit }: ReadingsProps): ReactNode {
  const playbook = usePlaybook();
  const units = useTeam((state) => state.units);
  return (
    <section className={styles.part} aria-label="Readings">
      <h3>Readings</h3>
      <UnitPicks />
      {readingNames.map((name) => (
        <ReadingList key={name} player={player} name={name} onEdit={onEdit} />
      ))}
      <div className={styles.reading}>
        <PanelField editor={editor} row={row} column={onGoalColumn} label="Shots with time and room, on goal of all" />
        <p className={styles.summary}>{readingSummary(playbook, player, 'onGoal', units)}</p>
      </div>
      <div className={styles.reading}>
        <PanelField editor={editor} row={row} column={heightColumn(units)} label={heightColumn(units).name} />
        <p className={styles.summary}>{readingSummary(playbook, player, 'heightCm', units)}</p>
      </div>
    </section>
  );
}
