import type { ReactNode } from 'react';
import { schemeList } from '../../engine/index.ts';
import type { Playbook } from '../../playbook/index.ts';
import { Button } from '../controls/button.tsx';
import { Dialog } from '../controls/dialog.tsx';
import styles from './scheme-picker.module.css';

/** A scheme that a play can be run against. */
export interface SchemeChoice {
  readonly id: string;
  readonly name: string;
  /** How many defenders it has. */
  readonly men: number;
  readonly own: boolean;
}

/** All that a playbook can be tested against: the built-in schemes, then its own. */
export function schemeChoices(playbook: Playbook): readonly SchemeChoice[] {
  const own = (playbook.schemes ?? []).map(({ id, name, men }) => ({
    id,
    name,
    men: Object.keys(men).length,
    own: true,
  }));
  const builtIn = schemeList
    .filter(({ id }) => !own.some((one) => one.id === id))
    .map(({ id, notes, defenders }) => ({ id, name: notes.name, men: defenders, own: false }));
  return [...builtIn, ...own];
}

/** What a play is run against when nobody chose: all built-in schemes with one man less. */
export function usualSchemes(choices: readonly SchemeChoice[]): readonly string[] {
  return choices.filter(({ men, own }) => men === 5 && !own).map(({ id }) => id);
}

const groups: readonly { readonly title: string; readonly has: (choice: SchemeChoice) => boolean }[] = [
  { title: 'A man down', has: ({ men, own }) => men === 5 && !own },
  { title: 'Your own', has: ({ own }) => own },
  { title: 'Two or three men down', has: ({ men, own }) => men < 5 && !own },
  { title: 'Even, under a flag', has: ({ men, own }) => men > 5 && !own },
];

export interface SchemePickerProps {
  readonly open: boolean;
  readonly onClose: () => void;
  readonly choices: readonly SchemeChoice[];
  readonly chosen: readonly string[];
  readonly onChange: (chosen: readonly string[] | null) => void;
}

/** Which schemes the play is run against, side by side. */
export function SchemePicker({ open, onClose, choices, chosen, onChange }: SchemePickerProps): ReactNode {
  const toggle = (id: string): void => {
    const next = chosen.includes(id) ? chosen.filter((one) => one !== id) : [...chosen, id];
    // In the order of the list, whatever the order of the ticks.
    onChange(choices.map((choice) => choice.id).filter((one) => next.includes(one)));
  };
  return (
    <Dialog open={open} onClose={onClose} title="Run against">
      <div className={styles.groups}>
        {groups.map(({ title, has }) => {
          const here = choices.filter(has);
          return here.length === 0 ? null : (
            <fieldset key={title} className={styles.group}>
              <legend>{title}</legend>
              {here.map(({ id, name }) => (
                <label key={id} className={styles.choice}>
                  <input type="checkbox" checked={chosen.includes(id)} onChange={() => toggle(id)} />
                  {name}
                </label>
              ))}
            </fieldset>
          );
        })}
        <Button onClick={() => onChange(null)}>All with a man down</Button>
      </div>
    </Dialog>
  );
}
