import type { ReactNode } from 'react';
import { cardOfList, type KnownScheme } from '../../engine/index.ts';
import { sameValue } from '../../playbook/index.ts';
import { cardEachWords, counted, readCardWords, wayNames } from '../../render/index.ts';
import panel from '../opponents/panel.module.css';
import { differenceText, goalsText } from '../schemes/goal-words.ts';
import { FoldingPanel } from './folding-panel.tsx';
import { GoalsTable } from './goals-table.tsx';
import styles from './known-panel.module.css';
import { More } from './more.tsx';
import type { FoundReads } from './reads-state.ts';

export interface KnownPanelProps {
  readonly found: FoundReads;
  /** Reads on the card that is shown, at most. */
  readonly reads: number;
  /** Of the schemes, by their ids. */
  readonly names: Readonly<Record<string, string>>;
}

/** What it is worth to know the scheme: one card for all, or one for each. */
export function KnownPanel(props: KnownPanelProps): ReactNode {
  const { study } = props.found;
  const each = study.known.cards[props.reads]!;
  if (study.known.byScheme.length < 2) return null;
  const result = cardEachWords(each.more, goalsText);
  return (
    <FoldingPanel label="One card, or one for each scheme" result={result}>
      <p>{result}</p>
      <GoalsTable
        titles={['How he decides', 'Goals from there']}
        rows={[
          { name: 'one card for all', ...study.cards[props.reads]! },
          { name: 'a card for each scheme', ...each },
          { name: wayNames.best, ...study.best },
          { name: wayNames.known, ...study.known.best },
        ]}
      />
      <p className={panel.quiet}>
        With {props.reads === 0 ? 'no read' : `${counted(props.reads, 'read')} at most`} on each card, a card for each
        scheme makes {differenceText(each.more)} goals a chance against one card for all. He has to know which scheme it
        is before he has the ball.
      </p>
      <SchemeCards {...props} />
    </FoldingPanel>
  );
}

function SchemeCards({ found, reads, names }: KnownPanelProps): ReactNode {
  const { known, cards } = found.study;
  const isOwn = (each: KnownScheme): boolean => !sameValue(each.cards[reads]!.list, cards[reads]!.list);
  const nameOf = ({ scheme }: KnownScheme): string => names[scheme] ?? scheme;
  const own = known.byScheme.filter(isOwn);
  const others = known.byScheme.filter((each) => !isOwn(each)).map(nameOf);
  if (own.length === 0) return <p className={panel.quiet}>No scheme was found to want a card of its own.</p>;
  return (
    <More title="The card for each scheme">
      {own.map((each) => (
        <SchemeCard key={each.scheme} name={nameOf(each)} card={each.cards[reads]!} found={found} />
      ))}
      {others.length > 0 && (
        <section className={styles.card}>
          <h3>The same card as for all</h3>
          <p>{others.join(', ')}</p>
        </section>
      )}
    </More>
  );
}

function SchemeCard({
  name,
  card,
  found: { study, play },
}: {
  readonly name: string;
  readonly card: KnownScheme['cards'][number];
  readonly found: FoundReads;
}): ReactNode {
  const written = cardOfList(play, study.carrier, card.list, study.at);
  const words = readCardWords(written, play.spots[study.carrier]!.id);
  return (
    <section className={styles.card} aria-label={`The card for ${name}`}>
      <h3>{name}</h3>
      {words.reads.length > 0 && (
        <ol>
          {words.reads.map((read) => (
            <li key={read}>{read}</li>
          ))}
        </ol>
      )}
      <p>{words.otherwise}</p>
      <p className={panel.quiet}>{differenceText(card.more)} against the one card for all.</p>
    </section>
  );
}
