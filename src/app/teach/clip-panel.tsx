import { type ReactNode, useMemo } from 'react';
import type { Playbook, PlayEntry } from '../../playbook/index.ts';
import { usualSeed } from '../answers/ask.ts';
import { Segments } from '../controls/segments.tsx';
import panel from '../opponents/panel.module.css';
import { useScreen } from '../play/screen-state.ts';
import { SearchLine } from '../reads/search-line.tsx';
import { schemeChoices, usualSchemes } from '../schemes/scheme-choices.ts';
import { AgainstChoice } from './clip/against-choice.tsx';
import { type ClipFormat, clipFoes } from './clip/clip-choices.ts';
import { ClipMaker } from './clip/clip-maker.tsx';
import styles from './clip/clip-panel.module.css';
import { useClipChoices } from './clip/clip-state.ts';
import { FilmChoices, SideChoice } from './clip/film-choices.tsx';
import { type ClipFinding, useClip } from './clip/use-clip.ts';
import shared from './tools.module.css';

const formats: readonly { readonly value: ClipFormat; readonly text: string; readonly title: string }[] = [
  { value: 'page', text: 'Page', title: 'One web page: it can be stopped, slowed, and turned to one man’s view' },
  { value: 'video', text: 'Video', title: 'A film that every phone plays' },
  { value: 'gif', text: 'GIF', title: 'A picture that moves by itself, for a message' },
];

const formatWords: Readonly<Record<ClipFormat, string>> = {
  page: 'One web page to send to phones. It plays without a network and can be stopped, slowed and turned to one man’s own view; here is what it shows.',
  video: 'A film that every phone and television plays.',
  gif: 'A picture that moves by itself in a message, over and over.',
};

/** A play as it goes to phones: a page, a video or a GIF, seen before it is made. */
export default function ClipPanel({
  playbook,
  play,
}: {
  readonly playbook: Playbook;
  readonly play: PlayEntry;
}): ReactNode {
  const { format, against, withNames, change } = useClipChoices();
  const chosen = useScreen((state) => state.chosen);
  const side = useScreen((state) => state.side);
  const choices = useMemo(() => schemeChoices(playbook), [playbook]);
  const onPlay = useMemo(
    () => chosen?.filter((id) => choices.some((choice) => choice.id === id)) ?? usualSchemes(choices),
    [chosen, choices],
  );
  const foes = useMemo(
    () => clipFoes(playbook, against, format, choices, onPlay),
    [playbook, against, format, choices, onPlay],
  );
  return (
    <section className={panel.panel} aria-label="A clip of the play">
      <div className={styles.format}>
        <Segments
          label="As what it goes out"
          value={format}
          options={formats}
          onChange={(value) => change({ format: value })}
        />
        <p className={panel.quiet}>{formatWords[format]}</p>
      </div>
      <div className={shared.choices}>
        <AgainstChoice playbook={playbook} choices={choices} onPlay={onPlay} />
        <SideChoice />
        {format !== 'page' && <FilmChoices format={format} />}
        <label className={shared.tick}>
          <input
            type="checkbox"
            checked={withNames}
            onChange={(event) => change({ withNames: event.target.checked })}
          />
          Names beside the numbers
        </label>
      </div>
      {foes.schemes.length === 0 ? (
        <p className={panel.quiet}>Choose one scheme at least.</p>
      ) : (
        <FoundClip
          key={play.id}
          playbook={playbook}
          play={play}
          foes={foes}
          side={side}
          withNames={withNames}
          format={format}
        />
      )}
    </section>
  );
}

interface FoundClipProps {
  readonly playbook: Playbook;
  readonly play: PlayEntry;
  readonly foes: ReturnType<typeof clipFoes>;
  readonly side: 'left' | 'right';
  readonly withNames: boolean;
  readonly format: ClipFormat;
}

function FoundClip({ playbook, play, foes, side, withNames, format }: FoundClipProps): ReactNode {
  const wishes = useMemo(
    () => ({ ...foes, play: play.id, side, withNames, penalty: null, level: null, seed: usualSeed }),
    [foes, play.id, side, withNames],
  );
  const finding = useClip(playbook, wishes);
  return (
    <>
      <SearchLine
        label="How far the man-ups are looked through"
        progress={finding.kind === 'finding' ? finding : undefined}
        said={saidOf(finding, play.name)}
      />
      {finding.kind === 'found' && finding.clip.kind === 'made' && (
        <ClipMaker playbook={playbook} clip={finding.clip.clip} format={format} />
      )}
    </>
  );
}

function saidOf(finding: ClipFinding, play: string): string {
  switch (finding.kind) {
    case 'finding':
      return 'A man-up in which the play comes far is being looked for.';
    case 'failed':
      return `That did not work: ${finding.reason}.`;
    case 'found':
      return finding.clip.kind === 'made'
        ? leftOutWords(finding.clip.leftOut)
        : `${play} does not get to begin against any of these schemes, so there is nothing to show.`;
    default:
      return exhaustive(finding);
  }
}

function leftOutWords(names: readonly string[]): string {
  return names.length === 0
    ? ''
    : `Left out, because the play does not get to begin against them: ${names.join(', ')}.`;
}

function exhaustive(finding: never): never {
  throw new TypeError(`unknown finding: ${JSON.stringify(finding)}`);
}
