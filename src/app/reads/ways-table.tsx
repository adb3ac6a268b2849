import type { ReactNode } from 'react';
import { cardName, wayNames, wholeWords } from '../../render/index.ts';
import type { ReadsStudy } from '../../worker/index.ts';
import panel from '../opponents/panel.module.css';
import { goalsText } from '../schemes/goal-words.ts';
import { GoalsTable } from './goals-table.tsx';

/** What every way to decide is worth, and what it gains over leaving it to the play. */
export function WaysTable({ study, reads }: { readonly study: ReadsStudy; readonly reads: number }): ReactNode {
  const { goOn, taught, byEye, cards, cardPlayed, best, whole } = study;
  return (
    <section className={panel.panel} aria-label="What each way to decide is worth">
      <h2 className={panel.title}>What each way to decide is worth</h2>
      <GoalsTable
        titles={['How he decides', 'Goals from there']}
        rows={[
          { name: wayNames.goOn, goals: goOn },
          ...(taught === null ? [] : [{ name: wayNames.taught, ...taught }]),
          { name: wayNames.byEye, ...byEye },
          ...cards.map(({ list, goals, gain }, at) => ({
            name: cardName(at, list.rules.length),
            goals,
            gain,
            isShown: at === reads,
          })),
          { name: wayNames.cardPlayed, ...cardPlayed },
          { name: wayNames.best, ...best },
        ]}
      />
      <p>{wholeWords(whole.now, whole.gain_byCard[reads]!, goalsText)}</p>
    </section>
  );
}
