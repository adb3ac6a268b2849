import type { PlotOptions } from '@observablehq/plot';
import { type ReactNode, useEffect, useRef } from 'react';
import styles from './season.module.css';

type Plots = typeof import('@observablehq/plot');

export interface PlotFigureProps {
  /** What can be read from it: said for who cannot see it, and shown under it. */
  readonly says: string;
  /** What to draw, so wide; must be the same function as long as it draws the same. */
  readonly draw: (plot: Plots, width: number) => PlotOptions;
}

/** A chart as wide as its place; the table beside it says the same in figures. What draws it is loaded when the first chart is shown. */
export function PlotFigure({ says, draw }: PlotFigureProps): ReactNode {
  const place = useRef<HTMLDivElement>(null);
  useEffect(() => {
    const here = place.current;
    if (here === null) return;
    let isGone = false;
    let drawn = 0;
    const show = (plots: Plots): void => {
      const width = Math.floor(here.clientWidth);
      if (isGone || width === 0 || width === drawn) return;
      drawn = width;
      const chart = plots.plot({ ...draw(plots, width), width });
      // One picture with one description: what it names its parts for itself is no help beside that.
      for (const part of chart.querySelectorAll('[aria-label]')) part.removeAttribute('aria-label');
      here.replaceChildren(chart);
    };
    let watcher: ResizeObserver | undefined;
    // Without a network it may not be there: then the table stands alone.
    import('@observablehq/plot').then(
      (plots) => {
        show(plots);
        watcher = new ResizeObserver(() => show(plots));
        watcher.observe(here);
      },
      () => undefined,
    );
    return () => {
      isGone = true;
      watcher?.disconnect();
    };
  }, [draw]);
  return (
    <figure className={styles.figure}>
      <div ref={place} className={styles.chart} role="img" aria-label={says} />
      <figcaption>{says}</figcaption>
    </figure>
  );
}
