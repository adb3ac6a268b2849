import { type ReactNode, useMemo } from 'react';
import { keepQuiz, type Playbook, type PlayEntry } from '../../playbook/index.ts';
import type { Quiz } from '../../render/index.ts';
import type { MadeQuiz } from '../../teach/index.ts';
import { Button } from '../controls/button.tsx';
import panel from '../opponents/panel.module.css';
import { useScreen } from '../play/screen-state.ts';
import { SearchLine } from '../reads/search-line.tsx';
import { type SearchKind, useSearch } from '../reads/use-search.ts';
import { schemeChoices, usualSchemes } from '../schemes/scheme-choices.ts';
import { useDesk } from '../shell/desk.tsx';
import { downloadFile } from '../shell/download-file.ts';
import { pageFileName } from './page-file-name.ts';
import { progressWords } from './progress-words.ts';
import { type AskedQuiz, findQuiz, type QuizNews } from './quiz/find-quiz.ts';
import { QuizChoices } from './quiz/quiz-choices.tsx';
import { QuizPreview } from './quiz/quiz-preview.tsx';
import { questionText, quizWishes } from './quiz/quiz-question.ts';
import { QuizResults } from './quiz/quiz-results.tsx';
import { type QuizSearch, useQuiz } from './quiz/quiz-state.ts';
import shared from './tools.module.css';

const kind: SearchKind<AskedQuiz, QuizNews> = { run: findQuiz, change: useQuiz.getState().change };

/** A play's reads as a quiz for phones: made, looked over, saved as a page, and what comes back of it. */
export default function QuizPanel({
  playbook,
  play,
}: {
  readonly playbook: Playbook;
  readonly play: PlayEntry;
}): ReactNode {
  const { spot, against, questions, seconds, search, found } = useQuiz();
  const side = useScreen((state) => state.side);
  const chosen = useScreen((state) => state.chosen);
  const schemes = useMemo(() => schemeChoices(playbook), [playbook]);
  const onPlay = useMemo(
    () => chosen?.filter((id) => schemes.some((one) => one.id === id)) ?? usualSchemes(schemes),
    [chosen, schemes],
  );
  const wishes = useMemo(
    () => quizWishes(playbook, { play: play.id, side, spot, against, questions, seconds }, onPlay),
    [playbook, play.id, side, spot, against, questions, seconds, onPlay],
  );
  const text = useMemo(() => questionText(playbook, wishes), [playbook, wishes]);
  const { find, stop } = useSearch(kind, text);
  const made = found?.question === text ? found.made : undefined;
  return (
    <>
      <section className={panel.panel} aria-label="A quiz of the reads">
        <p className={panel.quiet}>
          The play runs on a player’s phone and stops where he has to choose, under a clock. Right is what makes most
          goals when the moment is played on many times. What he misses comes back, and a code tells you how he did.
        </p>
        <QuizChoices playbook={playbook} play={play} schemes={schemes} onPlay={onPlay.length} />
        <div className={shared.tools}>
          {search.kind === 'finding' ? (
            <Button onClick={stop}>Stop</Button>
          ) : (
            <Button tone="main" onClick={() => find({ playbook, wishes, text })}>
              {made === undefined ? 'Make the quiz' : 'Make it anew'}
            </Button>
          )}
          {made?.kind === 'made' && search.kind !== 'finding' && <SavePage playbook={playbook} made={made} />}
        </div>
        <SearchLine
          label="How far the quiz is"
          words={progressWords(search)}
          progress={search.kind === 'finding' ? search : undefined}
          said={saidOf(search, made)}
        />
        {made?.kind === 'made' && <QuizPreview playbook={playbook} quiz={made.quiz} />}
      </section>
      <QuizResults playbook={playbook} play={play.id} />
    </>
  );
}

/** Saving the page keeps the quiz in the playbook: else nobody could read the codes that come back. */
function SavePage({
  playbook,
  made: { quiz, entry },
}: {
  readonly playbook: Playbook;
  readonly made: Extract<MadeQuiz, { kind: 'made' }>;
}): ReactNode {
  const { store } = useDesk();
  const change = useQuiz((state) => state.change);
  const save = async (): Promise<void> => {
    const { quizPageFile } = await import('./quiz/quiz-page-file.ts');
    downloadFile(pageFileName(fileWords(quiz), '', 'html'), await quizPageFile(playbook, quiz));
    const edit = keepQuiz(store.playbook, entry);
    if (edit.kind === 'refused') {
      change({ said: `The page is saved, but its codes cannot be read here: ${edit.reason}` });
      return;
    }
    store.edit('keeping a quiz', () => edit.playbook);
    change({
      shown: entry.id,
      said: `Quiz ${quiz.id} is saved as a page and kept in the playbook: send the page to your players.`,
    });
  };
  return <Button onClick={() => void save()}>Save the page</Button>;
}

function fileWords({ play, spots, spot, id }: Quiz): string {
  return `${play} ${spots[spot] ?? ''} quiz ${id}`;
}

function saidOf(search: QuizSearch, made: MadeQuiz | undefined): string {
  switch (search.kind) {
    case 'finding':
      return 'Moments are being looked for in which one choice is surely better than others; each is played on many times.';
    case 'stopped':
      return made === undefined ? 'Stopped. Nothing was made.' : '';
    case 'failed':
      return `That did not work: ${search.reason}. Make the quiz once more.`;
    case 'idle':
      if (made === undefined) return '';
      if (made.kind === 'nothing') return made.reason;
      return `${made.quiz.questions.length} questions, from ${made.looked} looks. In numbers: goals in 100 tries from the moment on, and how sure that is.`;
    default:
      return exhaustive(search);
  }
}

function exhaustive(search: never): never {
  throw new TypeError(`unknown search: ${JSON.stringify(search)}`);
}
