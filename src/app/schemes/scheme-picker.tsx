import type { ReactNode } from 'react';
import { Button } from '../controls/button.tsx';
import { Dialog } from '../controls/dialog.tsx';
import type { SchemeChoice } from './scheme-choices.ts';
import styles from './scheme-picker.module.css';

const groups: readonly { readonly title: string; readonly has: (choice: SchemeChoice) => boolean }[] = [
  { title: 'A man down', has: ({ men, own }) => men === 5 && !own },
  { title: 'Your own', has: ({ own }) => own },
  { title: 'Two or three men down', has: ({ men, own }) => men < 5 && !own },
  { title: 'Even, under a flag', has: ({ men, own }) => men > 5 && !own },
];

export interface SchemePickerProps {
  readonly onClose: () => void;
  readonly choices: readonly SchemeChoice[];
  readonly chosen: readonly string[];
  readonly onChange: (chosen: readonly string[] | null) => void;
}

/** Which schemes the play is run against, side by side. */
export default function SchemePicker({ onClose, choices, chosen, onChange }: SchemePickerProps): ReactNode {
  const toggle = (id: string): void => {
    const next = chosen.includes(id) ? chosen.filter((one) => one !== id) : [...chosen, id];
    // In the order of the list, whatever the order of the ticks.
    onChange(choices.map((choice) => choice.id).filter((one) => next.includes(one)));
  };
  return (
    <Dialog open onClose={onClose} title="Run against">
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
