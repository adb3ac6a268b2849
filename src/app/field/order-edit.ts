import type { Action, Point, SpotId } from '../../engine/index.ts';
import {
  type ActionAddress,
  movePathPoint,
  moveSpot,
  type PlayEdit,
  type PlayEntry,
  type PlayGround,
  passTo,
  putAction,
  setRestart,
} from '../../playbook/index.ts';
import type { FieldOrder, Verb } from './field-order.ts';
import type { FieldStep } from './grips.ts';

/** The edit that an order on the field asks for. Places are taken as they are given: whoever wants them snapped does it before. */
export function orderEdit(play: PlayEntry, ground: PlayGround, step: FieldStep, order: FieldOrder): PlayEdit {
  switch (order.kind) {
    case 'moveHome':
      return moveSpot(play, ground, order.spot, order.to);
    case 'moveRestart':
      return setRestart(play, ground, order.to);
    case 'movePoint': {
      const at: ActionAddress = { beat: order.beat, action: order.action };
      return movePathPoint(play, ground, at, order.point, order.to);
    }
    case 'throwTo':
      return step.beat === undefined ? inTheSet() : passTo(play, ground, step.beat, order.to);
    case 'send':
      return tellIn(play, ground, step, { by: order.by, verb: sendVerb(step, order.by), at: order.to, on: undefined });
    case 'tell':
      return tellIn(play, ground, step, { by: order.by, verb: order.verb, at: order.at, on: order.on });
    default:
      return exhaustive(order);
  }
}

/** What a man is told: a verb with its aim, as far as it has one. */
export interface Told {
  readonly by: SpotId;
  readonly verb: Verb;
  readonly at: Point | undefined;
  readonly on: SpotId | undefined;
}

/** Tells a man something in a beat; what he is told there of the same kind gives way. */
export function tellEdit(play: PlayEntry, ground: PlayGround, beat: string, { by, verb, at, on }: Told): PlayEdit {
  const action = actionOf(by, verb, at, on);
  return action === undefined
    ? { kind: 'refused', reason: `Say where or to whom: ${by} ${verb}.` }
    : putAction(play, ground, beat, action);
}

function sendVerb(step: FieldStep, by: SpotId): Verb {
  return by === step.ballAfter || by === step.picture.ball ? 'carry' : 'cut';
}

function tellIn(play: PlayEntry, ground: PlayGround, step: FieldStep, told: Told): PlayEdit {
  return step.beat === undefined ? inTheSet() : tellEdit(play, ground, step.beat, told);
}

function inTheSet(): PlayEdit {
  return {
    kind: 'refused',
    reason: 'This is the set, before anything happens. Choose a step to say what the men do.',
  };
}

/** How long a man holds the ball who is just told to, s: a look at the defense (ours, no source). */
const usualHold = 0.8;

function actionOf(by: SpotId, verb: Verb, at: Point | undefined, on: SpotId | undefined): Action | undefined {
  switch (verb) {
    case 'pass':
      return on === undefined ? undefined : { kind: 'pass', by, to: on, style: 'adjacent' };
    case 'skip':
    case 'feed':
      return on === undefined ? undefined : { kind: 'pass', by, to: on, style: verb };
    case 'fake':
      return on === undefined ? undefined : { kind: 'fake', by, toward: on };
    case 'seal':
      return on === undefined ? undefined : { kind: 'seal', by, on };
    case 'pick':
      return at === undefined || on === undefined ? undefined : { kind: 'pick', by, at, on };
    case 'hold':
      return { kind: 'hold', by, seconds: usualHold };
    case 'shoot':
      return { kind: 'shot', by };
    case 'carry':
      return at === undefined ? undefined : { kind: 'carry', by, path: [at] };
    case 'step':
      return at === undefined ? undefined : { kind: 'stepIn', by, to: at };
    default:
      return at === undefined ? undefined : { kind: 'run', run: runOf[verb], by, path: [at], go: goOf(verb) };
  }
}

const runOf = {
  cut: 'cut',
  pop: 'pop',
  sneak: 'sneak',
  flash: 'flash',
  replace: 'replace',
  backup: 'backUp',
  getback: 'getBack',
} as const;

// Who sneaks goes when a head is turned: that is what the word means.
function goOf(verb: keyof typeof runOf): 'now' | 'whenOpen' {
  return verb === 'sneak' ? 'whenOpen' : 'now';
}

function exhaustive(order: never): never {
  throw new TypeError(`unknown order: ${JSON.stringify(order)}`);
}
