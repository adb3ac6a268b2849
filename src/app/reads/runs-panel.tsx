import { type ReactNode, useMemo } from 'react';
import { type Play, runnerCardOf } from '../../engine/index.ts';
import { hardlyCalledWords, runnerCardWords } from '../../render/index.ts';
import { Button } from '../controls/button.tsx';
import { PickList } from '../controls/pick-list.tsx';
import panel from '../opponents/panel.module.css';
import { FoldingPanel } from './folding-panel.tsx';
import type { ReadsQuestion } from './reads-question.ts';
import styles from './reads-screen.module.css';
import { cardWorthWords } from './reads-words.ts';
import { RunCard } from './run-card.tsx';
import { type RunChoice, runsOfPlay } from './runs-of-play.ts';
import { type FoundRun, type RunSearch, useRuns } from './runs-state.ts';
import { SearchLine } from './search-line.tsx';
import { shownRunReads } from './shown-run-reads.ts';
import { useFindRuns } from './use-find-runs.ts';

export interface RunsPanelProps {
  readonly play: Play;
  /** Against what; undefined while the play cannot be played. */
  readonly question: ReadsQuestion | undefined;
  /** Of the schemes, by their ids. */
  readonly names: Readonly<Record<string, string>>;
}

/** When a man without the ball should make a run that the play asks of him. */
export function RunsPanel({ play, question, names }: RunsPanelProps): ReactNode {
  const runs = useMemo(() => runsOfPlay(play), [play]);
  const { found, cardReads } = useRuns();
  return (
    <FoldingPanel label="Without the ball: when to go" result={resultOf(runs, play, found, cardReads)}>
      <p className={panel.quiet}>
        What comes of a run by when the man goes, from the moment that the play calls for it, and what he should look
        for while he waits. Everybody else plays as ever.
      </p>
      {runs.length === 0 ? (
        <p>{play.name} asks nobody to run without the ball.</p>
      ) : (
        <Runs runs={runs} play={play} question={question} names={names} />
      )}
    </FoldingPanel>
  );
}

function resultOf(
  runs: readonly RunChoice[],
  play: Play,
  found: FoundRun | undefined,
  chosen: number | undefined,
): string {
  if (runs.length === 0) return `${play.name} asks nobody to run without the ball.`;
  if (found === undefined || found.play.id !== play.id) return 'Not found yet.';
  const { cards, order } = found.study;
  const card = cards[shownRunReads(cards, chosen)]!;
  return `${runnerCardWords(runnerCardOf(found.play, order, card.list)).goes} ${cardWorthWords(card.gain)}.`;
}

function Runs({ runs, play, question, names }: RunsPanelProps & { readonly runs: readonly RunChoice[] }): ReactNode {
  const { run, search, found, change } = useRuns();
  const chosen = runs.find(({ name }) => name === run) ?? runs[0]!;
  const setups = question?.setups;
  const text = useMemo(
    // The play's reads count here: from the call on everybody plays by them.
    () => (setups === undefined ? undefined : JSON.stringify([chosen.order, setups])),
    [chosen.order, setups],
  );
  const { find, stop } = useFindRuns(text);
  const isReady = setups !== undefined && setups.length > 0 && text !== undefined;
  return (
    <>
      <div className={styles.choices}>
        <PickList
          label="Run"
          value={chosen.name}
          options={runs.map((each) => ({ value: each.name, text: each.text }))}
          onChange={(name) => change({ run: name })}
        />
        {search.kind === 'finding' ? (
          <Button onClick={stop}>Stop finding when he goes</Button>
        ) : (
          <Button
            disabled={!isReady}
            onClick={() => isReady && find({ play, order: chosen.order, setups, question: text })}
          >
            Find when he goes
          </Button>
        )}
      </div>
      <SearchLine
        label="How far the search for when he goes is"
        progress={search.kind === 'finding' ? search : undefined}
        said={saidOf(search)}
      />
      {found !== undefined && found.play.id === play.id && (
        <Found found={found} isOld={found.question !== text} names={names} />
      )}
    </>
  );
}

function Found({
  found,
  isOld,
  names,
}: {
  readonly found: FoundRun;
  readonly isOld: boolean;
  readonly names: RunsPanelProps['names'];
}): ReactNode {
  const { order } = found.study;
  const run = runsOfPlay(found.play).find(
    (each) => each.order.beat === order.beat && each.order.runner === order.runner,
  );
  return (
    <>
      <h3>{run?.text}</h3>
      {isOld && (
        <p className={styles.obstacle}>
          This was found for another run or other schemes, or for the play or the team before a change. Find when he
          goes again.
        </p>
      )}
      <RunCard found={found} names={names} />
    </>
  );
}

function saidOf(search: RunSearch): string {
  switch (search.kind) {
    case 'idle':
      return '';
    case 'finding':
      return 'The first answer is rough and there in seconds; one that knows more follows.';
    case 'stopped':
      return 'Stopped. What was found until then stays; find when he goes again to begin anew.';
    case 'never': {
      const words = hardlyCalledWords(search.runner);
      return `${words.charAt(0).toUpperCase()}${words.slice(1)}.`;
    }
    case 'failed':
      return `That did not work: ${search.reason}. Find when he goes again to try once more.`;
    default:
      return exhaustive(search);
  }
}

function exhaustive(search: never): never {
  throw new TypeError(`unknown search: ${JSON.stringify(search)}`);
}
