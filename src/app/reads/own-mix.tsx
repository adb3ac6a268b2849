import { type ReactNode, useState } from 'react';
import { NumberField } from '../controls/number-field.tsx';
import { sharesOf, shareText } from '../opponents/shares.ts';
import { mixEntry, unreadEntryWords } from './mix-entry.ts';
import styles from './own-mix.module.css';
import { wholeMix } from './reads-question.ts';
import { useReads } from './reads-state.ts';

export interface OwnMixProps {
  /** The schemes that are chosen on Play. */
  readonly schemes: readonly string[];
  readonly names: Readonly<Record<string, string>>;
}

/** How often the coach expects each scheme, as so many of ten man-ups. */
export function OwnMix({ schemes, names }: OwnMixProps): ReactNode {
  const { ownMix, change } = useReads();
  const [said, setSaid] = useState('');
  const tell = (name: string, words: string): void => setSaid(words === '' ? '' : `${name}: ${words}`);
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
                onNumber={(value) => {
                  const entry = mixEntry(value);
                  tell(name, entry.said);
                  change({ ownMix: { ...ownMix, [scheme]: entry.kept } });
                }}
                onUnread={(typed) => tell(name, unreadEntryWords(typed, weight))}
              />
              <span className={styles.share}>{shareText(share)}</span>
            </li>
          );
        })}
      </ul>
      <p role="status" className={styles.said}>
        {said}
      </p>
    </fieldset>
  );
}
