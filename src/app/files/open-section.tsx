import { FolderOpen } from 'lucide-react';
import { type ReactNode, useRef } from 'react';
import { Button, type ButtonProps } from '../controls/button.tsx';
import styles from './playbook-screen.module.css';

/** A playbook from a file. */
export function OpenSection({ onFile }: { readonly onFile: (file: File) => void }): ReactNode {
  return (
    <section className={styles.section} aria-labelledby="open-title">
      <h2 id="open-title">Open a file</h2>
      <div className={styles.way}>
        <ChooseFile text="Open a file…" onFile={onFile} />
        <p>
          Your own backup, or an assistant’s copy to merge. You can also drop it on this page. The file is looked at
          first: nothing here changes before you say so.
        </p>
      </div>
    </section>
  );
}

/** A button that lets a coach choose a file of this device. */
export function ChooseFile({
  text,
  tone = 'usual',
  onFile,
}: {
  readonly text: string;
  readonly tone?: NonNullable<ButtonProps['tone']>;
  readonly onFile: (file: File) => void;
}): ReactNode {
  const input = useRef<HTMLInputElement>(null);
  return (
    <>
      <Button tone={tone} icon={<FolderOpen aria-hidden="true" />} onClick={() => input.current?.click()}>
        {text}
      </Button>
      <input
        ref={input}
        type="file"
        accept=".json,application/json"
        hidden
        onChange={(event) => {
          const file = event.currentTarget.files?.[0];
          // The same file chosen again, as after it was mended, is news again.
          event.currentTarget.value = '';
          if (file !== undefined) onFile(file);
        }}
      />
    </>
  );
}
