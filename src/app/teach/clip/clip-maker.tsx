import { Download, Film as FilmIcon } from 'lucide-react';
import { type ReactNode, useEffect, useMemo, useRef } from 'react';
import type { Playbook } from '../../../playbook/index.ts';
import type { Clip, FilmScript } from '../../../render/index.ts';
import { filmScript } from '../../../teach/index.ts';
import { Button } from '../../controls/button.tsx';
import panel from '../../opponents/panel.module.css';
import { useIsNarrow } from '../../play/use-is-narrow.ts';
import { downloadFile } from '../../shell/download-file.ts';
import shared from '../tools.module.css';
import { type ClipFormat, clipFilmOptions } from './clip-choices.ts';
import { clipFileName } from './clip-file-name.ts';
import styles from './clip-panel.module.css';
import { useClipChoices } from './clip-state.ts';
import { FilmPreview } from './film-preview.tsx';
import { type ClipFile, type ClipMaking, filmMaker, type MakeFile, useClipFile } from './use-clip-file.ts';

export interface ClipMakerProps {
  readonly playbook: Playbook;
  readonly clip: Clip;
  readonly format: ClipFormat;
}

/** A clip as it will be, the button that makes a file of it, and then the file. */
export function ClipMaker({ playbook, clip, format }: ClipMakerProps): ReactNode {
  const { form, speed } = useClipChoices();
  const isNarrow = useIsNarrow();
  const shape = format === 'page' ? (isNarrow ? 'card' : 'wide') : form;
  const script = useMemo(
    () => filmScript(playbook, clip, clipFilmOptions(format, shape, speed)),
    [playbook, clip, format, shape, speed],
  );
  const { making, make, stop } = useClipFile(script);
  const canMake = format !== 'video' || typeof VideoEncoder !== 'undefined';
  return (
    <>
      {canMake ? (
        <MakeTools
          making={making}
          clip={clip}
          format={format}
          onMake={() => make(makerOf(playbook, script, format))}
          onStop={stop}
        />
      ) : (
        <p className={panel.quiet}>{noEncoderWords}</p>
      )}
      <p role="status" className={panel.quiet}>
        {saidOf(making)}
      </p>
      <FilmPreview script={script} words={previewWords(clip)} />
    </>
  );
}

interface MakeToolsProps {
  readonly making: ClipMaking;
  readonly clip: Clip;
  readonly format: ClipFormat;
  readonly onMake: () => void;
  readonly onStop: () => void;
}

const makeWords: Readonly<Record<ClipFormat, string>> = {
  page: 'Make the page',
  video: 'Make the video',
  gif: 'Make the GIF',
};

function MakeTools(props: MakeToolsProps): ReactNode {
  const tools = useRef<HTMLDivElement>(null);
  const { kind } = props.making;
  const before = useRef(kind);
  useEffect(() => {
    // The button that was pressed makes room for the next: who works by keys goes on there, and who has gone elsewhere meanwhile stays there.
    if (before.current !== kind && document.activeElement === document.body)
      tools.current?.querySelector('button')?.focus();
    before.current = kind;
  }, [kind]);
  return (
    <div ref={tools} className={shared.tools}>
      <ToolsNow {...props} />
    </div>
  );
}

function ToolsNow({ making, clip, format, onMake, onStop }: MakeToolsProps): ReactNode {
  if (making.kind === 'making') {
    const percent = Math.floor(making.share * 100);
    return (
      <>
        <progress className={styles.progress} value={making.share} max={1} aria-label="How much of the film is made" />
        <span className={styles.share} aria-hidden="true">
          {percent} %
        </span>
        <Button onClick={onStop}>Cancel</Button>
      </>
    );
  }
  if (making.kind === 'made') {
    const { content, ending } = making.file;
    const name = clipFileName(clip, ending);
    return (
      <>
        <Button tone="main" icon={<Download aria-hidden="true" />} onClick={() => downloadFile(name, content)}>
          Save
        </Button>
        <span className={styles.file}>
          {name}, {sizeWords(content.size)}
        </span>
      </>
    );
  }
  return (
    <Button tone="main" icon={<FilmIcon aria-hidden="true" />} onClick={onMake}>
      {makeWords[format]}
    </Button>
  );
}

function makerOf(playbook: Playbook, script: FilmScript, format: ClipFormat): MakeFile {
  if (format !== 'page') return filmMaker(script, format);
  return async () => {
    const { clipPageFile } = await import('./clip-page-file.ts');
    return { kind: 'made', file: { content: await clipPageFile(playbook, script.clip), ending: 'html' } };
  };
}

const noEncoderWords =
  'This browser cannot make videos. Make a page or a GIF of it, or open the workbench in another browser.';

function saidOf(making: ClipMaking): string {
  switch (making.kind) {
    case 'idle':
      return '';
    case 'making':
      return 'It is being made; you can go on looking at it meanwhile.';
    case 'made':
      return isLargeGif(making.file)
        ? 'Made, and large for a message: choose one or two schemes, or make a video of it.'
        : 'Made. Save it to keep it.';
    case 'stopped':
      return 'Stopped. Nothing was made.';
    case 'noEncoder':
      return noEncoderWords;
    case 'failed':
      return `That did not work: ${making.reason}. Make it once more, or as another kind of file.`;
    default:
      return exhaustive(making);
  }
}

/** Bytes that a GIF in a message should not be more than. */
const largeGif = 5_000_000;

function isLargeGif({ content, ending }: ClipFile): boolean {
  return ending === 'gif' && content.size > largeGif;
}

/** "940 kB", "4.1 MB" */
function sizeWords(bytes: number): string {
  return bytes < 1e6 ? `${Math.ceil(bytes / 1000)} kB` : `${(bytes / 1e6).toFixed(1)} MB`;
}

function previewWords({ play, schemes }: Clip): string {
  return `${play} against ${schemes.map(({ name }) => name).join(', then ')}, as it is shown: what happens is written beside the field.`;
}

function exhaustive(making: never): never {
  throw new TypeError(`unknown state of the file: ${JSON.stringify(making)}`);
}
