import { ShieldCheck } from 'lucide-react';
import type { ReactNode } from 'react';
import { type Level, type RuleCodeId, ruleCodes, usualRuleCode } from '../../engine/index.ts';
import { type Playbook, ruleCodeOf, type Team } from '../../playbook/index.ts';
import { PickList } from '../controls/pick-list.tsx';
import { TextField } from '../controls/text-field.tsx';
import { useDesk, usePlaybook } from '../shell/desk.tsx';
import styles from './team-head.module.css';
import { levelOptions, levelWords, ruleCodeOptions } from './team-words.ts';

/** Who the team is: name, level, the rules that it plays by, and where all of it is kept. */
export function TeamHead(): ReactNode {
  const { store } = useDesk();
  const playbook = usePlaybook();
  const { name, level, ruleCode } = playbook.team;
  const change = (label: string, part: (team: Team) => Team, joins?: string): void => {
    store.edit(label, withTeam(part), joins === undefined ? {} : { joins });
  };
  const note = ruleCodeOf(playbook).note ?? usualRuleCode(level).note;
  return (
    <header className={styles.head}>
      <h1 className="spoken">Team</h1>
      <div className={styles.name}>
        <TextField
          label="Team"
          value={name}
          maxLength={80}
          onText={(text) => change('change the team’s name', (team) => ({ ...team, name: text }), 'typing:team/name')}
          onBlur={() => store.settle()}
          {...(name.trim() === '' && { problem: 'Give the team a name: it stands on every sheet.' })}
        />
      </div>
      <PickList
        label="Level"
        value={level}
        options={levelOptions}
        onChange={(next) => change('change the level', (team) => ({ ...team, level: next as Level }))}
      />
      <PickList
        label="Rules"
        value={ruleCode ?? ''}
        options={[
          { value: '', text: `Usual for ${levelWords[level]}: ${usualRuleCode(level).name}` },
          ...ruleCodeOptions,
        ]}
        onChange={(next) => change('change the rules', (team) => withRules(team, next))}
      />
      {note !== undefined && (
        <p className={styles.note} role="status">
          {note}
        </p>
      )}
      <p className={styles.kept}>
        <ShieldCheck aria-hidden="true" />
        Names and numbers stay on this machine; nothing is sent anywhere. A file that you hand out can carry jersey
        numbers without names.
      </p>
    </header>
  );
}

function withTeam(part: (team: Team) => Team): (playbook: Playbook) => Playbook {
  return (playbook) => ({ ...playbook, team: part(playbook.team) });
}

function withRules({ ruleCode: _, ...team }: Team, next: string): Team {
  return next in ruleCodes ? { ...team, ruleCode: next as RuleCodeId } : team;
}
