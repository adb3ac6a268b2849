import type { ReactNode } from 'react';
import type { Playbook, PlayEntry } from '../../../playbook/index.ts';
import { NumberField } from '../../controls/number-field.tsx';
import { PickList } from '../../controls/pick-list.tsx';
import shared from '../tools.module.css';
import { knownOpponents } from './plan-question.ts';
import { usePlans } from './plan-state.ts';

const keepers = [
  { value: 'warm', text: 'comes warm' },
  { value: 'cold', text: 'warms up in this time' },
  { value: 'none', text: 'none comes' },
] as const;

const sessions = [
  { value: 'first', text: '1 of 2: teach it' },
  { value: 'second', text: '2 of 2: go live' },
] as const;

const bounds = { minutes: [5, 240], players: [0, 60] } as const;

/** How long there is, who comes, against whom, and what else is practised. */
export function PlanChoices({
  playbook,
  play,
  players,
}: {
  readonly playbook: Playbook;
  readonly play: PlayEntry;
  readonly players: number;
}): ReactNode {
  const { minutes, keeper, session, opponent, also, withSkill, change } = usePlans();
  const others = playbook.plays.filter(({ id, archived }) => id !== play.id && archived !== true);
  return (
    <div className={shared.choices}>
      <Counted
        label="Minutes there are"
        words="Minutes"
        value={minutes}
        of="minutes"
        onNumber={(value) => change({ minutes: value })}
      />
      <Counted
        label="Players who come, without the goalkeeper"
        words="Players"
        value={players}
        of="players"
        onNumber={(value) => change({ players: value })}
      />
      <PickList
        label="Goalkeeper"
        value={keeper}
        options={keepers}
        onChange={(value) => change({ keeper: keepers.find((one) => one.value === value)?.value ?? 'warm' })}
      />
      <PickList
        label="Session"
        value={session}
        options={sessions}
        onChange={(value) => change({ session: value === 'second' ? 'second' : 'first' })}
      />
      <PickList
        label="Against"
        value={knownOpponents(playbook).some(({ id }) => id === opponent) ? (opponent ?? '') : ''}
        options={[
          { value: '', text: 'every scheme with one man down' },
          ...knownOpponents(playbook).map(({ id, name }) => ({ value: id, text: name })),
        ]}
        onChange={(id) => change({ opponent: id === '' ? undefined : id })}
      />
      <label className={shared.tick}>
        <input type="checkbox" checked={withSkill} onChange={(event) => change({ withSkill: event.target.checked })} />
        And which skill is worth most (a minute or more)
      </label>
      {others.length > 0 && (
        <PickList
          label="And also"
          value={others.some(({ id }) => id === also) ? (also ?? '') : ''}
          options={[{ value: '', text: 'no other play' }, ...others.map(({ id, name }) => ({ value: id, text: name }))]}
          onChange={(id) => change({ also: id === '' ? undefined : id })}
        />
      )}
    </div>
  );
}

/** A whole number within bounds, with its name above it. */
function Counted({
  label,
  words,
  value,
  of,
  onNumber,
}: {
  readonly label: string;
  readonly words: string;
  readonly value: number;
  readonly of: keyof typeof bounds;
  readonly onNumber: (value: number) => void;
}): ReactNode {
  const [least, most] = bounds[of];
  return (
    <NumberField
      label={label}
      unit={words}
      value={value}
      step={1}
      onNumber={(number) => onNumber(Math.min(most, Math.max(least, Math.round(number))))}
    />
  );
}
