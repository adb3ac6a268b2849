import { type ReactNode, useState } from 'react';
import { type Level, levels, usualRuleCode } from '../../engine/index.ts';
import { demoPlaybook, limits } from '../../playbook/index.ts';
import { Button } from '../controls/button.tsx';
import { PickList } from '../controls/pick-list.tsx';
import { TextField } from '../controls/text-field.tsx';
import { useDesk } from '../shell/desk.tsx';
import { emptyPlaybook } from './empty-playbook.ts';
import { levelNames } from './level-names.ts';
import styles from './playbook-screen.module.css';
import type { Said } from './said.ts';

const kept = 'What was here before is kept among the versions.';

/** A playbook from the beginning: empty, or the invented team of the demo. */
export function StartSection({ onDone }: { readonly onDone: (said: Said) => void }): ReactNode {
  const { store } = useDesk();
  const [name, setName] = useState('');
  const [level, setLevel] = useState<Level>(store.playbook.team.level);
  const [isMissing, setMissing] = useState(false);
  const rules = usualRuleCode(level);
  const startEmpty = async (): Promise<void> => {
    const team = name.trim();
    setMissing(team === '');
    if (team === '') return;
    const step = 'Start an empty playbook';
    await store.replace(step, emptyPlaybook(team, level), 'begun');
    setName('');
    onDone({
      text: `A new playbook for ${team}. Put your players in at Team, and write a play at Play. ${kept}`,
      step,
    });
  };
  const startDemo = async (): Promise<void> => {
    const step = 'Start from the demo';
    await store.replace(step, demoPlaybook, 'begun');
    onDone({ text: `The demo is here: an invented team with plays to take apart. ${kept}`, step });
  };
  return (
    <section className={styles.section} aria-labelledby="start-title">
      <h2 id="start-title">Start anew</h2>
      <form
        className={styles.form}
        onSubmit={(event) => {
          event.preventDefault();
          void startEmpty();
        }}
      >
        <TextField
          label="Team"
          value={name}
          maxLength={limits.name}
          onText={(text) => {
            setName(text);
            setMissing(false);
          }}
          {...(isMissing && { problem: 'A playbook needs the name of a team.' })}
        />
        <PickList
          label="Level"
          value={level}
          options={levels.map((value) => ({ value, text: levelNames[value] }))}
          onChange={(value) => setLevel(value as Level)}
        />
        <Button type="submit">Start empty</Button>
      </form>
      <div role="status">
        {!rules.penalties.playedShort.value && (
          <p className={styles.warning}>
            By the rules of {rules.name} no team is ever a man up in games: the player who fouls is replaced. These
            plays are then for practice; confirm in your rulebook.
          </p>
        )}
      </div>
      <div className={styles.way}>
        <Button onClick={startDemo}>Start from the demo</Button>
        <p>An invented team with three plays, to try things on.</p>
      </div>
    </section>
  );
}
