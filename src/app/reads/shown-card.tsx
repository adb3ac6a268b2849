import type { ReactNode } from 'react';
import type { ReadCard } from '../../engine/index.ts';
import { type FieldMarkings, readCardWords } from '../../render/index.ts';
import { ReadFrame, type ShownRead } from './read-frame.tsx';
import styles from './reads-screen.module.css';
import type { FoundReads } from './reads-state.ts';
import read from './shown-card.module.css';

export interface ShownCardProps {
  readonly found: FoundReads;
  /** How many reads the card may have. */
  readonly reads: number;
  /** The card as it is said. */
  readonly written: ReadCard;
  readonly field: FieldMarkings;
  /** What schemes are called. */
  readonly names: Readonly<Record<string, string>>;
}

/** The card in large words, and beside each read the moment of a real chance at which its cue shows. */
export function ShownCard(props: ShownCardProps): ReactNode {
  const { found, written, field } = props;
  const words = readCardWords(written, found.play.spots[found.study.carrier]!.id);
  return (
    <div className={`${styles.card} ${read.card}`}>
      {words.reads.length > 0 && (
        <ol>
          {words.reads.map((text, at) => {
            const shown = shownRead(props, at);
            return (
              <li key={text}>
                {shown === undefined ? <Unseen words={text} /> : <ReadFrame shown={shown} words={text} field={field} />}
              </li>
            );
          })}
        </ol>
      )}
      <p>{words.otherwise}</p>
    </div>
  );
}

function Unseen({ words }: { readonly words: string }): ReactNode {
  return (
    <>
      <p>{words}</p>
      <p className={read.none}>In no chance that was measured did he come to act on this read.</p>
    </>
  );
}

/** The read at a place of the card with its example; undefined when there is none. */
function shownRead({ found, reads, written, names }: ShownCardProps, at: number): ShownRead | undefined {
  const example = found.study.cards[reads]?.examples[at];
  const read = written.reads[at];
  if (example === undefined || example === null || read === undefined) return undefined;
  const { scheme } = example;
  const met = found.setups.find(({ setup }) => setup.scheme === scheme);
  return met && { read, number: at + 1, example, setup: met.setup, scheme: names[scheme] ?? scheme };
}
