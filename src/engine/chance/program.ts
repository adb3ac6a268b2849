import type { Point } from '../geometry/point.ts';
import type {
  Action,
  Beat,
  Cue,
  MateCue,
  Play,
  Read,
  ReadOrder,
  RunKind,
  SafetyDuty,
  SpotId,
  Trigger,
} from '../offense/play.ts';

/**
 * A play with every spot and beat replaced by its number, so that a step looks nothing up by name.
 * Offense indices follow the order of the play's spots; paths are x, y, x, y ... in yards.
 */
export interface Program {
  readonly spotIds: readonly SpotId[];
  /** Home of each man: x at 2i, y at 2i + 1. */
  readonly homes: Float64Array;
  readonly safety: readonly SafetyDuty[];
  readonly starter: number;
  readonly restart: Point;
  readonly resetTo: number;
  readonly resetAgain: boolean;
  readonly script: Script;
  /** What replaces the script in the last ten seconds; null when it goes on unchanged. */
  readonly lastTen: Script | null;
}

export interface Script {
  readonly beats: readonly CompiledBeat[];
  readonly reads: readonly CompiledRead[];
  /** For each carrier, the mates whom his reads ask about or throw to: bit i for mate i. */
  readonly readMates_byCarrier: Uint8Array;
}

export interface CompiledBeat {
  readonly id: string;
  readonly trigger: CompiledTrigger;
  readonly actions: readonly CompiledAction[];
}

export type CompiledTrigger =
  | { readonly kind: 'start' }
  | { readonly kind: 'catch'; readonly by: number }
  /** `to` is -1 when any receiver will do. */
  | { readonly kind: 'pass'; readonly from: number; readonly to: number }
  | { readonly kind: 'arrival'; readonly who: number }
  | { readonly kind: 'call'; readonly beat: number; readonly seconds: number };

export type PassStyle = 'adjacent' | 'skip' | 'feed';

export type CompiledAction =
  | { readonly kind: 'pass'; readonly by: number; readonly to: number; readonly style: PassStyle }
  | { readonly kind: 'carry'; readonly by: number; readonly path: Float64Array }
  | {
      readonly kind: 'run';
      readonly run: RunKind;
      readonly by: number;
      readonly path: Float64Array;
      readonly waits: boolean;
    }
  | { readonly kind: 'pick'; readonly by: number; readonly path: Float64Array; readonly on: number }
  | { readonly kind: 'seal'; readonly by: number; readonly on: number }
  | { readonly kind: 'fake'; readonly by: number; readonly toward: number }
  | { readonly kind: 'hold'; readonly by: number; readonly seconds: number }
  | { readonly kind: 'stepIn'; readonly by: number; readonly path: Float64Array }
  | { readonly kind: 'shot'; readonly by: number };

/** What a read has its carrier do. */
export type CompiledOrder = CompiledAction | { readonly kind: 'runIn' | 'reset'; readonly by: number };

export type CompiledCue =
  | { readonly kind: Exclude<Cue, MateCue>['kind'] }
  | { readonly kind: MateCue['kind']; readonly who: number };

export interface CompiledRead {
  readonly carrier: number;
  /** Index of the beat it belongs to; -1 for every beat. */
  readonly during: number;
  readonly cues: readonly CompiledCue[];
  readonly then: CompiledOrder;
}

/**
 * Compile a play that has been checked.
 * @throws RangeError when a spot or beat is named that the play does not have.
 */
export function compileProgram(play: Play): Program {
  const spotIds = play.spots.map((spot) => spot.id);
  const spot = (id: SpotId): number => indexOf(spotIds, id, 'spot');
  const compile = (beats: readonly Beat[], reads: readonly Read[]): Script => compileScript(beats, reads, spot);
  return {
    spotIds,
    homes: flatten(play.spots.map((each) => each.at)),
    safety: play.spots.map((each) => each.safety),
    starter: spot(play.start.ball),
    restart: play.start.restart,
    resetTo: spot(play.reset.ball),
    resetAgain: play.reset.then === 'again',
    script: compile(play.beats, play.reads),
    lastTen: play.lastTen === undefined ? null : compile(play.lastTen.beats, play.lastTen.reads),
  };
}

function compileScript(beats: readonly Beat[], reads: readonly Read[], spot: (id: SpotId) => number): Script {
  const beatIds = beats.map((beat) => beat.id);
  const compiled = reads.map((read) => ({
    carrier: spot(read.carrier),
    during: read.during === undefined ? -1 : indexOf(beatIds, read.during, 'beat'),
    cues: read.cues.map((cue) => compileCue(cue, spot)),
    // `then` is what the document calls the action; the compiled form keeps the word.
    then: compileReadOrder(read.then, spot),
  }));
  return {
    beats: beats.map((beat) => ({
      id: beat.id,
      trigger: compileTrigger(beat.when, spot, beatIds),
      actions: beat.actions.map((action) => compileAction(action, spot)),
    })),
    reads: compiled,
    readMates_byCarrier: readMates(compiled),
  };
}

function readMates(reads: readonly CompiledRead[]): Uint8Array {
  const mates_byCarrier = new Uint8Array(6);
  for (const read of reads) {
    for (const cue of read.cues) if ('who' in cue) mates_byCarrier[read.carrier] |= 1 << cue.who;
    if (read.then.kind === 'pass') mates_byCarrier[read.carrier] |= 1 << read.then.to;
  }
  return mates_byCarrier;
}

function compileTrigger(trigger: Trigger, spot: (id: SpotId) => number, beatIds: readonly string[]): CompiledTrigger {
  switch (trigger.kind) {
    case 'start':
      return trigger;
    case 'catch':
      return { kind: 'catch', by: spot(trigger.by) };
    case 'pass':
      return { kind: 'pass', from: spot(trigger.from), to: trigger.to === undefined ? -1 : spot(trigger.to) };
    case 'arrival':
      return { kind: 'arrival', who: spot(trigger.who) };
    case 'call':
      return { kind: 'call', beat: indexOf(beatIds, trigger.beat, 'beat'), seconds: trigger.seconds };
  }
}

/** Compile one order to a man of a play. RangeError when a spot is named that the play does not have. */
export function compileOrder(play: Play, order: ReadOrder): CompiledOrder {
  const spotIds = play.spots.map(({ id }) => id);
  return compileReadOrder(order, (id) => indexOf(spotIds, id, 'spot'));
}

function compileReadOrder(order: ReadOrder, spot: (id: SpotId) => number): CompiledOrder {
  switch (order.kind) {
    case 'reset':
      return { kind: 'reset', by: spot(order.by) };
    case 'runIn':
      return { kind: 'runIn', by: spot(order.by) };
    default:
      return compileAction(order, spot);
  }
}

function compileAction(action: Action, spot: (id: SpotId) => number): CompiledAction {
  const by = spot(action.by);
  switch (action.kind) {
    case 'pass':
      return { kind: 'pass', by, to: spot(action.to), style: action.style };
    case 'carry':
      return { kind: 'carry', by, path: flatten(action.path) };
    case 'run':
      return { kind: 'run', run: action.run, by, path: flatten(action.path), waits: action.go === 'whenOpen' };
    case 'pick':
      return { kind: 'pick', by, path: flatten([action.at]), on: spot(action.on) };
    case 'seal':
      return { kind: 'seal', by, on: spot(action.on) };
    case 'fake':
      return { kind: 'fake', by, toward: spot(action.toward) };
    case 'hold':
      return { kind: 'hold', by, seconds: action.seconds };
    case 'stepIn':
      return { kind: 'stepIn', by, path: flatten([action.to]) };
    case 'shot':
      return { kind: 'shot', by };
  }
}

/** One cue by the numbers that `spot` gives to its mate. */
export function compileCue(cue: Cue, spot: (id: SpotId) => number): CompiledCue {
  return 'who' in cue ? { kind: cue.kind, who: spot(cue.who) } : cue;
}

function flatten(points: readonly Point[]): Float64Array {
  return Float64Array.from(points.flatMap((point) => [point.x, point.y]));
}

function indexOf(ids: readonly string[], id: string, what: string): number {
  const index = ids.indexOf(id);
  if (index < 0) throw new RangeError(`unknown ${what}: ${id} (expected ${ids.join(', ')})`);
  return index;
}
