import type { ReactNode } from 'react';
import { NumberField } from '../controls/number-field.tsx';
import { sharesOf, shareText } from '../opponents/shares.ts';
import styles from './own-mix.module.css';
import { wholeMix } from './reads-question.ts';
import { useReads } from './reads-state.ts';

/** More often than in all of ten man-ups is no scheme met. */
const most = 10;

export interface OwnMixProps {
  /** The schemes that are chosen on Play. */
  readonly schemes: readonly string[];
  readonly names: Readonly<Record<string, string>>;
}

/** How often the coach expects each scheme, as so many of ten man-ups. */
export function OwnMix({ schemes, names }: OwnMixProps): ReactNode {
  const { ownMix, change } = useReads();
  const parts = sharesOf(wholeMix(schemes, ownMix));
  return (
    <fieldset className={styles.mix}>
      <legend>In how many of ten man-ups you expect each scheme</legend>
      <p className={styles.about}>
        The schemes are those that are chosen on Play. The numbers need not add up to ten: what counts is how they
        compare, and that is the share beside each.
      </p>
      <ul className={styles.parts}>
        {parts.map(({ scheme, weight, share }) => {
          const name = names[scheme] ?? scheme;
          return (
            <li key={scheme} className={styles.part}>
              <span aria-hidden="true">{name}</span>
              <NumberField
                label={`${name}, of ten man-ups`}
                value={weight}
                step={1}
                unit=""
                onNumber={(value) => change({ ownMix: { ...ownMix, [scheme]: Math.min(Math.max(value, 0), most) } })}
              />
              <span className={styles.share}>{shareText(share)}</span>
            </li>
          );
        })}
      </ul>
    </fieldset>
  );
}
