import { useCallback, useEffect, useRef, useState } from 'react';
import type { FilmScript } from '../../../render/index.ts';
import type { FilmEnd } from './make-film.ts';

/** A file that is ready to be kept. */
export interface ClipFile {
  readonly content: Blob;
  readonly ending: string;
}

/** What the making of a file is at. */
export type ClipMaking =
  | { readonly kind: 'idle' }
  /** So much of it is done, 0 to 1. */
  | { readonly kind: 'making'; readonly share: number }
  | { readonly kind: 'made'; readonly file: ClipFile }
  | { readonly kind: 'stopped' }
  /** This browser makes no videos. */
  | { readonly kind: 'noEncoder' }
  | { readonly kind: 'failed'; readonly reason: string };

/** How a file is made: tells how far it is, and ends when it is told to. */
export type MakeFile = (order: {
  readonly signal: AbortSignal;
  readonly onProgress: (share: number) => void;
}) => Promise<ClipMaking>;

/** Makes one file at a time. `wanted` names what is wanted now: what was made of anything else is dropped, and its making ends. */
export function useClipFile(wanted: unknown): {
  readonly making: ClipMaking;
  readonly make: (how: MakeFile) => void;
  readonly stop: () => void;
} {
  const [making, setMaking] = useState<ClipMaking>({ kind: 'idle' });
  const running = useRef<AbortController>(undefined);
  const drop = useCallback((next: ClipMaking) => {
    running.current?.abort();
    running.current = undefined;
    setMaking(next);
  }, []);
  // biome-ignore lint/correctness/useExhaustiveDependencies: another wish is the reason to drop what was made
  useEffect(() => () => drop({ kind: 'idle' }), [drop, wanted]);
  const make = useCallback((how: MakeFile) => {
    running.current?.abort();
    const controller = new AbortController();
    running.current = controller;
    const tell = (next: ClipMaking): void => {
      if (running.current === controller) setMaking(next);
    };
    tell({ kind: 'making', share: 0 });
    how({ signal: controller.signal, onProgress: (share) => tell({ kind: 'making', share }) }).then(
      tell,
      (error: unknown) => tell({ kind: 'failed', reason: error instanceof Error ? error.message : String(error) }),
    );
  }, []);
  return { making, make, stop: () => drop({ kind: 'stopped' }) };
}

/** A film of this script, made in a thread. */
export function filmMaker(script: FilmScript, kind: 'video' | 'gif'): MakeFile {
  return async (order) => {
    const { makeFilm } = await import('./make-film.ts');
    return makingOf(await makeFilm({ script, kind }, order));
  };
}

function makingOf(end: FilmEnd): ClipMaking {
  if (end.kind !== 'made') return end;
  const { bytes, ending, type } = end.film;
  return { kind: 'made', file: { content: new Blob([bytes as BlobPart], { type }), ending } };
}
