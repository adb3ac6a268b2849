import '@fontsource-variable/inter/wght.css';
import './look/tokens.css';
import './look/page.css';
import { StrictMode, startTransition } from 'react';
import { createRoot } from 'react-dom/client';
import { demoPlaybook, type Playbook } from '../playbook/index.ts';
import { type Answers, createAnswers } from './answers/create-answers.ts';
import { markAnswers } from './answers/mark-answers.ts';
import { indexedDbPersistence } from './document/indexed-db-persistence.ts';
import { createPlaybookStore } from './document/playbook-store.ts';
import { applyLook } from './look/look.ts';
import { keepOffline } from './offline/offline.ts';
import { useScreen } from './play/screen-state.ts';
import { shownPlay } from './play/shown-play.ts';
import { createPlayer } from './playback/player.ts';
import { type Desk, DeskProvider } from './shell/desk.tsx';
import { placeOf } from './shell/place.ts';
import { Workbench } from './shell/workbench.tsx';
import { threads } from './threads.ts';

/** Milliseconds that the page waits for what the browser has kept; a browser that takes longer shows the demo until it has come. */
const openingPatience = 500;
/** Milliseconds after which the workbench is kept for use without a network even if no answer has come. */
const answerPatience = 5_000;

const place = document.getElementById('workbench');
if (place === null) throw new TypeError('missing #workbench in index.html');
void openWorkbench(place);

/** Makes the desk and draws the workbench. */
async function openWorkbench(place: HTMLElement): Promise<void> {
  applyLook();
  const desk: Desk = {
    answers: createAnswers(threads),
    threads,
    store: createPlaybookStore({ name: 'playbook', persistence: indexedDbPersistence(), initial: demoPlaybook }),
    player: createPlayer((callback) => requestAnimationFrame(callback)),
  };
  markAnswers(desk.answers);
  // Alive from the first moment, but for who asked his device for less motion.
  if (!window.matchMedia('(prefers-reduced-motion: reduce)').matches) {
    desk.player.change((head) => ({ ...head, running: true }));
  }
  // The coach's own playbook at once, and not the demo for a moment before it; nothing is read and drawn twice.
  await Promise.race([desk.store.settled(), wait(openingPatience)]);
  chooseFirstPlay(desk.store.playbook);
  // In a transition React draws the page in small portions, between which the browser can answer.
  startTransition(() =>
    createRoot(place).render(
      <StrictMode>
        <DeskProvider desk={desk}>
          <Workbench />
        </DeskProvider>
      </StrictMode>,
    ),
  );
  // What is put away for later costs the same few cores: the first guess goes before it, where nothing is kept yet.
  if (navigator.serviceWorker?.controller == null) {
    await Promise.race([firstGuess(desk.answers), wait(answerPatience)]);
  }
  keepOffline();
}

/** The screen begins with the play of the address: nothing is drawn for no play first. */
function chooseFirstPlay(playbook: Playbook): void {
  const place = placeOf(window.location.hash);
  if (place.kind === 'play') useScreen.getState().change({ play: shownPlay(playbook, [place.play]) });
}

/** Resolves when every scheme has its first guess. */
function firstGuess(answers: Answers): Promise<void> {
  return new Promise((resolve) => {
    const leave = answers.subscribe(() => {
      if (answers.snapshot().overall === null) return;
      leave();
      resolve();
    });
  });
}

function wait(milliseconds: number): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve, milliseconds));
}
