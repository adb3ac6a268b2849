import type { ReactNode } from 'react';
import type { Playbook } from '../../../playbook/index.ts';
import { PickList } from '../../controls/pick-list.tsx';
import { opponentsWithMix } from '../../reads/reads-question.ts';
import type { SchemeChoice } from '../../schemes/scheme-choices.ts';
import shared from '../tools.module.css';
import { type ClipAgainst, clipFoes } from './clip-choices.ts';
import styles from './clip-panel.module.css';
import { useClipChoices } from './clip-state.ts';

export interface AgainstChoiceProps {
  readonly playbook: Playbook;
  readonly choices: readonly SchemeChoice[];
  /** Schemes that the play is run against on the Play place. */
  readonly onPlay: readonly string[];
}

/** Against what the play is shown: one scheme, those on Play, those of an opponent, or some that are ticked. */
export function AgainstChoice({ playbook, choices, onPlay }: AgainstChoiceProps): ReactNode {
  const { against, format, change } = useClipChoices();
  const { schemes } = clipFoes(playbook, against, format, choices, onPlay);
  return (
    <>
      <PickList
        label="Against"
        value={listValue(against, schemes)}
        options={[
          { value: 'onPlay', text: `the schemes on Play (${onPlay.length})` },
          ...opponentsWithMix(playbook).map(({ id, name }) => ({
            value: `opponent:${id}`,
            text: `what ${name} plays`,
          })),
          { value: 'some', text: 'some that I tick' },
          ...choices.map(({ id, name }) => ({ value: `scheme:${id}`, text: name })),
        ]}
        onChange={(value) => change({ against: againstOf(value, schemes) })}
      />
      {against.kind === 'some' && (
        <fieldset className={styles.some}>
          <legend>Shown one after another</legend>
          {choices.map(({ id, name }) => (
            <label key={id} className={shared.tick}>
              <input
                type="checkbox"
                checked={against.schemes.includes(id)}
                onChange={() => change({ against: { kind: 'some', schemes: toggled(against.schemes, id) } })}
              />
              {name}
            </label>
          ))}
        </fieldset>
      )}
    </>
  );
}

function toggled(schemes: readonly string[], id: string): readonly string[] {
  return schemes.includes(id) ? schemes.filter((one) => one !== id) : [...schemes, id];
}

// The values of the list: an id may be any word, so it has a mark before it.
function listValue(against: ClipAgainst, schemes: readonly string[]): string {
  switch (against.kind) {
    case 'usual':
      return schemes.length === 1 ? `scheme:${schemes[0]}` : 'onPlay';
    case 'onPlay':
    case 'some':
      return against.kind;
    case 'opponent':
      return `opponent:${against.opponent}`;
    case 'scheme':
      return `scheme:${schemes[0] ?? against.scheme}`;
    default:
      return exhaustive(against);
  }
}

function againstOf(value: string, schemes: readonly string[]): ClipAgainst {
  const [kind, ...rest] = value.split(':');
  const id = rest.join(':');
  if (kind === 'scheme') return { kind, scheme: id };
  if (kind === 'opponent') return { kind, opponent: id };
  return kind === 'some' ? { kind, schemes } : { kind: 'onPlay' };
}

function exhaustive(against: never): never {
  throw new TypeError(`unknown choice of schemes: ${JSON.stringify(against)}`);
}
