import type { ReactNode } from 'react';
import { type SignId, signIds } from '../../engine/index.ts';
import type { Chance } from '../../playbook/index.ts';
import { signWords } from '../../render/index.ts';
import { readTick, writeTick } from '../../teach/index.ts';
import { Segments } from '../controls/segments.tsx';
import panel from '../opponents/panel.module.css';
import { cuesOf } from './moment-edits.ts';
import styles from './sign-ticks.module.css';

type Answer = 'unseen' | 'yes' | 'no';

/** What can be told without film: signs that somebody saw in a man-up, or looked for and did not see. */
export function SignTicks({
  chance,
  onCues,
}: {
  readonly chance: Chance;
  readonly onCues: (cues: readonly string[]) => void;
}): ReactNode {
  const cues = cuesOf(chance);
  const answers = new Map(
    cues.flatMap((cue) => {
      const tick = readTick(cue);
      return tick === undefined ? [] : [[tick.sign, tick.seen ? 'yes' : 'no'] as const];
    }),
  );
  const say = (sign: SignId, answer: Answer): void => {
    const others = cues.filter((cue) => readTick(cue)?.sign !== sign);
    onCues(answer === 'unseen' ? others : [...others, writeTick({ sign, seen: answer === 'yes' })]);
  };
  return (
    <section className={panel.panel} aria-label="What was seen, without film">
      <h3 className={panel.title}>What was seen, without film</h3>
      <p className={panel.quiet}>
        Say yes or no to what you looked for. What nobody looked at stays open and says nothing. Ticks and marks are
        weighed together; the first tick takes some seconds.
      </p>
      <ul className={styles.list}>
        {signIds.map((sign) => (
          <li key={sign}>
            <span>{signWords(sign)}</span>
            <Segments<Answer>
              label={signWords(sign)}
              value={answers.get(sign) ?? 'unseen'}
              options={[
                { value: 'yes', text: 'Yes' },
                { value: 'no', text: 'No' },
                { value: 'unseen', text: 'Open' },
              ]}
              onChange={(answer) => say(sign, answer)}
            />
          </li>
        ))}
      </ul>
    </section>
  );
}
