import { type ReactNode, useEffect, useMemo, useRef, useState } from 'react';
import { cardOfList, mostReadsAt, type Read, readsOfCard } from '../../engine/index.ts';
import { type Playbook, type PlayEntry, ruleCodeOf } from '../../playbook/index.ts';
import { counted, drawnField, keptWords, readsBasisWords } from '../../render/index.ts';
import { Button } from '../controls/button.tsx';
import { Segments } from '../controls/segments.tsx';
import panel from '../opponents/panel.module.css';
import { signOf } from '../schemes/goal-words.ts';
import { useDesk } from '../shell/desk.tsx';
import styles from './reads-screen.module.css';
import type { FoundReads } from './reads-state.ts';
import { useReads } from './reads-state.ts';
import {
  cardWorthWords,
  effortWords,
  heldReadsWords,
  readPricesWords,
  taughtWords,
  teachingWords,
} from './reads-words.ts';
import { ShownCard } from './shown-card.tsx';
import { isTaught, readsOf, teachReads } from './teach-reads.ts';

export interface CardPanelProps {
  readonly found: FoundReads;
  readonly reads: number;
  /** The play as it is kept now, and what it stands on; `isOld` when it is not the one that was asked about. */
  readonly entry: PlayEntry;
  readonly standing: Playbook;
  /** What schemes are called. */
  readonly names: Readonly<Record<string, string>>;
  readonly isOld: boolean;
}

/** The card in large words, how many reads it has, what it is worth, and the way into the play. */
export function CardPanel({ found, reads, entry, standing, names, isOld }: CardPanelProps): ReactNode {
  const { study, play, trials, isRough } = found;
  const change = useReads((state) => state.change);
  const card = study.cards[reads]!;
  const carrier = play.spots[study.carrier]!.id;
  const written = cardOfList(play, study.carrier, card.list, study.at);
  const { level } = standing.team;
  const field = useMemo(() => drawnField(ruleCodeOf(standing).markings), [standing]);
  return (
    <section className={panel.panel} aria-label="The card">
      <h2 className={panel.title}>
        {play.name}: {carrier} with the ball
      </h2>
      <div className={styles.length}>
        <span aria-hidden="true">Reads on the card, at most</span>
        <Segments
          label="Reads on the card, at most"
          value={String(reads)}
          options={study.cards.map((_, at) => ({ value: String(at), text: String(at) }))}
          onChange={(value) => change({ cardReads: Number(value) })}
        />
        <strong>{cardWorthWords(card.gain)}</strong>
      </div>
      <p className={panel.quiet}>
        {heldReadsWords(study.worthHolding, study.cards.length - 1, mostReadsAt(level), level)}
      </p>
      <ShownCard found={found} reads={reads} written={written} field={field} names={names} />
      {card.list.rules.length < reads && (
        <p className={panel.quiet}>A card of {counted(reads, 'read')} is no better than this one.</p>
      )}
      {reads > 0 && <p className={panel.quiet}>{readPricesWords(study.cards, reads)}</p>}
      <p className={panel.quiet}>{keptWords(study.best.gain, card.gain)}</p>
      <p className={panel.quiet}>
        {effortWords(trials, isRough)} {readsBasisWords(study)} In brackets the interval that holds the truth 95 times
        in 100.
      </p>
      {isOld ? (
        <p className={styles.obstacle}>
          These reads were found for another man or another mix, or for the play before it was changed. Find the reads
          again.
        </p>
      ) : (
        <Teach
          entry={entry}
          standing={standing}
          carrier={carrier}
          reads={readsOfCard(written)}
          isSure={!isRough && signOf(card.gain) === 'up'}
        />
      )}
    </section>
  );
}

function Teach({
  entry,
  standing,
  carrier,
  reads,
  isSure,
}: {
  readonly entry: PlayEntry;
  readonly standing: Playbook;
  readonly carrier: string;
  readonly reads: readonly Read[];
  /** The card is surely worth more than leaving it to the play. */
  readonly isSure: boolean;
}): ReactNode {
  const { store } = useDesk();
  const [refusal, setRefusal] = useState('');
  const [justTaught, setJustTaught] = useState(false);
  const said = useRef<HTMLParagraphElement>(null);
  const hasPressed = useRef(false);
  const card = { carrier, reads };
  const isThere = isTaught(entry, standing, card);
  // The button that was pressed is gone: whoever goes by keys stays where he was.
  useEffect(() => {
    if (isThere && hasPressed.current) said.current?.focus();
    hasPressed.current = false;
  }, [isThere]);
  if (reads.length === 0) return null;
  const teach = (): void => {
    const result = teachReads(entry, standing, card);
    setRefusal(result.kind === 'refused' ? result.reason : '');
    if (result.kind === 'refused') return;
    setJustTaught(true);
    hasPressed.current = true;
    store.edit(`teach ${carrier} ${taughtWords(reads)}`, (current) => ({
      ...current,
      plays: current.plays.map((play) => (play.id === entry.id ? result.play : play)),
    }));
  };
  return (
    <div className={styles.teach}>
      {!isThere && (
        <>
          <Button tone={isSure ? 'main' : 'usual'} onClick={teach}>
            Teach these reads
          </Button>
          <span className={panel.quiet}>{teachingWords(reads, readsOf(entry, carrier).length)}</span>
        </>
      )}
      <p role="status" tabIndex={-1} ref={said} className={panel.quiet}>
        {isThere ? `The play teaches ${carrier} this card.${justTaught ? ' Undo takes it back.' : ''}` : refusal}
      </p>
    </div>
  );
}
