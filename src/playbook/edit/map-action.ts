import type { Cue, Order, Point, Read, SpotId, Trigger } from '../../engine/index.ts';

/** What becomes of the names and the places in a phrase. */
export interface PhraseMap {
  spot(id: SpotId): SpotId;
  place(point: Point): Point;
}

/** The action with every spot and every place mapped. */
export function mapAction<A extends Order>(action: A, map: PhraseMap): A {
  return mapAnyAction(action, map) as A;
}

function mapAnyAction(action: Order, { spot, place }: PhraseMap): Order {
  const by = spot(action.by);
  switch (action.kind) {
    case 'pass':
      return { ...action, by, to: spot(action.to) };
    case 'carry':
    case 'run':
      return { ...action, by, path: action.path.map(place) };
    case 'pick':
      return { ...action, by, at: place(action.at), on: spot(action.on) };
    case 'seal':
      return { ...action, by, on: spot(action.on) };
    case 'fake':
      return { ...action, by, toward: spot(action.toward) };
    case 'hold':
    case 'shot':
    case 'runIn':
    case 'reset':
      return { ...action, by };
    case 'stepIn':
      return { ...action, by, to: place(action.to) };
    default:
      return exhaustive(action);
  }
}

/** The trigger with every spot mapped. */
export function mapTrigger(trigger: Trigger, spot: PhraseMap['spot']): Trigger {
  switch (trigger.kind) {
    case 'start':
    case 'call':
      return trigger;
    case 'catch':
      return { kind: 'catch', by: spot(trigger.by) };
    case 'pass':
      return { kind: 'pass', from: spot(trigger.from), ...(trigger.to !== undefined && { to: spot(trigger.to) }) };
    case 'arrival':
      return { kind: 'arrival', who: spot(trigger.who) };
    default:
      return exhaustive(trigger);
  }
}

/** The read with every spot and every place mapped. */
export function mapRead(read: Read, map: PhraseMap): Read {
  return {
    ...read,
    carrier: map.spot(read.carrier),
    cues: read.cues.map((cue) => mapCue(cue, map.spot)),
    then: mapAction(read.then, map),
  };
}

function mapCue(cue: Cue, spot: PhraseMap['spot']): Cue {
  return 'who' in cue ? { kind: cue.kind, who: spot(cue.who) } : cue;
}

/** Every spot that an action names, the man who acts first. */
export function spotsIn(action: Order): readonly SpotId[] {
  const named: SpotId[] = [];
  mapAction(action, {
    spot(id) {
      named.push(id);
      return id;
    },
    place: (point) => point,
  });
  return named;
}

function exhaustive(value: never): never {
  throw new TypeError(`unknown kind in a play: ${JSON.stringify(value)}`);
}
