import type { Play, SpotId } from '../../engine/index.ts';
import type { Practice, PracticeBlock, PracticeRun } from '../../playbook/index.ts';
import { practiceKindWords, practiceSituationWords, readWords } from '../../render/index.ts';
import { isThrown } from './look-worth.ts';
import { type TaughtLook, taughtLooks } from './taught-looks.ts';
import { lookDone, type SchemeWords } from './why-words.ts';

/** Enough for two sixes. */
const twoUnits = 12;

/** What a block is called on the page: "Walk-through", "3 v 2: X skips to TR". `play` is there when its play is to be named. */
export function blockTitle(block: PracticeBlock, play: Play | undefined, named: boolean): string {
  const of = named && play !== undefined ? `, ${play.name}` : '';
  const [run] = block.runs ?? [];
  if (block.kind === 'part' && block.spots !== undefined)
    return `${partName(block.spots)}${run === undefined || play === undefined ? '' : `: ${runDone(run, play)}`}${of}`;
  if (block.kind === 'situation' && block.situation !== undefined)
    return `${practiceSituationWords[block.situation]}${of}`;
  return `${practiceKindWords[block.kind]}${of}`;
}

/** "3 v 2". */
export function partName(men: readonly SpotId[]): string {
  // A line is not broken inside of it.
  return `${men.length}\u00a0v\u00a0${men.length - 1}`;
}

/** "2½ min, 4 reps". */
export function blockMeasure({ minutes, reps, kind }: PracticeBlock): string {
  const what = kind === 'keeper' ? 'shots' : reps === 1 ? 'rep' : 'reps';
  return reps === undefined || reps === 0 ? minuteWords(minutes) : `${minuteWords(minutes)}, ${reps} ${what}`;
}

/** Minutes as a coach writes them: "2½ min". */
export function minuteWords(minutes: number): string {
  const whole = Math.floor(minutes);
  const half = minutes - whole >= 0.5 ? '½' : '';
  return `${whole === 0 && half !== '' ? '' : whole}${half} min`;
}

/** How the reps are shared out, a line each: "X skips to TR, against Jump ×4". */
export function runLines(block: PracticeBlock, play: Play, scheme: SchemeWords): readonly string[] {
  const { runs = [] } = block;
  const isAlone = runs.length === 1;
  return runs.map((run, at) => {
    const against = run.scheme === undefined ? '' : `against ${scheme(run.scheme)}`;
    // Live it goes without saying.
    const done = run.look === undefined && block.kind === 'live' ? '' : runDone(run, play);
    const said = [done, against].filter((part) => part !== '').join(', ');
    const words = at === 0 ? capital(said) : said;
    return isAlone ? words : `${words} \u00d7${run.reps}`;
  });
}

/** "X skips to TR"; what a play does not teach has no kind of its own: "X finds TR (new)". */
export function runDone({ look = [] }: PracticeRun, play: Play): string {
  const [from, to = from] = look;
  if (from === undefined || to === undefined) return 'the whole play';
  const taught = taughtOf(play, from, to);
  if (taught !== undefined) return lookDone(taught);
  if (from === to) return `${from} shoots (new)`;
  return isThrown(play, { from, to }) ? `${to} shoots off ${from}'s pass (new)` : `${from} finds ${to} (new)`;
}

export function taughtOf(play: Play, from: SpotId, to: SpotId): TaughtLook | undefined {
  return taughtLooks(play).find((look) => look.from === from && look.to === to);
}

/** Who does what where, in short sentences. */
export function blockSetUp(
  block: PracticeBlock,
  practice: Pick<Practice, 'players' | 'keeper'>,
  scheme: SchemeWords,
): string {
  switch (block.kind) {
    case 'talk':
      return 'All at the board: the set, what starts it, who looks for what first.';
    case 'walk':
      return 'Six in their spots, no defense, no shot. On "freeze" each points at whom he looks for.';
    case 'skeleton':
      return `Six at full speed, no defense, on the stopwatch; a dropped ball goes on. ${
        practice.players >= twoUnits ? 'Two sixes in turn. ' : ''
      }It ends with a shot at the empty goal.`;
    case 'keeper':
      return 'A coach shoots: from outside and easy first, then low and off the hip.';
    case 'dummy':
      return 'Defense with sticks down shows the scheme that is named.';
    case 'part':
      return `${(block.spots ?? []).join(', ')}; ${block.spots?.[0] ?? ''} has the ball.${
        block.scheme === undefined ? '' : ` The defense plays it as ${scheme(block.scheme)}.`
      }`;
    case 'live':
      return `${practice.keeper === false ? '6 v 5' : '6 v 5 and a goalkeeper'}, 30 seconds on the clock, restart outside the box. Both units keep score.`;
    case 'situation':
      return situationWords(block, scheme);
    case 'water':
      return 'Everybody drinks; helmets off in the shade.';
    default:
      return exhaustive(block.kind);
  }
}

function situationWords({ situation, scheme }: PracticeBlock, name: SchemeWords): string {
  const against = scheme === undefined ? '' : ` against ${name(scheme)}`;
  switch (situation) {
    case 'flagDown':
      return `The flag is down: play on${against} until the ball is lost.`;
    case 'restart':
      return `Whistle, restart outside the box, and into the set${against}.`;
    case 'lastTen':
    case undefined:
      return `Ten seconds on the clock, counted aloud, live${against}.`;
    default:
      return exhaustive(situation);
  }
}

/** What the coach says: common errors of a man-up unit, turned round (common practice, no source), and the reads of the looks that are run. */
export function blockPoints(block: PracticeBlock, play: Play | undefined): readonly string[] {
  switch (block.kind) {
    case 'talk':
      return ['Two minutes at most, then move.'];
    case 'walk':
      return [
        'Sticks to the middle, hands free.',
        ...(play === undefined ? [] : [`Not there? ${play.reset.ball} gets it back.`]),
      ];
    case 'skeleton':
      return ['Catch moving, look, throw: a second each.', 'Stay wide, so that nobody guards two.'];
    case 'keeper':
      return ['Sees every ball before it is quick.'];
    case 'dummy':
    case 'part':
      return play === undefined ? [] : lookPoints(block, play);
    case 'live':
      return [...(play === undefined ? [] : [backUpWords(play)]), 'Ball lost: ride at once, find one.'];
    case 'situation':
      return ['A shot by three seconds left.'];
    case 'water':
      return [];
    default:
      return exhaustive(block.kind);
  }
}

/** Words of the reads of the looks that a block runs, two at most; then what every thrower and receiver is told. */
function lookPoints({ runs = [] }: PracticeBlock, play: Play): readonly string[] {
  const reads = runs.flatMap(({ look = [] }) => {
    const [from, to = from] = look;
    const taught = from === undefined || to === undefined ? undefined : taughtOf(play, from, to);
    return taught === undefined || taught.read === null ? [] : [`${capital(readWords(play.reads[taught.read]!))}.`];
  });
  return [
    ...[...new Set(reads)].slice(0, 2),
    'Thrower: eyes on the goal first, then to the stick side.',
    'Receiver: stick up before the ball comes; shoot on the catch.',
  ];
}

function backUpWords({ spots }: Play): string {
  const back = spots.filter(({ safety }) => safety === 'backUp').map(({ id }) => id);
  return back.length === 0
    ? 'No shot without a man behind the goal.'
    : `${back.join(' and ')} to the end line on every shot.`;
}

function capital(words: string): string {
  return `${words.charAt(0).toUpperCase()}${words.slice(1)}`;
}

function exhaustive(kind: never): never {
  throw new TypeError(`unknown kind: ${JSON.stringify(kind)}`);
}
