import { useMemo } from 'react';
import { landmarksOf, type Play } from '../../engine/index.ts';
import {
  groundOf,
  mirrorEntry,
  type Playbook,
  type PlayEdit,
  type PlayEntry,
  type PlayGround,
  ruleCodeOf,
  type Side,
  type SnapGround,
} from '../../playbook/index.ts';
import { useDesk, usePlaybook } from '../shell/desk.tsx';
import { createPlayReader, type PlayReader, type PlayReading } from './play-reading.ts';
import { useScreen } from './screen-state.ts';
import { withStandIns } from './stand-ins.ts';

/** An edit of a play as it is seen: on the left side it works on the mirror image. */
export type EditOfPlay = (play: PlayEntry, ground: PlayGround) => PlayEdit;

export interface PlayEditor {
  /** The play as it is kept, whichever side it is seen from. */
  readonly written: PlayEntry;
  /** The playbook without its plays, and with men in place of those who are missing: what this one stands on. */
  readonly standing: Playbook;
  /** How many of the unit are missing on the roster. */
  readonly standIns: number;
  /** The play as it is seen from the chosen side. */
  readonly entry: PlayEntry;
  readonly ground: PlayGround;
  /** What a dragged place can catch on, besides the men. */
  readonly lines: Omit<SnapGround, 'men'>;
  readonly reading: PlayReading;
  /** Does the edit as one step of undo and tells what was refused or changed with it. What it made, or undefined. */
  readonly apply: (
    label: string,
    edit: EditOfPlay,
    joins?: string,
  ) => Extract<PlayEdit, { kind: 'edited' }> | undefined;
  /** A play that was made from `entry` turned back to how it is kept; undefined when it cannot be. */
  readonly asWritten: (seen: PlayEntry) => PlayEntry | undefined;
  /** A play as it would stand in the document; the same play is read once. */
  readonly read: PlayReader;
  /** What an edit would make of the play, without doing it; why not, when it is refused. */
  readonly attempt: (
    edit: EditOfPlay,
  ) => { readonly play: Play | undefined; readonly entry: PlayEntry } | { readonly reason: string };
}

/** The play of this id under the coach's hands; undefined when there is none. */
export function usePlayEditor(playId: string | undefined): PlayEditor | undefined {
  const { store } = useDesk();
  const playbook = usePlaybook();
  const side = useScreen((state) => state.side);
  const tell = useScreen((state) => state.change);
  const written = playbook.plays.find((play) => play.id === playId);
  const { format, version, team, sets, settings, schemes } = playbook;
  // What a play stands on: not the other plays, so that writing one does not read the other hundred again.
  const { team: unit, standIns } = useMemo(() => withStandIns(team), [team]);
  const standing = useMemo(
    (): Playbook => ({
      format,
      version,
      team: unit,
      ...(sets && { sets }),
      plays: [],
      ...(schemes && { schemes }),
      ...(settings && { settings }),
    }),
    [format, version, unit, sets, settings, schemes],
  );
  // A drag asks for each play that it makes more than once: to draw it, to know whether it can be simulated, and when it is let go.
  const read = useMemo(() => createPlayReader(standing), [standing]);
  return useMemo(() => {
    if (written === undefined) return undefined;
    const ground = groundOf(standing);
    const entry = seenFrom(written, ground, side);
    return {
      written,
      standing,
      standIns,
      asWritten: (seen) => (side === 'right' ? seen : mirrored(seen, ground)),
      read,
      entry,
      ground,
      lines: { field: ground.field, landmarks: landmarksOf(ruleCodeOf(standing).markings) },
      reading: read(entry),
      apply: (label, edit, joins) => {
        const result = editSeen(written, ground, side, edit);
        if (result.kind === 'refused') {
          tell({ notice: { text: result.reason, tone: 'refused' } });
          return undefined;
        }
        tell({ notice: result.also.length > 0 ? { text: result.also.join(' '), tone: 'said' } : undefined });
        store.edit(
          label,
          (current) => ({
            ...current,
            plays: current.plays.map((play) => (play.id === written.id ? result.play : play)),
          }),
          joins === undefined ? {} : { joins },
        );
        return result;
      },
      attempt: (edit) => {
        const result = edit(entry, ground);
        if (result.kind === 'refused') return { reason: result.reason };
        return { entry: result.play, play: read(result.play).play };
      },
    };
  }, [written, standing, standIns, read, side, store, tell]);
}

function seenFrom(play: PlayEntry, ground: PlayGround, side: Side): PlayEntry {
  return side === 'right' ? play : (mirrored(play, ground) ?? play);
}

function mirrored(play: PlayEntry, ground: PlayGround): PlayEntry | undefined {
  const turned = mirrorEntry(play, ground);
  return turned.kind === 'edited' ? turned.play : undefined;
}

// On the left the coach sees the mirror image; what he does to it is turned back before it is kept.
function editSeen(written: PlayEntry, ground: PlayGround, side: Side, edit: EditOfPlay): PlayEdit {
  const seen = seenFrom(written, ground, side);
  const result = edit(seen, ground);
  if (result.kind === 'refused' || side === 'right' || seen === written) return result;
  const back = mirrorEntry(result.play, ground);
  return back.kind === 'refused' ? back : { ...result, play: back.play };
}
