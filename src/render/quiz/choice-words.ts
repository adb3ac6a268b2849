import { type MomentAction, orderOfAction, type Play, type Point } from '../../engine/index.ts';
import { seconds } from '../play-words.ts';

/**
 * What a man with the ball does, as it stands on the button of a quiz: "Feed C", "Go on with the play (pass to TL)". `drawn` is what going on with the play means, where
 * that is known.
 */
export function choiceWords(
  play: Play,
  carrier: number,
  action: MomentAction,
  at: Point,
  drawn: MomentAction | null = null,
): string {
  if (action.kind === 'goOn') {
    const words = drawn === null || drawn.kind === 'goOn' ? null : choiceWords(play, carrier, drawn, at);
    return words === null ? 'Go on with the play' : `Go on with the play (${lowerFirst(words)})`;
  }
  const order = orderOfAction(play, carrier, action, at);
  switch (order.kind) {
    case 'shot':
      return 'Shoot';
    case 'pass':
      return `${passWords[order.style]} ${order.to}`;
    case 'runIn':
    case 'stepIn':
      return 'Step in to shoot';
    case 'hold':
      return action.kind === 'hold' ? 'Hold it and look again' : `Hold it for ${seconds(order.seconds)}`;
    case 'carry':
      return 'Carry it';
    case 'fake':
      return `Fake to ${order.toward}`;
    case 'reset':
      return 'Call the reset';
    default:
      return exhaustive(order);
  }
}

const passWords = { adjacent: 'Pass to', skip: 'Skip to', feed: 'Feed' } as const;

/** Words of a button inside a sentence: "feed C". */
export function lowerFirst(words: string): string {
  return `${words.charAt(0).toLowerCase()}${words.slice(1)}`;
}

function exhaustive(order: never): never {
  throw new TypeError(`unknown order: ${JSON.stringify(order)}`);
}
