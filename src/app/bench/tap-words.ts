import { chanceResultWords } from '../../playbook/index.ts';
import { type BenchEvent, tappedLookWords } from '../../teach/index.ts';

/** What a tap was, in a few words: for Undo, and for who looks back. */
export function tapWords(event: BenchEvent): string {
  switch (event.kind) {
    case 'clock':
      return event.does === 'start' ? 'clock started' : 'clock stopped';
    case 'clockSet':
      return 'clock set';
    case 'period':
      return `period ${event.period}`;
    case 'flag':
      return event.on === 'them' ? 'flag on them' : 'flag on us';
    case 'flagOff':
      return 'flag taken up';
    case 'fouls':
      return event.penalties.length === 1
        ? `foul on ${event.penalties[0]!.side}`
        : `${event.penalties.length} fouls at once`;
    case 'letGo':
      return 'a man let go';
    case 'boxSet':
      return 'penalty time set';
    case 'goal':
      return event.by === 'us' ? 'goal for us' : 'goal for them';
    case 'begun':
      return 'ball is back';
    case 'called':
      return 'call';
    case 'seen':
      return 'what they play';
    case 'ticked':
      return 'a cue';
    case 'shot':
      return 'shot, ball kept';
    case 'result':
      return chanceResultWords[event.result];
    case 'look':
      return event.look === null ? 'another look' : tappedLookWords(event.look);
    case 'absent':
      return event.isAbsent ? `${event.man} is out` : `${event.man} is back`;
    case 'timeout':
      return 'timeout';
    default:
      return exhaustive(event);
  }
}

function exhaustive(event: never): never {
  throw new TypeError(`unknown tap: ${JSON.stringify(event)}`);
}
