import { type SeenManUp, signIds, type Tick } from '../../engine/index.ts';
import {
  type ChanceMark,
  limits,
  nearestName,
  type Playbook,
  parsePlaybook,
  toEnginePlay,
} from '../../playbook/index.ts';
import { filmOfMarks, readTick } from '../../teach/index.ts';
import { badUse, exitCodes, Failure, unknownName } from '../failure.ts';
import { readText } from '../read-file.ts';

/** What was seen of an opponent, from the playbook, a file and the command line. */
export interface SeenOfThem {
  readonly manUps: readonly SeenManUp[];
  /** A few words for each: which man-up it is. */
  readonly titles: readonly string[];
  /** What could not be used. */
  readonly leftOut: readonly string[];
}

/** Marks of one man-up, and the play whose set its men stand in. */
interface MarkedManUp {
  readonly title: string;
  readonly play: string;
  readonly side: 'left' | 'right';
  readonly marks: readonly ChanceMark[];
}

/** Everything that was marked of an opponent's man-down unit: in the playbook's man-ups of ours and of others against him, and in a file of marks. */
export async function seenOf(
  playbook: Playbook,
  asked: {
    readonly opponent: string | undefined;
    readonly play: string;
    readonly side: 'left' | 'right';
    readonly marks: string | undefined;
    readonly ticks: readonly Tick[];
  },
): Promise<SeenOfThem> {
  const kept = (playbook.chances ?? []).flatMap((chance): readonly MarkedManUp[] => {
    if (chance.side === 'theirs' || chance.opponent !== asked.opponent || asked.opponent === undefined) return [];
    const called = playbook.plays.some(({ id }) => id === chance.call) ? chance.call : undefined;
    const side = chance.fromSide ?? asked.side;
    return [{ title: chance.id, play: called ?? asked.play, side, marks: chance.marks ?? [] }];
  });
  const filed = asked.marks === undefined ? [] : await marksIn(asked.marks, playbook, asked);
  const read = [...kept, ...filed].map(({ title, play, side, marks }) => {
    const { spots, start } = toEnginePlay(playbook, play, side);
    return { title, ...filmOfMarks(spots, marks, start.restart) };
  });
  const known = read.filter(({ film, ticks }) => film !== null || ticks.length > 0);
  // What was ticked on the command line was seen in a man-up of its own.
  const ticked = asked.ticks.length === 0 ? [] : [{ title: 'What was ticked', film: null, ticks: asked.ticks }];
  const all = [...known, ...ticked];
  return {
    manUps: all.map(({ film, ticks }) => ({ ticks, ...(film !== null && { film }) })),
    titles: all.map(({ title }) => title),
    leftOut: read.flatMap(({ title, leftOut }) => leftOut.map((sentence) => `${title}: ${sentence}`)),
  };
}

/** A file of marks: a list as it stands in a playbook's man-up, or an object with such a list in "marks". Checked as the playbook checks its own. */
async function marksIn(
  path: string,
  playbook: Playbook,
  { play, side }: Pick<MarkedManUp, 'play' | 'side'>,
): Promise<readonly MarkedManUp[]> {
  const text = await readText(path, limits.bytes);
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch {
    throw badUse(`cannot read ${path}: it is no JSON document. Marks are a list as in "marks" of a man-up.`);
  }
  const marks = Array.isArray(value) ? value : (value as { readonly marks?: unknown } | null)?.marks;
  if (!Array.isArray(marks)) throw badUse(`cannot read ${path}: it holds no list of marks.`);
  const { format, version, team, plays, sets } = playbook;
  const within = { format, version, team, plays, ...(sets && { sets }) };
  const chance = { id: 'marked', side: 'ours', result: 'expired', marks };
  const parsed = parsePlaybook(JSON.stringify({ ...within, chances: [chance] }));
  const wrong = parsed.diagnostics.find(({ severity, path: at }) => severity === 'error' && at[0] === 'chances');
  if (wrong !== undefined || parsed.value === undefined) {
    throw new Failure(`${path}: ${wrong?.message ?? 'the marks cannot be read.'}`, exitCodes.no);
  }
  return [{ title: path, play, side, marks: parsed.value.chances?.[0]?.marks ?? [] }];
}

/** The ticks in "one-in-front,not:crease-glued". Fails with the likeliest name for a sign that there is not. */
export function readTicks(list: string | undefined): readonly Tick[] {
  const words = (list ?? '')
    .split(',')
    .map((word) => word.trim())
    .filter((word) => word !== '');
  return words.map((word) => {
    const tick = readTick(word);
    const name = word.replace(/^not[ :]/, '');
    if (tick === undefined) throw unknownName('sign after --ticks', name, signIds, nearestName(name, [...signIds]));
    return tick;
  });
}
