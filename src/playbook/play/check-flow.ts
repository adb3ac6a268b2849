import type { Action, Beat, Cue, Play, Read, SpotId } from '../../engine/index.ts';
import type { JsonPath } from '../json/json-node.ts';
import type { Report } from '../report.ts';
import { type Flow, followScript, type Script } from './flow.ts';

/** As many reads as a player keeps in mind, and cues in one of them (ours, from what coaches advise; no source for the numbers). */
const mostReads = 4;
const mostCues = 2;

/** Says which beats cannot start, who is told to use a ball that he cannot have, and which reads can never be used. */
export function checkFlow(play: Play, path: JsonPath, report: Report): void {
  checkScript(play, new Set([play.start.ball]), path, report);
  checkReset(play, path, report);
  if (play.lastTen === undefined) return;
  if (play.lastTen.beats.length === 0 && play.lastTen.reads.length === 0) {
    report.add(
      'last-ten-empty',
      [...path, 'lastTen'],
      '"lastTen" has neither beats nor reads, so nothing would change. Fill it or take it out.',
    );
  }
  // When ten seconds are left anybody may have the ball.
  checkScript(play.lastTen, new Set(play.spots.map((spot) => spot.id)), [...path, 'lastTen'], report);
}

function checkScript(script: Script, first: ReadonlySet<SpotId>, path: JsonPath, report: Report): void {
  const flow = followScript(script, first);
  for (const [i, beat] of script.beats.entries()) {
    const here = [...path, 'beats', i];
    if (flow.reachable.has(beat.id)) checkBall(beat, here, flow, report);
    else
      report.add(
        'beat-never-starts',
        [...here, 'on'],
        `The beat "${beat.id}" can never start: ${whyNot(beat, script, flow)}`,
      );
  }
  checkReads(script, path, flow, report);
}

function whyNot(beat: Beat, script: Script, flow: Flow): string {
  const { when } = beat;
  switch (when.kind) {
    case 'start':
      return 'it waits for the start.';
    case 'catch':
      return `nobody who can have the ball throws it to ${when.by}. Add a pass to ${when.by}, or let the beat wait for something else.`;
    case 'pass': {
      const receivers = [...flow.receiversOf(when.from)];
      if (receivers.length > 0) return `${when.from} throws only to ${receivers.join(' and ')}, not to ${when.to}.`;
      return `${when.from} never throws the ball. Add his pass, or let the beat wait for something else.`;
    }
    case 'arrival':
      return `${when.who} is never sent anywhere, so he never arrives. Add his run, or let the beat wait for something else.`;
    case 'call': {
      const called = script.beats.find((each) => each.id === when.beat);
      if (waitsForItself(beat, script))
        return 'it waits for itself. Let one of the beats in the ring wait for the ball.';
      return `it comes after the beat "${called?.id ?? when.beat}", which can never start.`;
    }
    default:
      return exhaustive(when);
  }
}

function waitsForItself(beat: Beat, script: Script): boolean {
  let next: Beat | undefined = beat;
  for (let i = 0; i <= script.beats.length; i++) {
    const when: Beat['when'] | undefined = next?.when;
    if (when?.kind !== 'call') return false;
    next = script.beats.find((each) => each.id === when.beat);
    if (next?.id === beat.id) return true;
  }
  return false;
}

/** Words for what only a man with the ball can do. */
const ballWords: Partial<Record<Action['kind'], string>> = {
  pass: 'throw',
  carry: 'carry',
  fake: 'fake',
  shot: 'shoot',
};
const offBall: ReadonlySet<Action['kind']> = new Set(['run', 'pick', 'seal']);

function checkBall(beat: Beat, path: JsonPath, flow: Flow, report: Report): void {
  const after = flow.holdersFrom(beat);
  const at = flow.holdersAt(beat);
  for (const [i, action] of beat.actions.entries()) {
    const here = [...path, 'do', i];
    const word = ballWords[action.kind];
    if (word !== undefined && !after.has(action.by)) {
      report.add(
        'no-ball',
        here,
        `${action.by} is told to ${word}, but from the start of the beat "${beat.id}" on the ball cannot come to him. ${whoHasIt(after)}`,
      );
    }
    // He may run before the ball comes to him, but not with it in his stick and a pass to throw.
    const throws = beat.actions.some((each) => each.by === action.by && (each.kind === 'pass' || each.kind === 'shot'));
    if (offBall.has(action.kind) && throws && at.has(action.by) && at.size === 1) {
      report.add(
        'two-places',
        here,
        `${action.by} has the ball when the beat "${beat.id}" starts, and is told to throw it and to run without it at once. Put the run into a beat of its own with "on": "pass ${action.by}".`,
      );
    }
  }
}

function whoHasIt(holders: ReadonlySet<SpotId>): string {
  const all = [...holders];
  if (all.length === 0) return 'Nobody has it then.';
  return all.length === 1
    ? `Only ${all[0]} has it then.`
    : `Only ${all.slice(0, -1).join(', ')} and ${all.at(-1)} can have it then.`;
}

function checkReads(script: Script, path: JsonPath, flow: Flow, report: Report): void {
  for (const [i, read] of script.reads.entries()) {
    const here = [...path, 'reads', i];
    const why = whyNever(read, script, flow, script.reads.slice(0, i));
    if (why !== undefined)
      report.add('read-never-fires', here, `This read of ${read.carrier} can never be used: ${why}`);
    if (read.cues.length > mostCues) {
      report.add(
        'reads-too-many',
        here,
        `This read of ${read.carrier} asks for ${read.cues.length} cues at once. Players see ${mostCues} in time.`,
      );
    }
  }
  for (const carrier of new Set(script.reads.map((read) => read.carrier))) {
    const count = script.reads.filter((read) => read.carrier === carrier).length;
    if (count > mostReads)
      report.add(
        'reads-too-many',
        [...path, 'reads'],
        `${carrier} has ${count} reads. Players keep ${mostReads} in mind; take out the least important.`,
      );
  }
}

function whyNever(read: Read, script: Script, flow: Flow, earlier: readonly Read[]): string | undefined {
  const { carrier, during } = read;
  if (!flow.holders.has(carrier)) return `the ball never comes to ${carrier}.`;
  if (during !== undefined) {
    if (!flow.reachable.has(during)) return `the beat "${during}" never starts.`;
    const beat = script.beats.find((each) => each.id === during);
    if (beat !== undefined && !flow.holdersFrom(beat).has(carrier))
      return `the ball cannot come to ${carrier} once the beat "${during}" has started.`;
  }
  if (has(read.cues, 'iAmFree') && has(read.cues, 'iAmPressed')) return 'he cannot be free and pressed at once.';
  const first = earlier.find((each) => takesOver(each, read));
  if (first !== undefined)
    return `an earlier read of ${carrier} always comes first, because it asks for no more than this one. Put the stricter read first.`;
  return undefined;
}

/** Whether an earlier read fires whenever the later one would. Only a pass or a shot ends his turn; after a fake he reads on. */
function takesOver(earlier: Read, later: Read): boolean {
  if (earlier.carrier !== later.carrier) return false;
  if (earlier.during !== undefined && earlier.during !== later.during) return false;
  if (earlier.then.kind !== 'pass' && earlier.then.kind !== 'shot') return false;
  return earlier.cues.every((cue) => later.cues.some((each) => sameCue(cue, each)));
}

function has(cues: readonly Cue[], kind: Cue['kind']): boolean {
  return cues.some((cue) => cue.kind === kind);
}

function sameCue(one: Cue, other: Cue): boolean {
  return one.kind === other.kind && ('who' in one ? one.who : '') === ('who' in other ? other.who : '');
}

function checkReset(play: Play, path: JsonPath, report: Report): void {
  const { reset, start } = play;
  if (reset.then === 'again' && reset.ball !== start.ball) {
    report.add(
      'reset-elsewhere',
      [...path, 'reset', 'ball'],
      `The play runs again once ${reset.ball} has the ball, but it starts with the ball at ${start.ball}. Reset to ${start.ball}, or let the reset be "free".`,
    );
  }
}

function exhaustive(value: never): never {
  throw new TypeError(`unknown trigger: ${JSON.stringify(value)}`);
}
