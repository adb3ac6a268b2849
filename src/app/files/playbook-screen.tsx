import { type ReactNode, useCallback, useEffect, useRef, useState } from 'react';
import type { Playbook } from '../../playbook/index.ts';
import { Button } from '../controls/button.tsx';
import { useDesk, usePlaybook, useStepLabels } from '../shell/desk.tsx';
import { DamagedSection } from './damaged-section.tsx';
import { useDroppedFile } from './dropped-file.ts';
import { FileReport } from './file-report.tsx';
import { MergeView } from './merge-view.tsx';
import { OpenSection } from './open-section.tsx';
import { type OpenedFile, openFile } from './opened-file.ts';
import { parseBeside } from './parse-beside.ts';
import styles from './playbook-screen.module.css';
import { SafetyWords } from './safety-words.tsx';
import type { Said } from './said.ts';
import { SaveSection } from './save-section.tsx';
import { StartSection } from './start-section.tsx';
import { TourSection } from './tour-section.tsx';
import { VersionSection } from './version-section.tsx';
import { countText } from './version-words.ts';

type View =
  | { readonly kind: 'home' }
  | { readonly kind: 'reading'; readonly name: string }
  | { readonly kind: 'file'; readonly file: OpenedFile }
  | { readonly kind: 'merge'; readonly name: string; readonly copy: Playbook; readonly base: Playbook | undefined };

/** The place where a playbook is saved as a file, opened, merged, brought back, or begun. */
export default function PlaybookScreen(): ReactNode {
  const { store } = useDesk();
  const [view, setView] = useState<View>({ kind: 'home' });
  const [said, setSaid] = useState<Said>();
  const stopReading = useRef<AbortController>(undefined);
  const takeFile = useCallback((file: File): void => {
    setSaid(undefined);
    stopReading.current?.abort();
    const stop = new AbortController();
    stopReading.current = stop;
    setView({ kind: 'reading', name: file.name });
    void openFile(file, (text) => parseBeside(text, stop.signal)).then((opened) => {
      if (!stop.signal.aborted) setView({ kind: 'file', file: opened });
    });
  }, []);
  // Who goes elsewhere meanwhile does not wait for it.
  useEffect(() => () => stopReading.current?.abort(), []);
  const { file: dropped, put } = useDroppedFile();
  useEffect(() => {
    if (dropped === undefined) return;
    put(undefined);
    takeFile(dropped);
  }, [dropped, put, takeFile]);
  const finish = (done?: Said): void => {
    setSaid(done);
    setView({ kind: 'home' });
  };
  const replaceBy = async (file: OpenedFile & { readonly playbook: Playbook }): Promise<void> => {
    const step = `Open ${file.name}`;
    await store.replace(step, file.playbook, 'imported');
    finish({ text: `“${file.name}” is now your playbook. What was here before is kept among the versions.`, step });
  };
  const merge = async (name: string, copy: Playbook): Promise<void> => {
    setView({ kind: 'merge', name, copy, base: await store.commonBase(copy) });
  };
  return (
    <div className={styles.screen}>
      <div className={styles.top}>
        <ScreenHead isHome={view.kind === 'home'} />
        <SaidLine said={said} />
      </div>
      {view.kind === 'home' && <Home onFile={takeFile} onDone={setSaid} />}
      {view.kind === 'reading' && (
        <div className={styles.said} role="status">
          <span>“{view.name}” is being read.</span>
          <Button
            onClick={() => {
              stopReading.current?.abort();
              finish();
            }}
          >
            Stop
          </Button>
        </div>
      )}
      {view.kind === 'file' && (
        <FileReport
          file={view.file}
          onReplace={replaceBy}
          onMerge={(file) => merge(file.name, file.playbook)}
          onFile={takeFile}
          onLeave={() => finish()}
        />
      )}
      {view.kind === 'merge' && <MergeView {...view} onDone={finish} />}
    </div>
  );
}

function ScreenHead({ isHome }: { readonly isHome: boolean }): ReactNode {
  const { team, plays, opponents } = usePlaybook();
  const heading = useRef<HTMLHeadingElement>(null);
  const wasHome = useRef(isHome);
  // Who comes back from a file by keyboard is not left where nothing is.
  useEffect(() => {
    if (isHome && !wasHome.current) heading.current?.focus();
    wasHome.current = isHome;
  }, [isHome]);
  const counts = [
    countText(plays.length, 'play'),
    countText(team.roster.length, 'player'),
    countText(opponents?.length ?? 0, 'opponent'),
  ];
  return (
    <>
      <h1 ref={heading} tabIndex={-1} className={styles.title}>
        {team.name || 'Playbook without a name'}
      </h1>
      <p className={styles.lead}>{counts.join(', ')}</p>
      {isHome && <SafetyWords />}
    </>
  );
}

function SaidLine({ said }: { readonly said: Said | undefined }): ReactNode {
  const { store } = useDesk();
  const { undo, redo } = useStepLabels();
  const canUndo = said?.step !== undefined && undo === said.step;
  const isUndone = said?.step !== undefined && redo === said.step;
  return (
    <div role="status">
      {said !== undefined && (
        <p className={styles.said}>
          <span>{isUndone ? `Taken back: ${said.step}.` : said.text}</span>
          {canUndo && <Button onClick={() => store.undo()}>Undo it</Button>}
        </p>
      )}
    </div>
  );
}

function Home({
  onFile,
  onDone,
}: {
  readonly onFile: (file: File) => void;
  readonly onDone: (said: Said) => void;
}): ReactNode {
  return (
    <div className={styles.sections}>
      <div className={styles.column}>
        <SaveSection onDone={onDone} />
        <OpenSection onFile={onFile} />
        <StartSection onDone={onDone} />
        <TourSection />
      </div>
      <div className={styles.column}>
        <VersionSection onDone={onDone} />
        <DamagedSection />
      </div>
    </div>
  );
}
