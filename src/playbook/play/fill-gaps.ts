import type { Action, Beat, Order, ReadOrder, SpotId } from '../../engine/index.ts';
import { unknownName } from '../language/phrase.ts';
import type { Script } from './flow.ts';
import type { PlayDraft } from './read-play.ts';

/** One way to read a script whose phrases name men that cannot be guessed. */
export interface Filled {
  readonly script: Script;
  /** Actions that are in it only because a phrase could not be read. */
  readonly made: ReadonlySet<Action>;
}

/** More ways than this are not tried. */
const mostWays = 40;

/**
 * Every way to fill in the names that a script lacks: the receiver of "WL pass", the passer of "QQ pass X", what a man does whose phrase
 * makes no sense. One way, the script itself, when nothing is missing; none when too much is.
 */
export function fillGaps(script: Script, draft: PlayDraft, everyone: readonly SpotId[]): readonly Filled[] {
  let ways: readonly Filled[] = [{ script, made: new Set() }];
  for (const [at, beat] of script.beats.entries()) {
    for (const man of draft.unreadMen.get(beat) ?? []) ways = ways.flatMap((way) => doings(way, at, man, everyone));
    for (const [i, action] of beat.actions.entries()) {
      if (!lacksName(action)) continue;
      ways = ways.flatMap((way) => namings(action, everyone).map((one) => withAction(way, at, i, one)));
    }
    if (ways.length === 0 || ways.length > mostWays) return [];
  }
  for (const [at, { then }] of script.reads.entries()) {
    if (!lacksName(then)) continue;
    ways = ways.flatMap((way) => namings(then, everyone).map((one) => withRead(way, at, one)));
    if (ways.length > mostWays) return [];
  }
  return ways;
}

function lacksName(action: Order): boolean {
  return action.kind === 'pass' && (action.by === unknownName || action.to === unknownName);
}

function namings<A extends Order>(action: A, everyone: readonly SpotId[]): readonly A[] {
  if (action.kind !== 'pass') return [action];
  const passers = action.by === unknownName ? everyone : [action.by];
  const receivers = action.to === unknownName ? everyone : [action.to];
  return passers.flatMap((by) => receivers.filter((to) => to !== by).map((to) => ({ ...action, by, to })));
}

/** He runs somewhere, and throws to one of the others or to nobody. Of a man who is not known nothing can be said. */
function doings(way: Filled, at: number, man: SpotId, everyone: readonly SpotId[]): readonly Filled[] {
  if (man === unknownName) return [];
  const run: Action = { kind: 'run', run: 'cut', by: man, path: [], go: 'now' };
  const passes = everyone
    .filter((to) => to !== man)
    .map((to): Action => ({ kind: 'pass', by: man, to, style: 'adjacent' }));
  return [[run], ...passes.map((pass) => [run, pass])].map((made) => withMore(way, at, made));
}

function withMore(way: Filled, at: number, made: readonly Action[]): Filled {
  const beat = way.script.beats[at]!;
  return {
    script: withBeat(way.script, at, { ...beat, actions: [...beat.actions, ...made] }),
    made: new Set([...way.made, ...made]),
  };
}

function withAction(way: Filled, at: number, i: number, action: Action): Filled {
  const beat = way.script.beats[at]!;
  return { ...way, script: withBeat(way.script, at, { ...beat, actions: replaced(beat.actions, i, action) }) };
}

function withRead(way: Filled, at: number, then: ReadOrder): Filled {
  const { reads } = way.script;
  return { ...way, script: { ...way.script, reads: replaced(reads, at, { ...reads[at]!, then }) } };
}

function withBeat(script: Script, at: number, beat: Beat): Script {
  return { ...script, beats: replaced(script.beats, at, beat) };
}

function replaced<T>(list: readonly T[], at: number, item: T): readonly T[] {
  return list.map((each, i) => (i === at ? item : each));
}
