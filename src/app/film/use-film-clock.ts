import { type RefObject, useCallback, useEffect, useRef, useState } from 'react';
import { useFilm } from './film-state.ts';

export interface FilmClock {
  readonly isPlaying: boolean;
  readonly playOrPause: () => void;
  readonly goTo: (seconds: number) => void;
  /** Pictures forward, or back when below 0. */
  readonly step: (frames: number) => void;
}

/** Pictures a second when the browser does not say when each is shown. */
const usualRate = 30;

/** Runs a video and tells where it stands, picture by picture where the browser says so. */
export function useFilmClock(video: RefObject<HTMLVideoElement | null>, url: string | undefined): FilmClock {
  const change = useFilm((state) => state.change);
  const [isPlaying, setPlaying] = useState(false);
  const frame = useRef(1 / usualRate);
  useEffect(() => {
    const element = video.current;
    if (element === null || url === undefined) return undefined;
    return watch(element, frame, (filmTime) => change({ filmTime }), setPlaying);
  }, [video, url, change]);
  const goTo = useCallback(
    (seconds: number) => {
      const element = video.current;
      if (element === null) return;
      element.pause();
      const last = Number.isFinite(element.duration) ? element.duration : seconds;
      element.currentTime = Math.min(Math.max(0, seconds), last);
    },
    [video],
  );
  const step = useCallback(
    (frames: number) => {
      const element = video.current;
      if (element !== null) goTo(element.currentTime + frames * frame.current);
    },
    [video, goTo],
  );
  const playOrPause = useCallback(() => {
    const element = video.current;
    if (element === null) return;
    // A browser may refuse to play; then it stays as it is.
    if (element.paused) void element.play().catch(() => undefined);
    else element.pause();
  }, [video]);
  return { isPlaying, playOrPause, goTo, step };
}

/** A frame shorter or longer than this is a gap in the film or a picture that was left out, s. */
const frameLimits = { least: 1 / 130, most: 1 / 10 };

function watch(
  element: HTMLVideoElement,
  frame: RefObject<number>,
  tell: (seconds: number) => void,
  setPlaying: (isPlaying: boolean) => void,
): () => void {
  let handle = 0;
  let before: number | undefined;
  const shown = (_: number, { mediaTime }: { readonly mediaTime: number }): void => {
    const length = mediaTime - (before ?? mediaTime);
    // The shortest step from one picture to the next is one frame.
    if (!element.paused && length >= frameLimits.least && length <= frameLimits.most)
      frame.current = Math.min(frame.current, length);
    before = mediaTime;
    tell(element.currentTime);
    handle = element.requestVideoFrameCallback(shown);
  };
  const told = (): void => tell(element.currentTime);
  const onPlay = (): void => setPlaying(true);
  const onPause = (): void => setPlaying(false);
  if ('requestVideoFrameCallback' in element) handle = element.requestVideoFrameCallback(shown);
  element.addEventListener('timeupdate', told);
  element.addEventListener('seeked', told);
  element.addEventListener('play', onPlay);
  element.addEventListener('pause', onPause);
  return () => {
    if ('requestVideoFrameCallback' in element) element.cancelVideoFrameCallback(handle);
    element.removeEventListener('timeupdate', told);
    element.removeEventListener('seeked', told);
    element.removeEventListener('play', onPlay);
    element.removeEventListener('pause', onPause);
  };
}
