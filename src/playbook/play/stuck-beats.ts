import type { Beat, SpotId } from '../../engine/index.ts';
import { type Flow, followScript, type Script } from './flow.ts';

/** A beat that nothing starts, and the beats that would start if only it did. */
export interface StuckBeat {
  readonly beat: Beat;
  readonly followers: readonly Beat[];
}

/**
 * The beats that cannot start, by their causes: first the one on which most others hang. Forcing all causes to start sets every
 * beat free.
 */
export function findStuck(
  script: Script,
  flow: Flow,
  first: ReadonlySet<SpotId>,
  everyone: ReadonlySet<SpotId>,
): readonly StuckBeat[] {
  const stuck = script.beats.filter((beat) => !flow.reachable.has(beat.id));
  const waiting = new Set(stuck);
  const bare: Script = { beats: script.beats, reads: [] };
  const freed = new Map(
    stuck.map((beat, i) => {
      const granted = new Set([beat.id]);
      const { reachable } = followScript(script, first, everyone, granted);
      const byBeats = followScript(bare, first, everyone, granted).reachable;
      // A read that throws back to where the play has been makes no cause of a later beat.
      const frees = (each: Beat, j: number) => byBeats.has(each.id) || (j > i && reachable.has(each.id));
      return [beat, stuck.filter((each, j) => each !== beat && frees(each, j))] as const;
    }),
  );
  const causes: StuckBeat[] = [];
  while (waiting.size > 0) {
    let best: StuckBeat | undefined;
    for (const beat of waiting) {
      const followers = freed.get(beat)!.filter((each) => waiting.has(each));
      if (best === undefined || followers.length > best.followers.length) best = { beat, followers };
    }
    for (const each of [best!.beat, ...best!.followers]) waiting.delete(each);
    causes.push(best!);
  }
  return causes;
}

/** " The beats after it cannot start either: low, over." or nothing. */
export function followersWords(followers: readonly Beat[]): string {
  if (followers.length === 0) return '';
  const shown = followers.slice(0, mostShown).map((beat) => `"${beat.id}"`);
  const more = followers.length > mostShown ? ` and ${followers.length - mostShown} more` : '';
  return followers.length === 1
    ? ` The step after it cannot start either: ${shown[0]}.`
    : ` The steps after it cannot start either: ${shown.join(', ')}${more}.`;
}

const mostShown = 10;

/** Why a beat cannot start, and what to do. */
export function whyStuck(beat: Beat, script: Script, flow: Flow): string {
  const { when } = beat;
  switch (when.kind) {
    case 'start':
      return 'it waits for the start.';
    case 'catch':
      return `nobody who can have the ball throws it to ${when.by}${throwsWords(script, flow)}. Add a pass to ${when.by}, or let the step wait for something else.`;
    case 'pass': {
      const receivers = [...flow.receiversOf(when.from)];
      if (receivers.length > 0) return `${when.from} throws only to ${receivers.join(' and ')}, not to ${when.to}.`;
      return `${when.from} never throws the ball. Add his pass, or let the step wait for something else.`;
    }
    case 'arrival':
      return `${when.who} is never sent anywhere, so he never arrives. Add his run, or let the step wait for something else.`;
    case 'call': {
      const called = script.beats.find((each) => each.id === when.beat);
      if (waitsForItself(beat, script))
        return 'it waits for itself. Let one of the steps in the ring wait for the ball.';
      return `it comes after the step "${called?.id ?? when.beat}", which can never start.`;
    }
    default:
      return exhaustive(when);
  }
}

/** The last throws that do happen: where the ball went instead. */
function throwsWords(script: Script, flow: Flow): string {
  const waited = new Set(script.beats.flatMap(({ when }) => (when.kind === 'catch' ? [when.by] : [])));
  const astray = script.beats
    .filter((beat) => flow.reachable.has(beat.id))
    .flatMap((beat) =>
      beat.actions.flatMap((action) =>
        action.kind === 'pass' && !waited.has(action.to) ? [`"${beat.id}" throws to ${action.to}`] : [],
      ),
    );
  return astray.length === 0 ? '' : ` (${[...new Set(astray)].slice(0, 3).join(', ')})`;
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

function exhaustive(value: never): never {
  throw new TypeError(`unknown trigger: ${JSON.stringify(value)}`);
}
