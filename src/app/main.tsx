import '@fontsource-variable/inter/wght.css';
import './look/tokens.css';
import './look/page.css';
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { demoPlaybook } from '../playbook/index.ts';
import { createBrowserPool } from '../worker/browser.ts';
import { createAnswers } from './answers/create-answers.ts';
import { markAnswers } from './answers/mark-answers.ts';
import { indexedDbPersistence } from './document/indexed-db-persistence.ts';
import { createPlaybookStore } from './document/playbook-store.ts';
import { applyLook } from './look/look.ts';
import { keepOffline } from './offline/offline.ts';
import { createPlayer } from './playback/player.ts';
import { type Desk, DeskProvider } from './shell/desk.tsx';
import { Workbench } from './shell/workbench.tsx';

const place = document.getElementById('workbench');
if (place === null) throw new TypeError('missing #workbench in index.html');
applyLook();
keepOffline();
/** One thread a core: the page itself only draws. */
const threads = Math.max(1, Math.min(8, navigator.hardwareConcurrency));
const desk: Desk = {
  answers: createAnswers(createBrowserPool({ threads })),
  store: createPlaybookStore({ name: 'playbook', persistence: indexedDbPersistence(), initial: demoPlaybook }),
  player: createPlayer((callback) => requestAnimationFrame(callback)),
};
markAnswers(desk.answers);
// Alive from the first moment, but for who asked his device for less motion.
if (!window.matchMedia('(prefers-reduced-motion: reduce)').matches) {
  desk.player.change((head) => ({ ...head, running: true }));
}
createRoot(place).render(
  <StrictMode>
    <DeskProvider desk={desk}>
      <Workbench />
    </DeskProvider>
  </StrictMode>,
);
