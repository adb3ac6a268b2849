import { type ReactNode, useMemo } from 'react';
import { sets } from '../../engine/index.ts';
import { ruleCodeOf, type SchemeEntry } from '../../playbook/index.ts';
import { drawnField, lookName } from '../../render/index.ts';
import type { SchemeAnswer } from '../answers/answers-snapshot.ts';
import { PickList } from '../controls/pick-list.tsx';
import { Segments } from '../controls/segments.tsx';
import { useLook } from '../look/look.ts';
import { differenceText, goalsText, signOf, sureness } from '../schemes/goal-words.ts';
import { usePlaybook } from '../shell/desk.tsx';
import { HomesField } from './homes-field.tsx';
import { useOpponents } from './opponents-state.ts';
import panel from './panel.module.css';
import { PlayedField } from './played-field.tsx';
import { RowField } from './row-field.tsx';
import styles from './scheme-stage.module.css';
import type { SchemeReading } from './use-scheme-reading.ts';

export interface SchemeStageProps {
  readonly scheme: SchemeEntry;
  readonly reading: SchemeReading;
  readonly answer: SchemeAnswer | undefined;
  /** The row that is chosen. */
  readonly ball: string;
  readonly onRow: (ball: string) => void;
}

/** What the grid does: where it puts everybody, where everybody is at home, and a play that runs against it, with what that is worth. */
export function SchemeStage({ scheme, reading, answer, ball, onRow }: SchemeStageProps): ReactNode {
  const playbook = usePlaybook();
  const palette = useLook((state) => state.shown);
  const { mode, change } = useOpponents();
  const field = useMemo(() => drawnField(ruleCodeOf(playbook).markings), [playbook]);
  const { entry, play } = reading;
  const ground = useMemo(
    () =>
      play === undefined
        ? { name: `the set ${sets['3-3']!.name}`, spots: sets['3-3']!.spots }
        : { name: play.name, spots: play.spots },
    [play],
  );
  const plays = playbook.plays.filter((each) => each.archived !== true || each.id === entry?.id);
  return (
    <section className={panel.panel} aria-label="On the field">
      <div className={panel.tools}>
        <Segments
          label="What the field shows"
          value={mode}
          options={[
            { value: 'duties', text: 'Duties' },
            { value: 'homes', text: 'Homes' },
            { value: 'play', text: 'Play it' },
          ]}
          onChange={(next) => change({ mode: next })}
        />
        {plays.length > 0 && (
          <PickList
            label="With the play"
            quietLabel
            value={entry?.id ?? ''}
            options={plays.map(({ id, name }) => ({ value: id, text: `with ${name}` }))}
            onChange={(id) => change({ play: id })}
          />
        )}
      </div>
      <Worth answer={answer} reading={reading} />
      {mode === 'duties' && (
        <RowField
          alone={reading.alone}
          scheme={scheme}
          ball={ball}
          ground={ground}
          field={field}
          palette={palette}
          onRow={onRow}
        />
      )}
      {mode === 'homes' && <HomesField scheme={scheme} field={field} palette={palette} />}
      {mode === 'play' && <PlayedField answer={answer} field={field} palette={palette} hindrance={reading.hindrance} />}
    </section>
  );
}

/** What the chosen play is worth against the grid as it stands, and what the last change of it did to that. */
function Worth({
  answer,
  reading: { entry, isWhole, hindrance },
}: {
  readonly answer: SchemeAnswer | undefined;
  readonly reading: SchemeReading;
}): ReactNode {
  if (entry === undefined) return <p className={panel.quiet}>{hindrance}</p>;
  if (!isWhole)
    return (
      <p className={styles.waits}>
        {hindrance === '' ? 'It is played again as soon as what is marked in the grid is fixed.' : hindrance}
      </p>
    );
  if (answer?.reason != null) return <p className={styles.waits}>{answer.reason}</p>;
  const goals = answer?.goals ?? null;
  const [look] = answer?.looks ?? [];
  const difference = answer?.change?.difference;
  const isCoarse =
    answer === undefined || answer.state === 'coarse' || answer.state === 'waiting' || answer.stale.goals;
  return (
    <div className={styles.worth}>
      <p>
        <span className={styles.number} data-coarse={isCoarse}>
          {goals === null ? '…' : goalsText(goals.mean)}
        </span>{' '}
        <span className={styles.quiet}>
          goals a chance by {entry.name}
          {goals === null ? '' : isCoarse ? ', a first guess' : ` (${sureness(goals)})`}
        </span>
      </p>
      {difference !== undefined && (
        <p className={styles.change} data-sign={signOf(difference)}>
          {differenceText(difference)} by your last change
        </p>
      )}
      <p className={styles.quiet}>
        {look === undefined
          ? 'Nobody has come open yet.'
          : `First look: ${lookName(look)}, ${Math.round(100 * look.share)} % of the time.`}
      </p>
    </div>
  );
}
