import type { Action, Beat, Cue, Play, Read, SpotId } from '../../engine/index.ts';
import type { DiagnosticCode } from '../diagnostic-codes.ts';
import { type JsonPath, pathText } from '../json/json-node.ts';
import { unknownName } from '../language/phrase.ts';
import type { Report } from '../report.ts';
import { type Filled, fillGaps } from './fill-gaps.ts';
import { type Flow, followScript, type Script } from './flow.ts';
import type { PlayDraft } from './read-play.ts';
import { findStuck, followersWords, type StuckBeat, whyStuck } from './stuck-beats.ts';

/** As many reads as a player keeps in mind, and cues in one of them (ours, from what coaches advise; no source for the numbers). */
const mostReads = 4;
const mostCues = 2;

/** Says which beats cannot start, who is told to use a ball that he cannot have, and which reads can never be used. */
export function checkFlow(draft: PlayDraft, path: JsonPath, report: Report): void {
  const { play } = draft;
  const everyone = play.spots.map((spot) => spot.id);
  // Who starts is not known, or anybody may have the ball when ten seconds are left.
  const starters = play.start.ball === unknownName ? everyone : [play.start.ball];
  checkScript({ script: play, first: new Set(starters), path, opens: true }, draft, report);
  checkReset(play, path, report);
  if (play.lastTen === undefined) return;
  if (play.lastTen.beats.length === 0 && play.lastTen.reads.length === 0) {
    report.add(
      'last-ten-empty',
      [...path, 'lastTen'],
      '"lastTen" has neither steps ("beats") nor reads, so nothing would change. Fill it or take it out.',
    );
  }
  checkScript(
    { script: play.lastTen, first: new Set(everyone), path: [...path, 'lastTen'], opens: false },
    draft,
    report,
  );
}

interface ScriptPlace {
  readonly script: Script;
  readonly first: ReadonlySet<SpotId>;
  readonly path: JsonPath;
  /** Something has to begin on "start": so it is in a play, but the last ten seconds may be reads alone. */
  readonly opens: boolean;
}

interface Finding {
  readonly code: DiagnosticCode;
  readonly path: JsonPath;
  readonly message: string;
}

/**
 * Where a name is missing, the script is checked in every way in which it can be filled in, and of the ways with the fewest stuck
 * beats only what all of them have in common is told: so that no slip is told twice.
 */
function checkScript(place: ScriptPlace, draft: PlayDraft, report: Report): void {
  const everyone = draft.play.spots.map((spot) => spot.id);
  const ways = fillGaps(place.script, draft, everyone);
  if (ways.length !== 1) report.leaveOut();
  const unsure = new Set(place.script.reads.flatMap((read, i) => (draft.unsureReads.has(read) ? [i] : [])));
  const scored = ways.map((way) => {
    const flow = followScript(way.script, place.first, new Set(everyone));
    return { way, stuck: way.script.beats.length - flow.reachable.size };
  });
  const fewest = Math.min(...scored.map(({ stuck }) => stuck));
  const [found = [], ...others] = scored
    .filter(({ stuck }) => stuck === fewest)
    .map(({ way }) => checkWay(way, place, new Set(everyone), unsure));
  for (const { code, path, message } of found) {
    const inAll = others.every((each) =>
      each.some((one) => one.code === code && pathText(one.path) === pathText(path)),
    );
    if (inAll) report.add(code, path, message);
  }
}

function checkWay(
  { script, made }: Filled,
  { first, path, opens }: ScriptPlace,
  everyone: ReadonlySet<SpotId>,
  unsureReads: ReadonlySet<number>,
): readonly Finding[] {
  const found: Finding[] = [];
  const add: Add = (code, at, message) => found.push({ code, path: at, message });
  const flow = followScript(script, first, everyone);
  const causes = findStuck(script, flow, first, everyone);
  const noStart = opens && causes.length > 0 && !script.beats.some((beat) => beat.when.kind === 'start');
  for (const [i, cause] of causes.entries()) tellStuck(cause, noStart && i === 0, script, flow, first, path, add);
  // What hangs on a beat that never starts was told with it: from here on it is taken to start.
  const granted = new Set(causes.map(({ beat }) => beat.id));
  const mended = granted.size === 0 ? flow : followScript(script, first, everyone, granted);
  for (const [i, beat] of script.beats.entries())
    if (mended.reachable.has(beat.id)) checkBall(beat, [...path, 'beats', i], mended, made, add);
  checkReads(script, path, mended, unsureReads, add);
  return found;
}

type Add = (code: DiagnosticCode, path: JsonPath, message: string) => void;

function tellStuck(
  { beat, followers }: StuckBeat,
  isOpening: boolean,
  script: Script,
  flow: Flow,
  first: ReadonlySet<SpotId>,
  path: JsonPath,
  add: Add,
): void {
  const here = [...path, 'beats', script.beats.indexOf(beat), 'on'];
  if (!isOpening) {
    const why = whyStuck(beat, script, flow);
    add('beat-never-starts', here, `The step "${beat.id}" can never start: ${why}${followersWords(followers)}`);
    return;
  }
  const { when } = beat;
  const hasIt = when.kind === 'catch' && first.has(when.by);
  const why = hasIt ? ` When the set is up ${when.by} has the ball already, so there is no catch to wait for.` : '';
  add(
    'start-missing',
    here,
    `No step starts when the set is up, so the play never begins.${why} Let "${beat.id}" start then ("on": "start"): it looks like the opening step.`,
  );
}

/** Words for what only a man with the ball can do. */
const ballWords: Partial<Record<Action['kind'], string>> = {
  pass: 'throw',
  carry: 'carry',
  fake: 'fake',
  shot: 'shoot',
};
const offBall: ReadonlySet<Action['kind']> = new Set(['run', 'pick', 'seal']);

function checkBall(beat: Beat, path: JsonPath, flow: Flow, made: ReadonlySet<Action>, add: Add): void {
  const after = flow.holdersFrom(beat);
  const at = flow.holdersAt(beat);
  for (const [i, action] of beat.actions.entries()) {
    if (action.by === unknownName || made.has(action)) continue;
    const here = [...path, 'do', i];
    const word = ballWords[action.kind];
    if (word !== undefined && !after.has(action.by)) {
      add(
        'no-ball',
        here,
        `${action.by} is told to ${word}, but from the start of the step "${beat.id}" on the ball cannot come to him. ${whoHasIt(after)}`,
      );
    }
    // He may run before the ball comes to him, but not with it in his stick and a pass to throw.
    const throws = beat.actions.some((each) => each.by === action.by && (each.kind === 'pass' || each.kind === 'shot'));
    if (offBall.has(action.kind) && throws && at.has(action.by) && at.size === 1) {
      add(
        'two-places',
        here,
        `${action.by} has the ball when the step "${beat.id}" starts, and is told to throw it and to run without it at once. Put the run into a step of its own with "on": "pass ${action.by}".`,
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

function checkReads(script: Script, path: JsonPath, flow: Flow, unsure: ReadonlySet<number>, add: Add): void {
  for (const [i, read] of script.reads.entries()) {
    if (unsure.has(i)) continue;
    const here = [...path, 'reads', i];
    const earlier = script.reads.filter((_, j) => j < i && !unsure.has(j));
    const why = whyNever(read, script, flow, earlier);
    if (why !== undefined) add('read-never-fires', here, `This read of ${read.carrier} can never be used: ${why}`);
    if (read.cues.length > mostCues) {
      add(
        'reads-too-many',
        here,
        `This read of ${read.carrier} asks for ${read.cues.length} cues at once. Players see ${mostCues} in time.`,
      );
    }
  }
  for (const carrier of new Set(script.reads.map((read) => read.carrier))) {
    const count = script.reads.filter((read) => read.carrier === carrier).length;
    if (count > mostReads)
      add(
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
    if (!flow.reachable.has(during)) return `the step "${during}" never starts.`;
    const beat = script.beats.find((each) => each.id === during);
    if (beat !== undefined && !flow.holdersFrom(beat).has(carrier))
      return `the ball cannot come to ${carrier} once the step "${during}" has started.`;
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
  if (reset.ball === unknownName || start.ball === unknownName) return;
  if (reset.then === 'again' && reset.ball !== start.ball) {
    report.add(
      'reset-elsewhere',
      [...path, 'reset', 'ball'],
      `The play runs again once ${reset.ball} has the ball, but it starts with the ball at ${start.ball}. Reset to ${start.ball}, or let the reset be "free".`,
    );
  }
}
