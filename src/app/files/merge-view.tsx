import { type ReactNode, useEffect, useMemo, useRef, useState } from 'react';
import { conflictId, type MergeChoice, type MergeConflict, type Playbook } from '../../playbook/index.ts';
import { Button } from '../controls/button.tsx';
import { Segments } from '../controls/segments.tsx';
import { useDesk } from '../shell/desk.tsx';
import {
  choiceFor,
  choose,
  chooseAll,
  isSettled,
  type MergePlan,
  mergedPlaybook,
  planMerge,
  planWords,
} from './merge-choices.ts';
import styles from './merge-view.module.css';
import { ChangeList, Differences, type Sides } from './part-details.tsx';
import { partTitle } from './playbook-changes.ts';
import screen from './playbook-screen.module.css';
import type { Said } from './said.ts';

const choiceNames: Readonly<Record<MergeChoice, string>> = { mine: 'Mine', theirs: 'Theirs', both: 'Both' };

/** Two copies of a playbook side by side: what comes in, and a choice where both changed the same. */
export function MergeView({
  name,
  copy,
  base,
  onDone,
}: {
  readonly name: string;
  readonly copy: Playbook;
  readonly base: Playbook | undefined;
  readonly onDone: (said?: Said) => void;
}): ReactNode {
  const { store } = useDesk();
  const [plan, setPlan] = useState<MergePlan>(() => planMerge(store.playbook, copy, base));
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => heading.current?.focus(), []);
  const take = async (): Promise<void> => {
    const step = `Merge ${name}`;
    await store.replace(step, mergedPlaybook(plan), 'merged', plan.theirs);
    onDone({ text: `“${name}” was merged. What was here before is kept among the versions.`, step });
  };
  const sides = useMemo(
    (): Sides => ({
      before: { name: 'Mine', playbook: plan.mine },
      after: { name: 'Theirs', playbook: plan.theirs },
    }),
    [plan.mine, plan.theirs],
  );
  return (
    <section className={screen.report} aria-labelledby="merge-title">
      <h2 id="merge-title" ref={heading} tabIndex={-1}>
        Merge “{name}” with mine
      </h2>
      <p>{baseWords(base)}</p>
      {plan.conflicts.length > 0 && <Conflicts plan={plan} sides={sides} onPlan={setPlan} />}
      <Incoming plan={plan} sides={sides} />
      <div className={styles.foot}>
        <p role="status">{planWords(plan)}</p>
        <div className={screen.buttons}>
          {!isSettled(plan) && (
            <Button tone="main" onClick={take}>
              Take these
            </Button>
          )}
          <Button onClick={() => onDone()}>{isSettled(plan) ? 'Back' : 'Leave it, change nothing'}</Button>
        </div>
      </div>
    </section>
  );
}

function baseWords(base: Playbook | undefined): string {
  return base === undefined
    ? 'No copy is left that both come from. So what only they have comes in, what only you have stays, and you are asked about everything that differs.'
    : 'Both come from a file that was handed on before. What only one of you changed since then needs no question.';
}

function Conflicts({
  plan,
  sides,
  onPlan,
}: {
  readonly plan: MergePlan;
  readonly sides: Sides;
  readonly onPlan: (plan: MergePlan) => void;
}): ReactNode {
  return (
    <section aria-labelledby="conflicts-title">
      <h3 id="conflicts-title" className={screen.subtitle}>
        You decide
      </h3>
      {plan.conflicts.length > 1 && (
        <div className={screen.buttons}>
          <Button onClick={() => onPlan(chooseAll(plan, 'mine'))}>Mine everywhere</Button>
          <Button onClick={() => onPlan(chooseAll(plan, 'theirs'))}>Theirs everywhere</Button>
          {plan.conflicts.some(({ choices }) => choices.includes('both')) && (
            <Button onClick={() => onPlan(chooseAll(plan, 'both'))}>Both, where that can be</Button>
          )}
        </div>
      )}
      <ul className={styles.conflicts}>
        {plan.conflicts.map((conflict) => (
          <li key={conflictId(conflict)} className={styles.conflict}>
            <ConflictCard
              conflict={conflict}
              choice={choiceFor(plan, conflict)}
              sides={sides}
              onChoice={(choice) => onPlan(choose(plan, conflict, choice))}
            />
          </li>
        ))}
      </ul>
    </section>
  );
}

function ConflictCard({
  conflict,
  choice,
  sides,
  onChoice,
}: {
  readonly conflict: MergeConflict;
  readonly choice: MergeChoice;
  readonly sides: Sides;
  readonly onChoice: (choice: MergeChoice) => void;
}): ReactNode {
  const { kind, mine, theirs } = conflict;
  const title = partTitle(conflict);
  const part = useMemo(() => ({ kind, before: mine, after: theirs }), [kind, mine, theirs]);
  return (
    <>
      <div className={styles.head}>
        <h4 className={styles.name}>{title}</h4>
        <Segments
          label={`${title}: which one`}
          value={choice}
          options={conflict.choices.map((value) => ({ value, text: choiceNames[value] }))}
          onChange={onChoice}
        />
      </div>
      {mine === undefined && <p>You took it out; they changed it.</p>}
      {theirs === undefined && <p>They took it out; you changed it.</p>}
      {choice === 'both' && <p className={screen.quiet}>Theirs stands behind yours as a copy.</p>}
      {mine !== undefined && theirs !== undefined && <Differences change={part} sides={sides} />}
    </>
  );
}

function Incoming({ plan, sides }: { readonly plan: MergePlan; readonly sides: Sides }): ReactNode {
  const { comesIn } = plan;
  if (comesIn.parts.length === 0 && !comesIn.isReordered) return null;
  return (
    <section aria-labelledby="incoming-title">
      <h3 id="incoming-title" className={screen.subtitle}>
        Comes in by itself
      </h3>
      <ChangeList changes={comesIn} sides={sides} />
    </section>
  );
}
