import type { ReactNode } from 'react';
import type { SchemeMan } from './scheme-info.ts';
import styles from './stand-picture.module.css';

export interface StandPictureProps {
  readonly men: readonly SchemeMan[];
  /** Whether the men's names stand beside their crosses. */
  readonly named: boolean;
  /** A word under a man's cross, such as how well he plays. */
  readonly under?: ((man: string) => string) | undefined;
  readonly chosen?: string | undefined;
  /** Each man can be pressed. */
  readonly onChoose?: ((man: string) => void) | undefined;
  /** What it shows, for who cannot see it; a picture that only repeats what stands beside it has none. */
  readonly label?: string;
}

/** Where the defenders of a scheme are at home: small enough to stand beside a list, in yards. */
export function StandPicture({ men, named, under, chosen, onChoose, label }: StandPictureProps): ReactNode {
  const hidden = onChoose === undefined && label === undefined;
  return (
    // biome-ignore lint/a11y/noSvgWithoutTitle: without a label it is hidden from who listens; with one it has a title
    <svg
      className={named ? styles.large : styles.small}
      viewBox={named ? '-11 -4.5 22 20' : '-9 -4 18 18'}
      {...(hidden ? { 'aria-hidden': true } : { role: onChoose === undefined ? 'img' : 'group', 'aria-label': label })}
    >
      {label !== undefined && <title>{label}</title>}
      <circle r="3" className={styles.crease} />
      <path d="M-1 0H1L0 -1.7Z" className={styles.goal} />
      {men.map((man) => (
        <Man key={man.name} man={man} named={named} under={under} chosen={chosen} onChoose={onChoose} />
      ))}
    </svg>
  );
}

function Man({
  man: { name, home },
  named,
  under,
  chosen,
  onChoose,
}: Pick<StandPictureProps, 'named' | 'under' | 'chosen' | 'onChoose'> & { readonly man: SchemeMan }): ReactNode {
  const [x, y] = home;
  const half = named ? 0.62 : 0.9;
  const cross = `M${x - half} ${y - half}l${2 * half} ${2 * half}M${x - half} ${y + half}l${2 * half} ${-2 * half}`;
  const inside = (
    <>
      <circle cx={x} cy={y} r="1.7" className={styles.touch} />
      {name === chosen && <circle cx={x} cy={y} r="1.15" className={styles.chosen} />}
      <path d={cross} className={styles.cross} />
      {named && (
        <text x={x} y={y - 1.05} className={styles.name}>
          {name}
        </text>
      )}
      {named && under !== undefined && (
        <text x={x} y={y + 1.9} className={styles.under}>
          {under(name)}
        </text>
      )}
    </>
  );
  if (onChoose === undefined) return <g>{inside}</g>;
  return (
    // biome-ignore lint/a11y/useSemanticElements: a <button> cannot stand inside a drawing
    <g
      role="button"
      tabIndex={0}
      className={styles.man}
      aria-label={`${name}: ${under?.(name) ?? ''}`}
      onClick={() => onChoose(name)}
      onKeyDown={(event) => {
        if (event.key !== 'Enter' && event.key !== ' ') return;
        event.preventDefault();
        onChoose(name);
      }}
    >
      {inside}
    </g>
  );
}
