import { type ReactNode, useState } from 'react';
import type { Playbook } from '../../playbook/index.ts';
import { signWords } from '../../render/index.ts';
import { type Belief, likeliestFirst, type MeasuredTicks, shortSchemeName, signsToTick } from '../../teach/index.ts';
import { Dialog } from '../controls/dialog.tsx';
import { shareText } from '../opponents/shares.ts';
import styles from './bench.module.css';
import { tap } from './bench-store.ts';
import type { GameNow } from './use-game.ts';

/** Schemes that fit under the thumb; the others are one tap further. */
const inSight = 3;

/** What they may be playing, each with how likely it is; a tap on one says that it is seen. */
export function SchemeBar({
  playbook,
  now,
  belief,
  signs,
}: {
  readonly playbook: Playbook;
  readonly now: GameNow;
  readonly belief: Belief;
  readonly signs: MeasuredTicks | undefined;
}): ReactNode {
  const [isOpen, setOpen] = useState(false);
  // Of a chance that has just ended it can still be said.
  const seen = (now.state.open ?? now.state.chances.at(-1))?.seen ?? null;
  const all = likeliestFirst(belief);
  if (all.length === 0) return null;
  const choice = ([id, share]: readonly [string, number]): ReactNode => (
    <button
      key={id}
      type="button"
      className={styles.scheme}
      aria-pressed={seen === id}
      onClick={() => {
        tap({ kind: 'seen', scheme: id });
        setOpen(false);
      }}
    >
      <span className={styles.schemeName}>{shortSchemeName(playbook, id)}</span>{' '}
      <small>{shareText(share).replace('less than', 'under')}</small>
    </button>
  );
  return (
    <fieldset className={styles.schemes} aria-label="What they play">
      <legend className={styles.head}>They play: tap what you see</legend>
      {all.slice(0, inSight).map(choice)}
      {all.length > inSight && (
        <button type="button" className={styles.scheme} onClick={() => setOpen(true)}>
          Another, or a sign
        </button>
      )}
      <Dialog open={isOpen} onClose={() => setOpen(false)} title="What they play">
        <div className={styles.foul}>
          <div className={styles.pad}>{all.slice(inSight).map(choice)}</div>
          {signs !== undefined && <Signs signs={signs} now={now} />}
        </div>
      </Dialog>
    </fieldset>
  );
}

/** What may be seen of them without naming a scheme: each yes or no moves the belief. */
function Signs({ signs, now }: { readonly signs: MeasuredTicks; readonly now: GameNow }): ReactNode {
  const ticks = now.state.open?.ticks ?? [];
  return (
    <section>
      <h3>What was seen?</h3>
      {signsToTick(signs).map((sign) => {
        const ticked = ticks.find(({ cue }) => cue === sign);
        return (
          <fieldset key={sign} className={styles.sign} aria-label={signWords(sign)}>
            <span aria-hidden="true">{signWords(sign)}</span>
            {[true, false].map((isSo) => (
              <button
                key={String(isSo)}
                type="button"
                className={styles.key}
                aria-pressed={ticked?.isSo === isSo}
                onClick={() => tap({ kind: 'ticked', cue: sign, isSo })}
              >
                {isSo ? 'Yes' : 'No'}
              </button>
            ))}
          </fieldset>
        );
      })}
    </section>
  );
}
