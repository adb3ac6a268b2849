import { type DragEvent, type ReactNode, useEffect, useId, useState } from 'react';
import { filmKey, filmsOf } from './film-memory.ts';
import { useFilm } from './film-state.ts';
import styles from './open-film.module.css';

/** Opens a film of the coach's own: chosen or dropped. It is played where it lies. */
export function OpenFilm({ small, opponent }: { readonly small: boolean; readonly opponent: string }): ReactNode {
  const { film, change, send } = useFilm();
  const [problem, setProblem] = useState('');
  const [isOver, setOver] = useState(false);
  const words = useId();
  const open = (file: File | undefined): void => {
    if (file === undefined) return;
    if (!file.type.startsWith('video/')) {
      setProblem(`${file.name} is no film. Choose a video file, such as one ending in .mp4 or .webm.`);
      return;
    }
    setProblem('');
    if (film !== undefined) URL.revokeObjectURL(film.url);
    // Marks of another film's camera say nothing of this one, nor where its man-ups began.
    send({ kind: 'forget' });
    change({
      film: { name: file.name, key: filmKey(file), url: URL.createObjectURL(file), width: 0, height: 0, length: 0 },
      filmTime: 0,
      begins: {},
    });
  };
  // The page takes any file that is dropped for a playbook: this one is taken here.
  const stopped = (event: DragEvent): void => {
    event.preventDefault();
    event.stopPropagation();
  };
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: dropping is a second way to what the button does
    <div
      className={small ? styles.small : styles.drop}
      data-over={isOver}
      onDragOver={(event) => {
        stopped(event);
        setOver(true);
      }}
      onDragLeave={() => setOver(false)}
      onDrop={(event) => {
        stopped(event);
        setOver(false);
        open(event.dataTransfer.files[0]);
      }}
    >
      <label className={styles.button}>
        {film === undefined ? 'Open a film' : 'Open another film'}
        <input
          className="spoken"
          type="file"
          accept="video/*"
          aria-describedby={words}
          onChange={(event) => {
            open(event.target.files?.[0]);
            event.target.value = '';
          }}
        />
      </label>
      <p id={words} className={styles.words}>
        {small && film !== undefined
          ? `${film.name}. It stays on this device: nothing of it is sent anywhere.`
          : 'Or drop a video file here. It stays on this device: it is played where it lies, and nothing of it is sent anywhere. Only the places that you mark are kept: of men in the playbook, of the camera in this browser.'}
      </p>
      {film === undefined && <KnownFilms opponent={opponent} />}
      {problem !== '' && (
        <p role="alert" className={styles.problem}>
          {problem}
        </p>
      )}
    </div>
  );
}

/** Films that were marked before: a browser may not open a file by itself, so it is said which. */
function KnownFilms({ opponent }: { readonly opponent: string }): ReactNode {
  const [names, setNames] = useState<readonly string[]>([]);
  useEffect(() => {
    let isWanted = true;
    void filmsOf(opponent).then((found) => {
      if (isWanted) setNames(found);
    });
    return () => {
      isWanted = false;
    };
  }, [opponent]);
  if (names.length === 0) return null;
  return (
    <p className={styles.words}>
      Marked before: {names.slice(0, 3).join(', ')}. Open it again, and where the camera looks and its man-ups begin is
      still known.
    </p>
  );
}
