import { Popover } from 'radix-ui';
import { type KeyboardEvent, type ReactNode, type RefObject, useId, useMemo, useRef, useState } from 'react';
import type { OwnDuty } from '../../engine/index.ts';
import { allSpots } from '../../playbook/index.ts';
import { Button } from '../controls/button.tsx';
import { NumberField } from '../controls/number-field.tsx';
import { usePlaybook } from '../shell/desk.tsx';
import styles from './duty-chooser.module.css';
import { creaseMark, type DutyChoice, dutyChoices, matchingDuties, readTyped } from './duty-typing.ts';
import { type DutyVerb, dutyVerbs, marksOf, spokenDuty, verbWords } from './duty-words.ts';

export interface DutyChooserProps {
  readonly man: string;
  readonly ball: string;
  readonly own: OwnDuty | undefined;
  readonly home: readonly [number, number];
  readonly spots: readonly string[];
  /** What was typed to open it. */
  readonly typed: string;
  /** The cell that it belongs to. */
  readonly anchor: HTMLElement | null;
  readonly onTake: (own: OwnDuty) => void;
  readonly onClose: () => void;
}

const mostMatches = 6;

/** The duty of one cell: typed by its first letters, or pointed at, a duty and whom it is about. */
export function DutyChooser({
  man,
  ball,
  own,
  home,
  spots,
  typed: first,
  anchor,
  onTake,
  onClose,
}: DutyChooserProps): ReactNode {
  const playbook = usePlaybook();
  const field = useRef<HTMLInputElement>(null);
  const [typed, setTyped] = useState(first);
  const [active, setActive] = useState(0);
  const [problem, setProblem] = useState<string>();
  const [verb, setVerb] = useState<DutyVerb>(own?.duty ?? 'ball');
  const [who, setWho] = useState<readonly string[]>(marksIn(own));
  const choices = useMemo(() => dutyChoices(spots, home), [spots, home]);
  const known = useMemo(() => allSpots(playbook), [playbook]);
  const matches = matchingDuties(choices, typed, mostMatches);
  const take = (next: OwnDuty): void => {
    onTake(next);
    onClose();
  };
  const takeTyped = (): void => {
    const match = matches[active];
    const read = readTyped(typed, man, known, home);
    // Who went down the list means what he went to.
    if (match !== undefined && (active > 0 || 'problem' in read)) take(match.own);
    else if ('own' in read) take(read.own);
    else setProblem(typed.trim() === '' ? 'Type a duty, such as “man TR”, or point at one below.' : read.problem);
  };
  const marks = spots.includes(creaseMark) ? spots : [...spots, creaseMark];
  return (
    <Popover.Root open modal={false} onOpenChange={(open) => (open ? undefined : onClose())}>
      <Popover.Anchor virtualRef={{ current: anchor ?? document.body }} />
      <Popover.Portal>
        <Popover.Content
          className={styles.card}
          sideOffset={4}
          collisionPadding={8}
          aria-label={`${man} with the ball at ${ball}`}
          onOpenAutoFocus={(event) => {
            // What was typed to open it stays, and is typed on.
            event.preventDefault();
            field.current?.focus();
            field.current?.setSelectionRange(first.length, first.length);
          }}
          onCloseAutoFocus={(event) => event.preventDefault()}
        >
          <p className={styles.head}>
            <b>{man}</b>, ball at <b>{ball}</b>
            {own !== undefined && <span className={styles.quiet}> {spokenDuty(own, home)}</span>}
          </p>
          <TypedDuty
            field={field}
            typed={typed}
            matches={matches}
            active={active}
            problem={problem}
            onTyped={(text) => {
              setTyped(text);
              setActive(0);
              setProblem(undefined);
            }}
            onActive={setActive}
            onTake={take}
            onEnter={takeTyped}
          />
          <fieldset className={styles.verbs} aria-label="Duty">
            {dutyVerbs.map((each) => (
              <Button
                key={each}
                pressed={each === verb}
                title={verbWords[each].means}
                onClick={() => {
                  setVerb(each);
                  setWho([]);
                  if (each === 'ball') take({ duty: 'ball' });
                }}
              >
                {verbWords[each].title}
              </Button>
            ))}
          </fieldset>
          <p className={styles.quiet}>{verbWords[verb].means}</p>
          {marksOf(verb) > 0 && (
            <fieldset className={styles.marks} aria-label={marksOf(verb) === 2 ? 'Which two' : 'Whom'}>
              {marks.map((mark) => (
                <Button
                  key={mark}
                  pressed={who.includes(mark)}
                  onClick={() => {
                    const next = pressed(verb, who, mark);
                    setWho(next);
                    const made = dutyOf(verb, next);
                    if (made !== undefined) take(made);
                  }}
                >
                  {mark}
                </Button>
              ))}
            </fieldset>
          )}
          {verb === 'place' && (
            <PlaceFields
              at={own?.duty === 'place' ? own.at : home}
              home={home}
              onPlace={(at) => onTake({ duty: 'place', at })}
              onHome={() => take({ duty: 'place', at: home })}
            />
          )}
        </Popover.Content>
      </Popover.Portal>
    </Popover.Root>
  );
}

interface TypedDutyProps {
  readonly field: RefObject<HTMLInputElement | null>;
  readonly typed: string;
  readonly matches: readonly DutyChoice[];
  readonly active: number;
  readonly problem: string | undefined;
  readonly onTyped: (text: string) => void;
  readonly onActive: (index: number) => void;
  readonly onTake: (own: OwnDuty) => void;
  readonly onEnter: () => void;
}

function TypedDuty({
  field,
  typed,
  matches,
  active,
  problem,
  onTyped,
  onActive,
  onTake,
  onEnter,
}: TypedDutyProps): ReactNode {
  const list = useId();
  const keyDown = (event: KeyboardEvent): void => {
    if (event.key === 'Enter') {
      event.preventDefault();
      onEnter();
    }
    const step = event.key === 'ArrowDown' ? 1 : event.key === 'ArrowUp' ? -1 : 0;
    if (step === 0 || matches.length === 0) return;
    event.preventDefault();
    onActive((active + step + matches.length) % matches.length);
  };
  return (
    <div className={styles.typing}>
      <label className={styles.label}>
        <span className="spoken">Duty, typed</span>
        <input
          ref={field}
          className={styles.input}
          role="combobox"
          aria-expanded={matches.length > 0}
          aria-controls={list}
          aria-autocomplete="list"
          aria-activedescendant={matches.length > 0 ? `${list}-${active}` : undefined}
          aria-invalid={problem !== undefined}
          autoComplete="off"
          spellCheck={false}
          placeholder="man TR, split TR TL, ball"
          value={typed}
          onChange={(event) => onTyped(event.target.value)}
          onKeyDown={keyDown}
        />
      </label>
      {problem !== undefined && (
        <p className={styles.problem} role="alert">
          {problem}
        </p>
      )}
      {/* biome-ignore lint/a11y/noNoninteractiveElementToInteractiveRole: the options of the field above, which keeps the focus */}
      <ul id={list} role="listbox" aria-label="Duties that begin so" className={styles.matches}>
        {matches.map(({ text, own }, index) => (
          // biome-ignore lint/a11y/useKeyWithClickEvents: the field above has the focus and the keys
          // biome-ignore lint/a11y/useFocusableInteractive: as above
          <li
            key={text}
            id={`${list}-${index}`}
            // biome-ignore lint/a11y/noNoninteractiveElementToInteractiveRole: as above
            role="option"
            aria-selected={index === active}
            className={styles.match}
            onClick={() => onTake(own)}
          >
            {text}
          </li>
        ))}
      </ul>
    </div>
  );
}

function PlaceFields({
  at,
  home,
  onPlace,
  onHome,
}: {
  readonly at: readonly [number, number];
  readonly home: readonly [number, number];
  readonly onPlace: (at: readonly [number, number]) => void;
  readonly onHome: () => void;
}): ReactNode {
  return (
    <div className={styles.place}>
      <NumberField
        label="x of the place, yards to the offense's right"
        unit="x"
        value={at[0]}
        step={0.5}
        onNumber={(x) => onPlace([x, at[1]])}
      />
      <NumberField
        label="y of the place, yards above the goal line"
        unit="y"
        value={at[1]}
        step={0.5}
        onNumber={(y) => onPlace([at[0], y])}
      />
      <Button onClick={onHome} disabled={at[0] === home[0] && at[1] === home[1]}>
        At home
      </Button>
    </div>
  );
}

function marksIn(own: OwnDuty | undefined): readonly string[] {
  if (own === undefined || !('who' in own)) return [];
  return typeof own.who === 'string' ? [own.who] : own.who;
}

/** The men that are meant after one more was pressed: pressed again he is not meant; of two, the older one goes. */
function pressed(verb: DutyVerb, who: readonly string[], mark: string): readonly string[] {
  if (who.includes(mark)) return who.filter((one) => one !== mark);
  return [...who, mark].slice(-marksOf(verb));
}

function dutyOf(verb: DutyVerb, who: readonly string[]): OwnDuty | undefined {
  const [one, other] = who;
  if (one === undefined) return undefined;
  switch (verb) {
    case 'man':
    case 'front':
    case 'lock':
    case 'lane':
    case 'pipe':
      return { duty: verb, who: one };
    case 'split':
      return other === undefined ? undefined : { duty: 'split', who: [one, other] };
    default:
      return undefined;
  }
}
