import { type ReactNode, useState } from 'react';
import { sets } from '../../engine/index.ts';
import { newScheme, setSchemeWeight, spotsOfSet, takeDownScheme } from '../../playbook/index.ts';
import { Button } from '../controls/button.tsx';
import { Dialog } from '../controls/dialog.tsx';
import { PickList } from '../controls/pick-list.tsx';
import { TextField } from '../controls/text-field.tsx';
import { usePlaybook } from '../shell/desk.tsx';
import { goTo } from '../shell/place.ts';
import styles from './new-scheme.module.css';
import { allSchemes, schemeInfo } from './scheme-info.ts';
import { andThen, useApply } from './use-apply.ts';

export interface NewSchemeProps {
  readonly open: boolean;
  readonly onClose: () => void;
  /** The built-in scheme that is offered first. */
  readonly from?: string;
  /** The opponent who plays it, if it is written for one. */
  readonly opponent?: { readonly id: string; readonly name: string };
}

const nothing = '';
const shutoff = 'shutoff';

/** A name, and what the grid begins with: a built-in scheme against a set, or nothing but men at home. */
export function NewScheme({ open, onClose, from, opponent }: NewSchemeProps): ReactNode {
  const playbook = usePlaybook();
  const apply = useApply();
  const [start, setStart] = useState(from ?? 'box-zone');
  const info = schemeInfo(playbook, start);
  const usualName = `${opponent === undefined ? '' : `${opponent.name}: `}${info?.name ?? 'own scheme'}${opponent === undefined && info !== undefined ? ', ours' : ''}`;
  const [typed, setTyped] = useState<string>();
  const name = typed ?? usualName.slice(0, 80);
  const setChoices = [
    ...(playbook.sets ?? []).map((own) => ({ value: own.id, text: own.name })),
    ...Object.values(sets).map((set) => ({ value: set.id, text: set.name })),
  ];
  const firstSet = playbook.plays.find((play) => setChoices.some(({ value }) => value === play.set))?.set;
  const [chosenSet, setChosenSet] = useState<string>();
  const set = chosenSet ?? firstSet ?? '3-3';
  const spots = spotsOfSet(playbook, set) ?? [];
  const [star, setStar] = useState('');
  const shutOff = spots.some(({ id }) => id === star) ? star : (spots[0]?.id ?? '');
  const make = (): void => {
    const made = apply(`write the scheme ${name.trim()}`, (book) => {
      const scheme =
        start === nothing
          ? newScheme(book, name, set)
          : takeDownScheme(book, start, name, { set, star: start === shutoff ? shutOff : undefined });
      return opponent === undefined
        ? scheme
        : andThen(scheme, (next) =>
            setSchemeWeight(next, opponent.id, scheme.kind === 'edited' ? (scheme.id ?? '') : '', 1),
          );
    });
    if (made?.id === undefined) return;
    setTyped(undefined);
    onClose();
    goTo({ kind: 'opponents', opponent: made.id });
  };
  return (
    <Dialog
      open={open}
      onClose={onClose}
      title="Write a scheme"
      about="A grid: for each place of the ball, what each defender does. It begins as one that is known, and you change what they do otherwise."
    >
      <form
        className={styles.form}
        onSubmit={(event) => {
          event.preventDefault();
          make();
        }}
      >
        <PickList
          label="It begins as"
          value={start}
          options={[
            ...allSchemes({}).map((scheme) => ({ value: scheme.id, text: scheme.name })),
            { value: nothing, text: 'Nothing: five men at home' },
          ]}
          onChange={setStart}
        />
        <p className={styles.about}>
          {info === undefined ? 'The nearest man goes to the ball, the others stay at home.' : info.summary}
        </p>
        <PickList label="Written down against the set" value={set} options={setChoices} onChange={setChosenSet} />
        {start === shutoff && (
          <PickList
            label="Whom they shut off"
            value={shutOff}
            options={spots.map(({ id }) => ({ value: id, text: id }))}
            onChange={setStar}
          />
        )}
        <TextField label="What you call it" value={name} maxLength={80} onText={setTyped} />
        <Button type="submit" tone="main" disabled={name.trim() === ''}>
          Write it
        </Button>
      </form>
    </Dialog>
  );
}
