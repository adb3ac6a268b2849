import type { GivenPenalty, TeamSide } from '../../engine/index.ts';
import type { BenchGame, BenchTap } from './bench-event.ts';
import { tapped } from './bench-event.ts';

/** A game of four periods of ten minutes against the demo's first opponent, nothing tapped yet. */
export const freshGame: BenchGame = {
  id: 'm-2026-03-14',
  seed: 11,
  settings: {
    opponent: 'copper-falls',
    date: '2026-03-14',
    periodSeconds: 600,
    periods: 4,
    runningTime: false,
    sides: 'right',
    learnt: 3,
    trust: 0.7,
  },
  events: [],
};

/** When the game of `gameOf` begins by the clock of the device, s since 1970. */
export const wallAtStart = 1_770_000_000;

/**
 * A game from lines such as "0 start", "9 fouls them 60 fixed", "9 both them 30 us 60", "20 result goal", "30 set 2 410", "5 flag them": the number is the
 * second of the device's clock after the start.
 */
export function gameOf(lines: readonly string[], game: BenchGame = freshGame): BenchGame {
  return lines.reduce((before, line) => {
    const [at, ...words] = line.split(' ');
    return tapped(before, tapOf(words), wallAtStart + Number(at));
  }, game);
}

function tapOf(words: readonly string[]): BenchTap {
  const [kind, one = '', two = ''] = words;
  switch (kind) {
    case 'start':
    case 'stop':
      return { kind: 'clock', does: kind };
    case 'set':
      return { kind: 'clockSet', period: Number(one), left: Number(two) };
    case 'period':
      return { kind, period: Number(one) };
    case 'flag':
      return { kind, on: one as TeamSide };
    case 'goal':
    case 'timeout':
      return { kind, by: one as TeamSide };
    case 'fouls':
    case 'both':
      return { kind: 'fouls', penalties: penaltiesOf(words.slice(1)), simultaneous: kind === 'both' };
    case 'boxSet':
      return { kind, penalty: Number(one), left: Number(two) };
    case 'letGo':
      return { kind, penalty: Number(one) };
    case 'result':
      return { kind, result: one as Extract<BenchTap, { kind: 'result' }>['result'] };
    case 'look':
      return { kind, look: { kind: 'feed', from: one, to: two }, scorer: 16 };
    case 'call':
      return { kind: 'called', play: one, fromSide: 'right', drawn: true };
    case 'seen':
      return { kind, scheme: one };
    case 'absent':
      return { kind, man: Number(one), isAbsent: two !== 'no' };
    case 'flagOff':
    case 'begun':
    case 'shot':
      return { kind };
    default:
      throw new TypeError(`unknown tap: ${words.join(' ')}`);
  }
}

/** "them 30 us 60 fixed them 60 man 7" as penalties. */
function penaltiesOf(words: readonly string[]): readonly GivenPenalty[] {
  const penalties: GivenPenalty[] = [];
  for (let at = 0; at < words.length; at++) {
    const last = penalties.at(-1);
    if (words[at] === 'fixed') penalties[penalties.length - 1] = { ...last!, fixedSeconds: last!.seconds };
    else if (words[at] === 'man') penalties[penalties.length - 1] = { ...last!, man: Number(words[++at]) };
    else penalties.push({ side: words[at] as TeamSide, man: null, seconds: Number(words[++at]), fixedSeconds: 0 });
  }
  return penalties;
}
