import { groundOf, setSpots } from './edit/play-ground.ts';
import type { JsonPath } from './json/json-node.ts';
import { knownSchemes } from './known-schemes.ts';
import { nearestName } from './language/nearest-name.ts';
import type { Report } from './report.ts';
import type { Playbook, Practice, PracticeBlock, PracticeKind } from './schema.ts';

/** Says where practice plans name what the playbook does not have, take more time than there is, or shoot without a goalkeeper. */
export function checkPractices(playbook: Playbook, report: Report): void {
  for (const [at, practice] of (playbook.practices ?? []).entries())
    checkPractice(playbook, practice, ['practices', at], report);
}

/** Kinds in which shots go at a goalkeeper at full speed. */
const liveKinds: readonly PracticeKind[] = ['keeper', 'live', 'situation'];

function checkPractice(playbook: Playbook, practice: Practice, path: JsonPath, report: Report): void {
  const { date, blocks, minutes, plays } = practice;
  if (date !== undefined && !isDay(date))
    report.add('practice-date', [...path, 'date'], `There is no ${date} in the calendar. Write the day as YYYY-MM-DD.`);
  for (const [at, play] of plays.entries()) checkPlayName(playbook, play, [...path, 'plays', at], report);
  for (const [at, block] of blocks.entries()) checkBlock(playbook, block, [...path, 'blocks', at], report);
  const taken = blocks.reduce((sum, block) => sum + block.minutes, 0);
  if (taken > minutes)
    report.add(
      'practice-time',
      [...path, 'minutes'],
      `The blocks of "${practice.name}" take ${taken} minutes, and there are ${minutes}. Shorten one.`,
    );
  // What a coach notes of such a block is that its goal is empty or covered: the program writes it there itself.
  const live = blocks.findIndex(
    ({ kind, note }) => liveKinds.includes(kind) && (kind === 'keeper' || note === undefined),
  );
  if (practice.keeper === false && live >= 0)
    report.add(
      'practice-keeper',
      [...path, 'blocks', live],
      'No goalkeeper comes to this practice: only a fully equipped goalkeeper may face shots. Take the block out, or say in its note that the goal is empty or covered.',
    );
}

function checkBlock(playbook: Playbook, block: PracticeBlock, path: JsonPath, report: Report): void {
  checkSchemeName(playbook, block.scheme, [...path, 'scheme'], report);
  for (const [at, run] of (block.runs ?? []).entries())
    checkSchemeName(playbook, run.scheme, [...path, 'runs', at, 'scheme'], report);
  if (block.play === undefined) return;
  if (!checkPlayName(playbook, block.play, [...path, 'play'], report)) return;
  checkSpots(playbook, block.play, block.spots, [...path, 'spots'], report);
  for (const [at, run] of (block.runs ?? []).entries())
    checkSpots(playbook, block.play, run.look, [...path, 'runs', at, 'look'], report);
}

function checkSchemeName(playbook: Playbook, scheme: string | undefined, path: JsonPath, report: Report): void {
  const known = [...knownSchemes, ...(playbook.schemes ?? []).map(({ id }) => id)];
  if (scheme === undefined || known.includes(scheme)) return;
  report.add(
    'practice-scheme',
    path,
    `No scheme is called "${scheme}".${guess(scheme, known)} The schemes are ${known.join(', ')}.`,
  );
}

function checkPlayName({ plays }: Playbook, play: string, path: JsonPath, report: Report): boolean {
  const known = plays.map(({ id }) => id);
  if (known.includes(play)) return true;
  report.add(
    'practice-play',
    path,
    `The playbook has no play "${play}".${guess(play, known)} Take it out of the plan, or write the play.`,
  );
  return false;
}

function checkSpots(
  playbook: Playbook,
  play: string,
  spots: readonly string[] | undefined,
  path: JsonPath,
  report: Report,
): void {
  const names = spotsOf(playbook, play);
  for (const [at, spot] of (spots ?? []).entries()) {
    const isTwice = spots!.indexOf(spot) < at;
    if (!isTwice && (names === undefined || names.includes(spot))) continue;
    const words = isTwice ? `${spot} stands twice` : `The play has no spot ${spot}: it has ${names!.join(', ')}`;
    report.add('practice-spot', [...path, at], `${words}. Name each man once, by a spot of the play.`);
  }
}

/** The spots of a play's set; undefined for a set that nobody knows, which is told at the play. */
function spotsOf(playbook: Playbook, play: string): readonly string[] | undefined {
  const entry = playbook.plays.find(({ id }) => id === play);
  const names = entry && setSpots(entry, groundOf(playbook)).map(({ id }) => id);
  return names?.length === 0 ? undefined : names;
}

function guess(name: string, known: readonly string[]): string {
  const near = nearestName(name, known);
  return near === undefined ? '' : ` Did you mean "${near}"?`;
}

/** Whether a text of the form YYYY-MM-DD names a day that there is, by the Gregorian calendar. */
export function isDay(text: string): boolean {
  const [year, month, day] = text.split('-').map(Number) as [number, number, number];
  const isLeap = year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0);
  const length = [31, isLeap ? 29 : 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31][month - 1];
  return length !== undefined && day >= 1 && day <= length;
}
