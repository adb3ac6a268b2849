import { type ReactNode, useEffect, useMemo, useRef, useState } from 'react';
import type { Play, Point } from '../../engine/index.ts';
import type { PlayEntry } from '../../playbook/index.ts';
import { type FieldMarkings, playScene, stepMarks, type View, viewAround } from '../../render/index.ts';
import { FieldEditor } from '../field/field-editor.tsx';
import { aimOf, type FieldOrder } from '../field/field-order.ts';
import { fieldStep, type Grip } from '../field/grips.ts';
import { orderEdit } from '../field/order-edit.ts';
import { orderReadout } from '../field/order-readout.ts';
import { exactOrder, type SnappedOrder, snapGroundOfStep, snapOrder } from '../field/snap-order.ts';
import { type AimMark, aimMark, idleTool, nextTool, pendingOrder, type Tool, type ToolEvent } from '../field/tool.ts';
import { useLook } from '../look/look.ts';
import { useMedia } from '../look/use-media.ts';
import { useScreen } from './screen-state.ts';
import { ofScript, stepOfBeat } from './script-step.ts';
import { useIsNarrow } from './use-is-narrow.ts';
import type { PlayEditor } from './use-play-editor.ts';
import { VerbBar } from './verb-bar.tsx';
import styles from './write-field.module.css';

export interface WriteFieldProps {
  readonly editor: PlayEditor;
  readonly play: Play;
  readonly field: FieldMarkings;
  /** The play as it would be if the pointer were let go now; undefined when nothing is held. */
  readonly onPending: (entry: PlayEntry | undefined) => void;
}

/** A man chosen by name is exactly where he is, yards. */
const ownReach = 0.01;

/** The field with one step of the play on it, to be changed by pointing. */
export function WriteField({ editor, play, field, onPending }: WriteFieldProps): ReactNode {
  const { step, script, selected, change } = useScreen();
  const palette = useLook((state) => state.shown);
  const [tool, setTool] = useState<Tool>(idleTool);
  // What counts as being on a man while something is held is what will count when it is let go. Yards.
  const [reach, setReach] = useState(0);
  const shown = useMemo(() => fieldStep(play, step), [play, step]);
  const isNarrow = useIsNarrow();
  const byFinger = useMedia('(pointer: coarse)');
  const view = useMemo(() => viewOf(play, step === 0 && !isNarrow), [play, step, isNarrow]);

  const snapGround = useMemo(() => snapGroundOfStep(editor.lines, shown), [editor.lines, shown]);
  const order = pendingOrder(tool, shown, reach);
  const byKeys = tool.kind === 'aiming' && tool.byKeys;
  const snap = (drawn: FieldOrder): SnappedOrder =>
    byKeys ? exactOrder(drawn, shown) : snapOrder(drawn, shown, snapGround);
  const snapped = useSame(order === undefined ? undefined : snap(order));
  const attempt = useMemo(
    () =>
      snapped === undefined
        ? undefined
        : editor.attempt((entry, ground) => orderEdit(entry, ground, shown, snapped.order)),
    [snapped, editor, shown],
  );
  const tried = attempt !== undefined && 'play' in attempt ? attempt.play : undefined;
  const drawn = tried === undefined ? play : ofScript(tried, script);
  const pending = attempt !== undefined && 'entry' in attempt ? attempt.entry : undefined;
  const refusal = attempt !== undefined && 'reason' in attempt ? attempt.reason : undefined;
  useEffect(() => onPending(pending), [pending, onPending]);
  const isBusy = tool.kind !== 'idle';
  useEffect(() => {
    if (!isBusy) return undefined;
    // Wherever the focus is: a verb's button has it while its man is pointed at.
    const giveUp = (event: KeyboardEvent): void => {
      if (event.key === 'Escape') setTool(idleTool);
    };
    window.addEventListener('keydown', giveUp);
    return () => window.removeEventListener('keydown', giveUp);
  }, [isBusy]);

  const give = (next: FieldOrder): void => {
    const { order: exact } = snap(next);
    const made = editor.apply(orderLabel(exact), (entry, ground) => orderEdit(entry, ground, shown, exact));
    // A pass from a step that holds one already made a step of its own: the coach goes on there.
    if (made?.at !== undefined && made.at.beat !== shown.beat) {
      const { play: after } = editor.read(made.play);
      const at = after === undefined ? undefined : stepOfBeat(after, script, made.at.beat);
      if (at !== undefined) change({ step: at });
    }
  };
  const onTool = (event: ToolEvent): void => {
    const answer = nextTool(tool, event, shown);
    setTool(answer.tool);
    if ('reach' in event) setReach(event.reach);
    if (answer.select !== undefined) change({ selected: answer.select ?? undefined, notice: undefined });
    if (answer.order !== undefined) give(answer.order);
  };
  // Who chose a verb by keys chooses whom it is for by keys too.
  const onSelect = (spot: string): void => {
    const at = shown.picture.places[spot];
    if (tool.kind === 'aiming' && at !== undefined) onTool({ kind: 'up', at, reach: ownReach });
    else change({ selected: spot });
  };
  const onNudge = (grip: Grip, to: Point): void => {
    const edit = nudgeOrder(grip, to, step);
    if (edit !== undefined)
      editor.apply(
        orderLabel(edit),
        (entry, ground) => orderEdit(entry, ground, shown, edit),
        `keys:${orderLabel(edit)}`,
      );
  };
  const scene = useMemo(() => playScene(play, Math.min(step, shown.step), field), [play, step, shown.step, field]);
  const aiming = tool.kind === 'aiming' ? tool : undefined;
  const mark = aimMark(tool, shown);
  const { level } = editor.ground;
  const marked =
    byKeys && mark !== undefined
      ? orderReadout(exactOrder({ kind: 'send', by: mark.by, to: mark.at }, shown), undefined, shown, level)
      : undefined;
  const readout = orderReadout(snapped, refusal, shown, level) ?? marked;
  const hasBall = selected !== undefined && (selected === shown.ballAfter || selected === shown.picture.ball);

  return (
    <div className={styles.pane}>
      <div className={styles.field}>
        <FieldEditor
          title={scene.title}
          description={scene.description}
          marks={useMemo(
            () => stepMarks(drawn, shown.step, undefined, step === 0 && !isNarrow),
            [drawn, shown.step, step, isNarrow],
          )}
          grips={drawn === play ? shown.grips : fieldStep(drawn, step).grips}
          field={field}
          view={view}
          palette={palette}
          selected={selected}
          readout={readout}
          aiming={aiming !== undefined}
          aim={mark}
          onTool={onTool}
          onNudge={onNudge}
          onSelect={onSelect}
        />
      </div>
      <div className={styles.below}>
        {shown.beat !== undefined && (
          <div className={styles.verbs}>
            {selected !== undefined && (
              <VerbBar
                by={selected}
                hasBall={hasBall}
                aiming={aiming?.verb}
                onVerb={(verb) => onTool({ kind: 'choose', by: selected, verb })}
              />
            )}
          </div>
        )}
        <p className={styles.hint} aria-live="polite">
          {marked !== undefined && mark !== undefined
            ? markHint(mark, readout?.lines ?? [])
            : tool.kind === 'aiming'
              ? aimHint(tool, byFinger)
              : hintFor(selected, shown.beat !== undefined, hasBall)}
        </p>
      </div>
    </div>
  );
}

/** The same object as long as it means the same: what hangs on it is not done anew for each pixel. */
function useSame<T extends { readonly key: string }>(value: T | undefined): T | undefined {
  const kept = useRef(value);
  if (kept.current?.key !== value?.key) kept.current = value;
  return kept.current;
}

// The restart lies far out: it is in the picture of the set only, and only where there is room; its figures are beside it.
function viewOf(play: Play, withRestart: boolean): View {
  const { restart } = play.start;
  const places = play.spots.map(({ at }) => at);
  return viewAround(withRestart ? [...places, { x: restart.x, y: restart.y + 1 }] : places);
}

function nudgeOrder(grip: Grip, to: Point, step: number): FieldOrder | undefined {
  switch (grip.kind) {
    case 'restart':
      return { kind: 'moveRestart', to };
    case 'point':
      return { kind: 'movePoint', beat: grip.beat, action: grip.action, point: grip.point, to };
    case 'man':
      return step === 0 ? { kind: 'moveHome', spot: grip.spot, to } : undefined;
    default:
      return exhaustive(grip);
  }
}

/** What undo calls it. */
function orderLabel(order: FieldOrder): string {
  switch (order.kind) {
    case 'moveHome':
      return `move ${order.spot}`;
    case 'moveRestart':
      return 'move the restart';
    case 'movePoint':
      return `move a way in "${order.beat}"`;
    case 'throwTo':
      return `throw to ${order.to}`;
    case 'send':
      return `send ${order.by}`;
    case 'tell':
      return `tell ${order.by} to ${order.verb}`;
    default:
      return exhaustive(order);
  }
}

function hintFor(selected: string | undefined, inStep: boolean, hasBall: boolean): string {
  if (!inStep) return 'Drag a man to where he stands. Then choose a step to say what happens.';
  if (selected === undefined) return 'Drag the ball to a man to pass, a man to send him. Tap a man for more.';
  return hasBall
    ? `Drag ${selected} to a man to pass, to the goal to shoot, to the grass to carry, or choose above.`
    : `Drag ${selected} to where he goes, or choose above.`;
}

/** Said anew at each step of the mark: where it is, and how far that is. */
function markHint({ by, verb }: AimMark, lines: readonly string[]): string {
  return `${by} ${verb}: ${lines.filter((line) => line !== '').join(', ')}. Enter takes this place, Escape gives it up.`;
}

function aimHint({ by, verb, place }: Extract<Tool, { kind: 'aiming' }>, byFinger: boolean): string {
  const giveUp = byFinger ? `Tap ${verb} again to give it up.` : 'Escape gives it up.';
  if (aimOf[verb] === 'placeAndMan')
    return place === undefined
      ? `Tap the man whose defender is picked, or first where to stand. ${giveUp}`
      : `Now tap the man whose defender is picked. ${giveUp}`;
  if (aimOf[verb] === 'man') return `Tap the man: ${by} ${verb} to whom? ${giveUp}`;
  const means = byFinger ? 'Tap the place' : 'Tap the place, or move the mark with the arrow keys';
  return `${means}: ${by} ${verb} to where? ${giveUp}`;
}

function exhaustive(value: never): never {
  throw new TypeError(`unknown kind: ${JSON.stringify(value)}`);
}
