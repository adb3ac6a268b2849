import type { ReactNode } from 'react';
import { fakesWords } from '../../render/index.ts';
import panel from '../opponents/panel.module.css';
import { goalsText } from '../schemes/goal-words.ts';
import { FoldingPanel } from './folding-panel.tsx';
import { gainScale } from './gain-scale.ts';
import { GainsTable } from './gains-table.tsx';
import { More } from './more.tsx';
import type { FoundReads } from './reads-state.ts';

/** Goals a chance that the bars reach to at least on both sides. */
const leastReach = 0.1;

/** What it buys to show the ball to each mate first. */
export function FakesPanel({
  found: { study, play },
  names,
}: {
  readonly found: FoundReads;
  /** Of the schemes, by their ids. */
  readonly names: Readonly<Record<string, string>>;
}): ReactNode {
  const { fakes } = study;
  const nameOf = (man: number): string => play.spots[man]!.id;
  const each = gainScale(
    fakes.flatMap(({ byScheme }) => byScheme.map(({ gain }) => gain)),
    leastReach,
  );
  const result = fakesWords(play, fakes, goalsText);
  return (
    <FoldingPanel label="What a fake buys" result={result}>
      <p>{result}</p>
      <GainsTable
        titles={['A fake to', 'Gain over none']}
        rows={fakes.map(({ toward, gain }) => ({ name: nameOf(toward), gain }))}
        scale={gainScale(
          fakes.map(({ gain }) => gain),
          leastReach,
        )}
      />
      <p className={panel.quiet}>
        At his first look {nameOf(study.carrier)} shows the ball to that man, then plays by eye; against playing by eye
        from the first look on. In goals a chance.
      </p>
      <More title="Against each scheme">
        {fakes.map(({ toward, byScheme }) => (
          <section key={toward} aria-label={`A fake to ${nameOf(toward)}, against each scheme`}>
            <h3>A fake to {nameOf(toward)}</h3>
            <GainsTable
              titles={['Against', 'Gain over none']}
              rows={byScheme.map(({ scheme, gain }) => ({ name: names[scheme] ?? scheme, gain }))}
              scale={each}
            />
          </section>
        ))}
      </More>
    </FoldingPanel>
  );
}
