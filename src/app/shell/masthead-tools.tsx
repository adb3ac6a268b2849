import { Contrast, Redo2, Undo2 } from 'lucide-react';
import { type ReactNode, useEffect } from 'react';
import { Button } from '../controls/button.tsx';
import { Menu } from '../controls/menu.tsx';
import { type LookName, useLook } from '../look/look.ts';
import { useDesk, useSaveStatus, useStepLabels } from './desk.tsx';
import styles from './masthead-tools.module.css';
import type { Place } from './place.ts';

const lookWords: Readonly<Record<LookName, string>> = {
  device: 'As the device',
  paper: 'Paper',
  dark: 'Dark',
  sun: 'Bright sun',
};

/**
 * Undo and redo, what is saved, and the look: the same in every place, but on the bench. There one takes back taps; a man-up that a game has written down would be
 * gone from the season and still stand in the game.
 */
export function MastheadTools({ place }: { readonly place: Place }): ReactNode {
  const status = useSaveStatus();
  const chosen = useLook((state) => state.chosen);
  const choose = useLook((state) => state.choose);
  return (
    <>
      <span className={styles.status} role="status">
        {status.kind === 'saved' ? 'Saved here' : status.kind === 'saving' ? 'Saving' : ''}
      </span>
      {place.kind !== 'bench' && <Steps />}
      <Menu
        trigger={<Button tone="plain" aria-label="Look of the page" icon={<Contrast aria-hidden="true" />} />}
        items={(Object.keys(lookWords) as LookName[]).map((name) => ({
          text: name === chosen ? `${lookWords[name]} (now)` : lookWords[name],
          onChoose: () => choose(name),
        }))}
      />
    </>
  );
}

/** One step back, and one on again, by button and by the usual keys. */
function Steps(): ReactNode {
  const { store } = useDesk();
  const steps = useStepLabels();
  useEffect(() => {
    const onKey = (event: KeyboardEvent): void => {
      const direction = undoKey(event);
      if (direction === undefined) return;
      event.preventDefault();
      if (direction === 'undo') store.undo();
      else store.redo();
    };
    window.addEventListener('keydown', onKey);
    return () => window.removeEventListener('keydown', onKey);
  }, [store]);
  return (
    <>
      <Button
        tone="plain"
        aria-label={steps.undo === undefined ? 'Undo' : `Undo: ${steps.undo}`}
        title={steps.undo === undefined ? 'Nothing to undo' : `Undo: ${steps.undo}`}
        disabled={steps.undo === undefined}
        icon={<Undo2 aria-hidden="true" />}
        onClick={() => store.undo()}
      />
      <Button
        tone="plain"
        aria-label={steps.redo === undefined ? 'Redo' : `Redo: ${steps.redo}`}
        title={steps.redo === undefined ? 'Nothing to redo' : `Redo: ${steps.redo}`}
        disabled={steps.redo === undefined}
        icon={<Redo2 aria-hidden="true" />}
        onClick={() => store.redo()}
      />
    </>
  );
}

/** The usual keys; a field that is being typed in undoes its own letters first. */
function undoKey(event: KeyboardEvent): 'undo' | 'redo' | undefined {
  if (!(event.ctrlKey || event.metaKey) || event.altKey) return undefined;
  const target = event.target;
  if (target instanceof HTMLInputElement || target instanceof HTMLTextAreaElement) return undefined;
  const key = event.key.toLowerCase();
  if (key === 'z') return event.shiftKey ? 'redo' : 'undo';
  return key === 'y' ? 'redo' : undefined;
}
