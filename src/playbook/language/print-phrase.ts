import type { Action, Cue, Order, Point, Trigger } from '../../engine/index.ts';
import { cuePhrases } from './cue-phrases.ts';
import { runWords } from './parse-action.ts';

/** The spot by whose name a place is to be written; undefined for places that are written as x,y. */
export type PlaceNamer = (place: Point) => string | undefined;

const noName: PlaceNamer = () => undefined;

/** The action in the play language, such that reading it gives the action back: `C pop to 6,9`. */
export function printAction(action: Action, nameOf: PlaceNamer = noName): string {
  return `${action.by} ${printCarrierAction(action, nameOf)}`;
}

/** The action without the man, as a read ends: `skip WL`. */
export function printCarrierAction(action: Order, nameOf: PlaceNamer = noName): string {
  switch (action.kind) {
    case 'pass':
      return `${action.style === 'adjacent' ? 'pass' : action.style} ${action.to}`;
    case 'carry':
      return `carry ${printPath(action.path, nameOf)}`;
    case 'run': {
      const verb = Object.entries(runWords).find(([, kind]) => kind === action.run)![0];
      return `${verb} ${printPath(action.path, nameOf)}${action.go === 'whenOpen' ? ' when open' : ''}`;
    }
    case 'pick':
      return `pick at ${printPlace(action.at, nameOf)} on ${action.on}`;
    case 'seal':
      return `seal on ${action.on}`;
    case 'fake':
      return `fake ${action.toward}`;
    case 'hold':
      return `hold ${action.seconds}`;
    case 'stepIn':
      return `step to ${printPlace(action.to, nameOf)}`;
    case 'shot':
      return 'shoot';
    case 'runIn':
      return 'step in';
    case 'reset':
      return 'reset';
    default:
      return exhaustive(action);
  }
}

export function printTrigger(trigger: Trigger): string {
  switch (trigger.kind) {
    case 'start':
      return 'start';
    case 'catch':
      return `catch ${trigger.by}`;
    case 'pass':
      return trigger.to === undefined ? `pass ${trigger.from}` : `pass ${trigger.from} to ${trigger.to}`;
    case 'arrival':
      return `arrive ${trigger.who}`;
    case 'call':
      return `call ${trigger.beat} + ${trigger.seconds}`;
    default:
      return exhaustive(trigger);
  }
}

export function printCue(cue: Cue): string {
  const phrase = cuePhrases[cue.kind];
  return 'who' in cue ? `${phrase} ${cue.who}` : phrase;
}

function printPath(path: readonly Point[], nameOf: PlaceNamer): string {
  const last = path.length - 1;
  return path.map((point, i) => `${i === last ? 'to' : 'via'} ${printPlace(point, nameOf)}`).join(' ');
}

function printPlace(point: Point, nameOf: PlaceNamer): string {
  return nameOf(point) ?? `${point.x},${point.y}`;
}

function exhaustive(value: never): never {
  throw new TypeError(`unknown kind in a phrase: ${JSON.stringify(value)}`);
}
