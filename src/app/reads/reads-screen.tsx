import { type ReactNode, useMemo } from 'react';
import { carriersOfPlay, type Play } from '../../engine/index.ts';
import type { Playbook, PlayEntry } from '../../playbook/index.ts';
import { EmptyPlays } from '../play/empty-plays.tsx';
import { useScreen } from '../play/screen-state.ts';
import { type PlayEditor, usePlayEditor } from '../play/use-play-editor.ts';
import { useShownPlay } from '../play/use-shown-play.ts';
import { schemeChoices, usualSchemes } from '../schemes/scheme-choices.ts';
import { usePlaybook } from '../shell/desk.tsx';
import { CardPanel } from './card-panel.tsx';
import { FakesPanel } from './fakes-panel.tsx';
import { FindPanel, NotWhole } from './find-panel.tsx';
import { GradesPanel } from './grades-panel.tsx';
import { KnownPanel } from './known-panel.tsx';
import { PracticePanel } from './practice-panel.tsx';
import { type Against, againstOf, readsQuestion } from './reads-question.ts';
import styles from './reads-screen.module.css';
import { useReads } from './reads-state.ts';
import { eitherOf, noSchemeWords } from './reads-words.ts';
import { RunsPanel } from './runs-panel.tsx';
import { SchemeGains } from './scheme-gains.tsx';
import { shownReads } from './shown-reads.ts';
import { useFindReads } from './use-find-reads.ts';
import { WaysTable } from './ways-table.tsx';

/** The place of the reads: what a man with the ball should look for, as a card, and what that is worth. */
export default function ReadsScreen({ playId }: { readonly playId: string | undefined }): ReactNode {
  const playbook = usePlaybook();
  const editor = usePlayEditor(useShownPlay(playId));
  const reading = editor?.read(editor.written);
  return (
    <div className={styles.screen}>
      <div className={styles.head}>
        <h1 className={styles.title}>Reads</h1>
        <p className={styles.quiet}>
          What a man with the ball should look for, in which order, as a card to hold; and what that is worth. On the
          side for which the play is written.
        </p>
      </div>
      {editor === undefined && <EmptyPlays />}
      {editor !== undefined && reading?.play === undefined && <NotWhole play={editor.written} />}
      {editor !== undefined && reading?.play !== undefined && (
        <ReadsOfPlay playbook={playbook} editor={editor} play={reading.play} isWhole={reading.isWhole} />
      )}
    </div>
  );
}

function ReadsOfPlay({
  playbook,
  editor,
  play,
  isWhole,
}: {
  readonly playbook: Playbook;
  readonly editor: PlayEditor;
  readonly play: Play;
  readonly isWhole: boolean;
}): ReactNode {
  const { written, standing } = editor;
  const reads = useReads();
  const chosen = useScreen((state) => state.chosen);
  const choices = useMemo(() => schemeChoices(playbook), [playbook]);
  const schemes = useMemo(
    () => chosen?.filter((id) => choices.some((choice) => choice.id === id)) ?? usualSchemes(choices),
    [chosen, choices],
  );
  const names = useMemo(() => Object.fromEntries(choices.map(({ id, name }) => [id, name])), [choices]);
  const spots = play.spots.map(({ id }) => id);
  const carrier = spots.find((id) => id === reads.carrier) ?? play.start.ball;
  const carriers = carriersOfPlay(play);
  const { opponents } = playbook;
  const against = useMemo(
    () => againstOf(opponents, reads.against, schemes, reads.ownMix),
    [opponents, reads.against, schemes, reads.ownMix],
  );
  const question = useMemo(
    () => (isWhole ? readsQuestion(standing, written, carrier, opponents, against) : undefined),
    [standing, written, carrier, opponents, against, isWhole],
  );
  const { find, stop } = useFindReads(question?.text);
  const { found } = reads;
  const length = found === undefined ? 0 : shownReads(found.study, reads.cardReads, playbook.team.level);
  return (
    <>
      <FindPanel
        playbook={playbook}
        entry={written}
        spots={spots}
        carrier={carrier}
        against={against}
        schemes={schemes}
        names={names}
        carriers={carriers}
        obstacle={obstacleTo({
          play: written,
          isWhole,
          carrier,
          carriers,
          against,
          isMet: question?.setups.length !== 0,
        })}
        onFind={() => question !== undefined && find({ play, carrier, question })}
        onStop={stop}
      />
      {found !== undefined && found.play.id === written.id && (
        <>
          <CardPanel
            key={found.question}
            found={found}
            reads={length}
            entry={written}
            standing={standing}
            names={names}
            isOld={found.question !== question?.text}
          />
          <div className={styles.tables}>
            <WaysTable study={found.study} reads={length} />
            <SchemeGains study={found.study} reads={length} names={names} />
          </div>
          <GradesPanel
            key={`${found.question} grades`}
            found={found}
            entry={written}
            standing={standing}
            taught={play.reads}
            isOld={found.question !== question?.text}
          />
          <div className={styles.tables}>
            <KnownPanel found={found} reads={length} names={names} />
            <FakesPanel found={found} names={names} />
          </div>
        </>
      )}
      <RunsPanel play={play} question={question} names={names} />
      <PracticePanel standing={standing} entry={written} question={question} />
    </>
  );
}

interface Wanted {
  readonly play: PlayEntry;
  readonly isWhole: boolean;
  readonly carrier: string;
  readonly carriers: readonly string[];
  readonly against: Against;
  /** Whether there is any scheme to play against. */
  readonly isMet: boolean;
}

function obstacleTo({ play, isWhole, carrier, carriers, against, isMet }: Wanted): ReactNode | undefined {
  if (!isWhole) return <NotWhole play={play} />;
  if (!isMet) return <p className={styles.obstacle}>{noSchemeWords(against)}</p>;
  if (carriers.includes(carrier)) return undefined;
  return (
    <p className={styles.obstacle}>
      No step of the play brings {carrier} the ball, so his reads cannot be found here. Choose {eitherOf(carriers)}.
    </p>
  );
}
