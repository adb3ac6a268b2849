import type { Point } from '../geometry/point.ts';
import { passStyleOf } from '../looks/pass-style.ts';
import type { Play, Read } from '../offense/play.ts';
import { type CarrierAction, holdSeconds } from './carrier-actions.ts';

/** What a read says when it asks for an action of a carrier who stands `at`, yards. */
export function orderOfAction(play: Play, carrier: number, action: CarrierAction, at: Point): Read['then'] {
  const by = play.spots[carrier].id;
  switch (action.kind) {
    case 'shoot':
      return { kind: 'shot', by };
    case 'pass': {
      const places = play.spots.map((spot, man) => (man === carrier ? at : spot.at));
      return { kind: 'pass', by, to: play.spots[action.to].id, style: passStyleOf(places, carrier, action.to) };
    }
    case 'stepIn':
      return { kind: 'runIn', by };
    case 'fake':
      return { kind: 'fake', by, toward: play.spots[action.toward].id };
    case 'hold':
      return { kind: 'hold', by, seconds: holdSeconds };
    case 'reset':
      return { kind: 'reset', by };
    case 'taught':
      return play.reads[action.read].then;
    default:
      return exhaustive(action);
  }
}

function exhaustive(action: never): never {
  throw new TypeError(`unknown action: ${JSON.stringify(action)}`);
}
