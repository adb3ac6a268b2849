import type { ReactNode } from 'react';
import type { SpotId } from '../../engine/index.ts';
import type { Playbook, PlayEntry } from '../../playbook/index.ts';
import { hardlyEverWords } from '../../render/index.ts';
import { Button } from '../controls/button.tsx';
import { PickList } from '../controls/pick-list.tsx';
import panel from '../opponents/panel.module.css';
import { addressOf, goTo } from '../shell/place.ts';
import { OwnMix } from './own-mix.tsx';
import { type Against, type AgainstChoice, opponentsWithMix } from './reads-question.ts';
import styles from './reads-screen.module.css';
import { type ReadsSearch, useReads } from './reads-state.ts';
import { eitherOf, progressWords } from './reads-words.ts';
import { SearchLine } from './search-line.tsx';

export interface FindPanelProps {
  readonly playbook: Playbook;
  readonly entry: PlayEntry;
  readonly spots: readonly SpotId[];
  readonly carrier: SpotId;
  readonly against: Against;
  /** The schemes that are chosen on Play, and what schemes are called. */
  readonly schemes: readonly string[];
  readonly names: Readonly<Record<string, string>>;
  /** Spots to which the play brings the ball. */
  readonly carriers: readonly SpotId[];
  /** What stands in the way of a search, if anything does. */
  readonly obstacle: ReactNode | undefined;
  readonly onFind: () => void;
  readonly onStop: () => void;
}

/** Whose reads are wanted, against what; and how far the search for them is. */
export function FindPanel(props: FindPanelProps): ReactNode {
  const { playbook, entry, spots, carrier, against, schemes, names, carriers, obstacle, onFind, onStop } = props;
  const { search, change } = useReads();
  const isFinding = search.kind === 'finding';
  const plays = playbook.plays.filter((play) => play.archived !== true || play.id === entry.id);
  return (
    <section className={panel.panel} aria-label="Whose reads">
      <div className={styles.choices}>
        <PickList
          label="Play"
          value={entry.id}
          options={plays.map(({ id, name }) => ({ value: id, text: name }))}
          onChange={(play) => goTo({ kind: 'reads', play })}
        />
        <PickList
          label="Man with the ball"
          value={carrier}
          options={spots.map((id) => ({
            value: id,
            text: carriers.includes(id) ? id : `${id}, not by the play's steps`,
          }))}
          onChange={(spot) => change({ carrier: spot })}
        />
        <PickList
          label="Against"
          value={against.kind === 'opponent' ? opponentValue(against.opponent) : against.kind}
          options={[
            { value: 'alike', text: 'the schemes on Play, equally often' },
            ...opponentsWithMix(playbook).map(({ id, name }) => ({
              value: opponentValue(id),
              text: `the mix of ${name}`,
            })),
            { value: 'ownMix', text: 'a mix of my own' },
          ]}
          onChange={(value) => change({ against: choiceOf(value) })}
        />
        {isFinding ? (
          <Button onClick={onStop}>Stop</Button>
        ) : (
          <Button tone="main" onClick={onFind} disabled={obstacle !== undefined}>
            Find the reads
          </Button>
        )}
      </div>
      {against.kind === 'ownMix' && <OwnMix schemes={schemes} names={names} />}
      {obstacle}
      <SearchLine
        label="How far the search is"
        words={progressWords(search)}
        progress={search.kind === 'finding' ? search : undefined}
        said={saidOf(search, carriers)}
      />
    </section>
  );
}

// The values of the list: an opponent's id may be any word, so it has a mark before it.
const opponentMark = 'opponent:';

function opponentValue(id: string): string {
  return `${opponentMark}${id}`;
}

function choiceOf(value: string): AgainstChoice {
  if (value.startsWith(opponentMark)) return { kind: 'opponent', opponent: value.slice(opponentMark.length) };
  return { kind: value === 'ownMix' ? 'ownMix' : 'alike' };
}

// Told once for each state: the share in percent would be read out at every step.
function saidOf(search: ReadsSearch, carriers: readonly SpotId[]): string {
  switch (search.kind) {
    case 'idle':
      return '';
    case 'finding':
      return 'The first answer is rough and there in seconds; two that know more follow.';
    case 'stopped':
      return 'Stopped. What was found until then stays; find the reads again to begin anew.';
    case 'never': {
      const others = carriers.filter((spot) => spot !== search.carrier);
      const words = hardlyEverWords(search.carrier);
      const said = `${words.charAt(0).toUpperCase()}${words.slice(1)}.`;
      return others.length === 0 ? said : `${said} Choose ${eitherOf(others)}.`;
    }
    case 'failed':
      return `That did not work: ${search.reason}. Find the reads again to try once more.`;
    default:
      return exhaustive(search);
  }
}

function exhaustive(search: never): never {
  throw new TypeError(`unknown search: ${JSON.stringify(search)}`);
}

/** A play that cannot be played, and where it can be fixed. */
export function NotWhole({ play }: { readonly play: Pick<PlayEntry, 'id' | 'name'> }): ReactNode {
  return (
    <p className={styles.obstacle}>
      {play.name} has something to fix before it can be played.{' '}
      <a href={addressOf({ kind: 'play', play: play.id })}>See what, in the Play place</a>
    </p>
  );
}
