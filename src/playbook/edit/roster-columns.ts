import type { Player } from '../schema.ts';

type Grade = keyof NonNullable<Player['grades']>;

/** What a column of a roster's table holds. */
export type RosterColumn =
  | { readonly kind: 'number' | 'name' | 'firstName' | 'lastName' | 'hand' | 'crosse' | 'role' | 'level' | 'notes' }
  | { readonly kind: 'absent' | 'present' }
  | { readonly kind: 'grade'; readonly grade: Grade }
  | { readonly kind: 'speed'; readonly of: 'passSpeedMph' | 'shotSpeedMph'; readonly unit: string }
  | { readonly kind: 'sprint' | 'wallBall' | 'onGoal' }
  | { readonly kind: 'height'; readonly unit: string };

const gradeAliases: Readonly<Record<Grade, readonly string[]>> = {
  speed: ['speed', 'fast', 'quickness', 'athleticism'],
  catch: ['catch', 'catching', 'hands'],
  pass: ['pass', 'passing'],
  feed: ['feed', 'feeding', 'feeds'],
  shoot: ['shoot', 'shooting', 'shot'],
  inside: ['inside', 'finish', 'finishing', 'finisher'],
  handle: ['handle', 'handling', 'stick skills', 'stickwork'],
  offHand: ['offhand', 'off hand', 'weak hand'],
  sense: ['sense', 'iq', 'lacrosse iq', 'vision', 'reads'],
};

/** Words by which tables call what we keep, as they are after `plainHeader`. */
const words: Readonly<Record<string, RosterColumn>> = {
  ...each(['number', 'no', 'nr', 'num', '#', 'jersey', 'jersey number', 'jersey no', 'jersey #', 'uniform', 'shirt'], {
    kind: 'number',
  }),
  ...each(['name', 'player', 'player name', 'full name', 'athlete'], { kind: 'name' }),
  ...each(['first', 'first name', 'given name'], { kind: 'firstName' }),
  ...each(['last', 'last name', 'surname', 'family name'], { kind: 'lastName' }),
  ...each(['hand', 'strong hand', 'dominant hand', 'handed', 'handedness', 'l r', 'r l', 'shoots hand', 'stick hand'], {
    kind: 'hand',
  }),
  ...each(['crosse', 'stick', 'stick type', 'pole', 'short or pole'], { kind: 'crosse' }),
  ...each(['role', 'position', 'pos', 'plays'], { kind: 'role' }),
  ...each(['level', 'age', 'age group', 'team'], { kind: 'level' }),
  ...each(['notes', 'note', 'comment', 'comments', 'remarks'], { kind: 'notes' }),
  ...each(['absent', 'out', 'injured', 'unavailable'], { kind: 'absent' }),
  ...each(['present', 'available', 'active', 'here'], { kind: 'present' }),
  ...each(
    [
      'sprint',
      'sprint 20yd',
      'sprint 20 yd',
      '20 yd',
      '20yd',
      '20 yards',
      '20 yard sprint',
      '20 yard dash',
      '20 yd sprint',
      '20 yd dash',
    ],
    {
      kind: 'sprint',
    },
  ),
  ...each(['wall ball', 'wallball', 'wall ball 30', 'wall ball in 30', 'wall balls'], { kind: 'wallBall' }),
  ...each(['on goal', 'shots on goal', 'sog', 'on cage', 'hits of shots'], { kind: 'onGoal' }),
  ...gradeWords(),
};

function each(names: readonly string[], column: RosterColumn): Readonly<Record<string, RosterColumn>> {
  return Object.fromEntries(names.map((name) => [name, column]));
}

function gradeWords(): Readonly<Record<string, RosterColumn>> {
  const all: Record<string, RosterColumn> = {};
  for (const [grade, aliases] of Object.entries(gradeAliases) as [Grade, readonly string[]][])
    for (const alias of aliases) for (const word of [alias, `${alias} grade`]) all[word] = { kind: 'grade', grade };
  return all;
}

/** What a header says its column holds; undefined for a word that says nothing to us. */
export function columnOf(header: string): RosterColumn | undefined {
  const { words: text, unit } = plainHeader(header);
  const speedOf = /^(pass|passing|shot|shooting)( speed| velocity)?$/.exec(text);
  // "Shot" alone is a grade; with a unit or the word "speed" it is what the radar said.
  if (speedOf !== null && (unit !== '' || speedOf[2] !== undefined))
    return { kind: 'speed', of: speedOf[1]!.startsWith('pass') ? 'passSpeedMph' : 'shotSpeedMph', unit };
  if (/^(height|ht|size|tall)$/.test(text)) return { kind: 'height', unit };
  return Object.hasOwn(words, text) ? words[text] : undefined;
}

const unitWord = 'mph|km/?h|kph|m/s|fps|ft/s|cm|in|inches|ft|feet|m|s|sec|secs|seconds';
/** A unit stands in brackets or at the end: "Shot (mph)", "Shot mph". */
const unitPattern = new RegExp(`[([]\\s*(${unitWord})\\s*[)\\]]|[\\s,](${unitWord})$`);

/** A header in small letters without signs, and the unit that it names. */
function plainHeader(header: string): { readonly words: string; readonly unit: string } {
  const small = header
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .replace(/([a-z])([A-Z])/g, '$1 $2')
    .toLowerCase()
    .trim();
  const found = unitPattern.exec(small);
  const bare = (found === null ? small : small.replace(found[0], ' '))
    .replace(/[()[\].,:;_/?*-]+/g, ' ')
    .replace(/\s+/g, ' ')
    .trim();
  return { words: bare, unit: found?.[1] ?? found?.[2] ?? '' };
}
