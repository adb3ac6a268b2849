import type { Movement, MovementId, ProbeAdvice, SignId } from '../../engine/index.ts';

/** A sign as a statement that somebody on the bench says yes or no to. */
export function signWords(sign: SignId): string {
  return statements[sign];
}

const statements: Readonly<Record<SignId, string>> = {
  'crease-glued': 'One man stays within a step of the crease man wherever the ball goes',
  'crease-man-out': 'The man from the crease came out to the ball on top',
  'crease-man-follows': 'The crease man popped out and his man went with him',
  'one-in-front': 'Ball on top: one man alone in the front row',
  'two-in-front': 'Ball on top: two men level in the front row',
  'changed-places': 'After one lap of the ball two men or more have another place than before',
  'there-on-catch': 'Somebody is there when most passes are caught',
  'two-on-ball': 'Two men went to the ball outside',
  'skip-lane': 'Ball on top: a man stands in the lane of the skip to a low wing',
  'both-pipes': 'Ball behind: one man waits at each pipe',
  'goes-behind': 'Ball behind: a defender went below the goal line',
  'carrier-passed-on': 'The carrier ran across the top and another man took him over',
  'man-follows': 'Two of ours traded places and a man went with one of them',
  'locked-man': 'One man stays with the same man of ours wherever the ball goes',
};

/** A few words for a sign, as after "if" in a rule: "one man alone is in front". */
export function signClause(sign: SignId, seen: boolean): string {
  const [yes, no] = clauses[sign];
  return seen ? yes : no;
}

const clauses: Readonly<Record<SignId, readonly [string, string]>> = {
  'crease-glued': ['one man never leaves the crease man', 'nobody stays with the crease man'],
  'crease-man-out': ['the man from the crease comes out to the top', 'the man from the crease stays in'],
  'crease-man-follows': ["the crease man's man goes out with him", "the crease man's man stays in"],
  'one-in-front': ['one man alone is in front', 'it is not one man alone in front'],
  'two-in-front': ['two are level in front', 'it is not two in front'],
  'changed-places': ['they have changed places after the lap', 'each is back in his own place after the lap'],
  'there-on-catch': ['somebody is there on most catches', 'nobody is there on most catches'],
  'two-on-ball': ['two go to the ball', 'only one goes to the ball'],
  'skip-lane': ['a man stands in the skip lane', 'the skip lane is empty'],
  'both-pipes': ['one man waits at each pipe', 'not both pipes are held'],
  'goes-behind': ['a man goes below the goal line', 'nobody goes below the goal line'],
  'carrier-passed-on': ['another man takes the carrier over', 'the same man stays with the carrier'],
  'man-follows': ['a man goes with one of the two who trade', 'nobody goes with the two who trade'],
  'locked-man': ['one man never leaves the same man of ours', 'nobody stays with one man of ours'],
};

/** A movement as a call: "lap of the ball to the right". */
export function movementName(movement: MovementId): string {
  return names[movement];
}

const names: Readonly<Record<MovementId, string>> = {
  'lap-right': 'lap of the ball, right first',
  'lap-left': 'lap of the ball, left first',
  reverse: 'one pass, back, and to the other side',
  skip: 'skip over a man and back',
  behind: 'ball behind the goal',
  carry: 'carry across the top',
  pop: 'pop of the crease man',
  swap: 'two trade places',
};

/** The same with its men: "P, TR, WR, TR, P". `spots` are the names of the six. */
export function movementWay(
  {
    ball,
    movers,
    id,
  }: { readonly id: MovementId; readonly ball: readonly number[]; readonly movers: readonly number[] },
  spots: readonly string[],
): string {
  const way = ball.map((man) => spots[man] ?? '').join(', ');
  const [first, second] = movers.map((man) => spots[man] ?? '');
  switch (id) {
    case 'carry':
      return `${first} carries across the top and throws back to ${spots[ball.at(-1)!] ?? ''}`;
    case 'pop':
      return `${way}, and ${first} pops out`;
    case 'swap':
      return `${way}, while ${first} and ${second} trade places`;
    case 'lap-right':
    case 'lap-left':
    case 'reverse':
    case 'skip':
    case 'behind':
      return way;
    default:
      return exhaustive(id);
  }
}

/** One line for the man who begins: what to watch, and what to call for it. */
export function triggerRule(watch: SignId, callIfSeen: string, callIfNot: string): string {
  if (callIfSeen === callIfNot) return `Call ${callIfSeen} either way.`;
  return `If ${signClause(watch, true)}: ${callIfSeen}. If ${signClause(watch, false)}: ${callIfNot}.`;
}

/** Less than this is not worth a movement of its own. Goals a man-up. */
const worthwhile = 0.002;

/** What to run first and what to call after it, or that nothing is worth it. `calls` are the names of the calls, `spots` those of the six. */
export function probeRule(
  { movement: id, watch, gain, callIfSeen, callIfNot }: ProbeAdvice['movements'][number],
  movements: readonly Movement[],
  { spots, calls }: { readonly spots: readonly string[]; readonly calls: readonly string[] },
): string {
  if (gain < worthwhile) {
    return `No movement is worth running for what it tells: call ${calls[callIfNot] ?? ''}. The best was the ${movementName(id)}.`;
  }
  const movement = movements.find((one) => one.id === id)!;
  const name = movementName(id);
  const way = `${name.charAt(0).toUpperCase()}${name.slice(1)}: ${movementWay(movement, spots)}.`;
  return `${way} ${triggerRule(watch, calls[callIfSeen] ?? '', calls[callIfNot] ?? '')}`;
}

function exhaustive(id: never): never {
  throw new TypeError(`unknown movement: ${JSON.stringify(id)}`);
}
