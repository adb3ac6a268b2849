import { X } from 'lucide-react';
import { type ReactNode, useState } from 'react';
import {
  addChance,
  type Chance,
  type ChanceResult,
  chanceResults,
  chanceResultWords,
  chanceTitle,
  type Opponent,
  removeChances,
} from '../../playbook/index.ts';
import { counted } from '../../render/index.ts';
import { isWeighedByMarks } from '../../teach/index.ts';
import { Button } from '../controls/button.tsx';
import { PickList } from '../controls/pick-list.tsx';
import { TextField } from '../controls/text-field.tsx';
import panel from '../opponents/panel.module.css';
import { useApply } from '../opponents/use-apply.ts';
import { usePlaybook } from '../shell/desk.tsx';
import { useFilm } from './film-state.ts';
import styles from './man-up-list.module.css';
import { momentsOf } from './moment-edits.ts';
import { scoutedChances } from './use-marking.ts';

/** The man-ups against this opponent: one is marked, and new ones are begun. `readings`: which scheme each looks like, by its id. */
export function ManUpList({
  opponent,
  readings,
}: {
  readonly opponent: Opponent;
  readonly readings: ReadonlyMap<string, string>;
}): ReactNode {
  const playbook = usePlaybook();
  const change = useFilm((state) => state.change);
  const chances = scoutedChances(playbook, opponent);
  const take = (id: string | undefined): void => change({ chance: id, time: 0, selected: undefined, lit: undefined });
  return (
    <section className={panel.panel} aria-label="Man-ups">
      <h3 className={panel.title}>Man-ups against them</h3>
      {chances.length === 0 && (
        <p className={panel.quiet}>
          None yet. Each man-up that you mark, on film or by hand, is kept here with its moments. All of them together
          say what they play.
        </p>
      )}
      <ul className={styles.list}>
        {chances.map((chance, at) => (
          <Entry key={chance.id} chance={chance} number={at + 1} reading={readings.get(chance.id)} onTake={take} />
        ))}
      </ul>
      <NewManUp opponent={opponent} onMade={take} />
    </section>
  );
}

function Entry({
  chance,
  number,
  reading,
  onTake,
}: {
  readonly chance: Chance;
  readonly number: number;
  readonly reading: string | undefined;
  readonly onTake: (id: string | undefined) => void;
}): ReactNode {
  const apply = useApply();
  const { chance: chosen, begins, change } = useFilm();
  const isChosen = chance.id === chosen;
  return (
    <li data-chosen={isChosen}>
      <button
        type="button"
        className={styles.entry}
        aria-pressed={isChosen}
        onClick={() => onTake(isChosen ? undefined : chance.id)}
      >
        <span className={styles.name}>{`${number}. ${titleOf(chance)}`}</span>
        <span className={styles.about}>{momentsText(chance)}</span>
        <span className={styles.reading} data-reading={chance.id}>
          {isWeighedByMarks(chance) ? (reading ?? 'Being weighed') : 'Says nothing of their scheme yet'}
        </span>
      </button>
      <Button
        tone="plain"
        aria-label={`Delete the man-up ${titleOf(chance)}`}
        icon={<X aria-hidden="true" />}
        onClick={() => {
          apply('delete a man-up', (book) => removeChances(book, [chance.id]));
          const { [chance.id]: _, ...others } = begins;
          change({ begins: others });
          if (isChosen) onTake(undefined);
        }}
      />
    </li>
  );
}

function NewManUp({
  opponent,
  onMade,
}: {
  readonly opponent: Opponent;
  readonly onMade: (id: string) => void;
}): ReactNode {
  const apply = useApply();
  const [side, setSide] = useState<'ours' | 'others'>('others');
  const [result, setResult] = useState<ChanceResult | ''>('');
  const [date, setDate] = useState('');
  const { film, filmTime, begins, change } = useFilm();
  const add = (): void => {
    if (result === '') return;
    const made = apply('begin a man-up', (book) =>
      addChance(book, { side, opponent: opponent.id, result, ...(date !== '' && { date }) }),
    );
    if (made?.id === undefined) return;
    if (film !== undefined) change({ begins: { ...begins, [made.id]: filmTime } });
    onMade(made.id);
    setResult('');
  };
  return (
    <form
      className={styles.form}
      onSubmit={(event) => {
        event.preventDefault();
        add();
      }}
    >
      <PickList
        label="Whose man-up"
        value={side}
        options={[
          { value: 'others', text: 'another team’s' },
          { value: 'ours', text: 'ours' },
        ]}
        onChange={(value) => setSide(value === 'ours' ? 'ours' : 'others')}
      />
      <PickList
        label="How it ended"
        value={result}
        options={[
          { value: '', text: 'choose' },
          ...chanceResults.map((value) => ({ value, text: chanceResultWords[value] })),
        ]}
        onChange={(value) => setResult(chanceResults.find((one) => one === value) ?? '')}
      />
      <TextField label="Day, if known" type="date" value={date} onText={setDate} />
      <Button type="submit" tone="main" disabled={result === ''}>
        {film === undefined ? 'Begin a man-up' : 'A man-up begins at this frame'}
      </Button>
      {result === '' && <p className={styles.why}>First choose how it ended: that is kept with each man-up.</p>}
    </form>
  );
}

/** A man-up in a few words: its opponent stands above the list. */
export function titleOf({ opponent: _, ...chance }: Chance): string {
  const title = chanceTitle({ ...chance, side: chance.side });
  return `${title.charAt(0).toUpperCase()}${title.slice(1)}`;
}

function momentsText(chance: Chance): string {
  const marks = momentsOf(chance);
  const moments = marks.filter(({ by }) => by !== 'tick').length;
  const ticks = marks.reduce((sum, { cues }) => sum + (cues?.length ?? 0), 0);
  const parts = [...(moments > 0 ? [counted(moments, 'moment')] : []), ...(ticks > 0 ? [counted(ticks, 'tick')] : [])];
  return parts.length === 0 ? 'nothing marked yet' : parts.join(', ');
}
