import type { ReactNode } from 'react';
import { type RunnerStudy, runnerCardOf, timeOfLook } from '../../engine/index.ts';
import {
  afterTheCall,
  runBasisWords,
  runCardName,
  runnerCardWords,
  runWayNames,
  whenToGoWords,
} from '../../render/index.ts';
import { Segments } from '../controls/segments.tsx';
import panel from '../opponents/panel.module.css';
import { gainScale } from './gain-scale.ts';
import { GainsTable } from './gains-table.tsx';
import { GoalsTable } from './goals-table.tsx';
import { More } from './more.tsx';
import styles from './reads-screen.module.css';
import { cardWorthWords, effortWords } from './reads-words.ts';
import own from './run-card.module.css';
import { RunCurve } from './run-curve.tsx';
import { type FoundRun, useRuns } from './runs-state.ts';
import { shownRunReads } from './shown-run-reads.ts';

/** Goals a chance that the bars reach to at least on both sides. */
const leastReach = 0.1;

/** When one man should make one run: the card in words, what it brings, and what every moment is worth. */
export function RunCard({
  found,
  names,
}: {
  readonly found: FoundRun;
  /** Of the schemes, by their ids. */
  readonly names: Readonly<Record<string, string>>;
}): ReactNode {
  const { study, play, trials, isRough } = found;
  const { cardReads, change } = useRuns();
  const reads = shownRunReads(study.cards, cardReads);
  const card = study.cards[reads]!;
  const words = runnerCardWords(runnerCardOf(play, study.order, card.list));
  return (
    <>
      <div className={styles.length}>
        <span aria-hidden="true">Reads that send him, at most</span>
        <Segments
          label="Reads that send him, at most"
          value={String(reads)}
          options={study.cards.map((_, at) => ({ value: String(at), text: String(at) }))}
          onChange={(value) => change({ cardReads: Number(value) })}
        />
        <strong>{cardWorthWords(card.gain)}</strong>
      </div>
      <div className={`${styles.card} ${own.words}`}>
        <p>{words.goes}</p>
        {words.otherwise !== null && <p>{words.otherwise}</p>}
      </div>
      <p className={own.said}>{whenToGoWords(study, card)}</p>
      <p className={panel.quiet}>
        {runBasisWords(study)} {effortWords(trials, isRough)} A step of the play knows only “now” and “when open”: this
        card is told to the man, not written into the play.
      </p>
      <h3>What each moment to go is worth, against the play</h3>
      <RunCurve times={study.byTime} />
      <MoreOfRun study={study} reads={reads} names={names} />
    </>
  );
}

function MoreOfRun({
  study,
  reads,
  names,
}: {
  readonly study: RunnerStudy;
  readonly reads: number;
  readonly names: Readonly<Record<string, string>>;
}): ReactNode {
  const against = study.byScheme.map(({ scheme, gain_byCard }) => ({
    name: names[scheme] ?? scheme,
    gain: gain_byCard[reads]!,
  }));
  return (
    <>
      <More title="Every moment in figures">
        <GoalsTable
          titles={['He goes', 'Goals from the call']}
          rows={study.byTime.map(({ after, ...valued }) => ({ name: afterTheCall(after), ...valued }))}
        />
      </More>
      <More title="Every card, and against each scheme">
        <GoalsTable titles={['When he goes', 'Goals from the call']} rows={waysOf(study, reads)} />
        <GainsTable
          titles={['Against', 'Gain by the card']}
          rows={against}
          scale={gainScale(
            against.map(({ gain }) => gain),
            leastReach,
          )}
        />
      </More>
    </>
  );
}

function waysOf({ goOn, byTime, cards, best }: RunnerStudy, reads: number) {
  return [
    { name: runWayNames.goOn, goals: goOn },
    { ...byTime[0]!, name: runWayNames.atOnce },
    ...cards.map((card, at) => ({
      name: runCardName(at, card, timeOfLook(card.list.latest)),
      goals: card.goals,
      gain: card.gain,
      isShown: at === reads,
    })),
    { name: runWayNames.best, ...best },
  ];
}
