import { createHash } from 'node:crypto';
import { existsSync, readFileSync } from 'node:fs';
import { compileChance } from '../../engine/index.ts';
import { type Player, ruleCodeOf } from '../../playbook/index.ts';
import { type ClipScheme, clipHtml, clipOfScript, count, drawnField, traceNames } from '../../render/index.ts';
import { buildMatchup } from '../../worker/index.ts';
import { chosenFoes, chosenPlays, type Foes } from '../choose-matchups.ts';
import { furthestScript } from '../clip/furthest-script.ts';
import { type AddCommand, addConditions, examples } from '../command-line.ts';
import { type Conditions, type RawConditions, readConditions, shown } from '../conditions.ts';
import { badUse, exitCodes, Failure } from '../failure.ts';
import type { Io } from '../io.ts';
import { levelNote } from '../level-note.ts';
import { type OpenPlaybook, openPlaybook } from '../open-playbook.ts';
import { reportNames, schemeName } from '../report-names.ts';
import { writeNew } from '../write-file.ts';

interface RawClip extends RawConditions {
  readonly play?: string;
  readonly against: string;
  readonly follow?: string;
  readonly out?: string;
  readonly names?: true;
}

/** Man-ups watched against each scheme to find the one that is shown: enough for one that goes to its end in one of ten to be among them. */
const watchedTrials = 24;

/** `sliderule clip FILE`: a play as one page that plays on a phone. */
export const addClip: AddCommand = (program, io) => {
  const command = program
    .command('clip')
    .description('put a play on one web page that plays on a phone without a network')
    .argument('<file>', 'the playbook, a JSON document')
    .option('--play <id>', 'the play; needed')
    .option('--against <ids>', "schemes with commas between them, an opponent's id, or all", 'all')
    .option('--follow <spot>', "begin with this man's view, such as TR (default: the whole unit)")
    .option('--out <file>', 'where to write it (default: ID-clip.html)')
    .option('--names', 'with names beside the numbers (left out by themselves, for the sake of minors)');
  addConditions(command)
    .addHelpText(
      'after',
      examples(io, [
        'sliderule clip playbook.json --play lantern',
        'sliderule clip playbook.json --play lantern --against box-zone,jump --follow X',
        'sliderule clip playbook.json --play ferry --side left --out ferry-left.html',
      ]),
    )
    .action(async (file: string, raw: RawClip) => {
      const conditions = readConditions(raw);
      const opened = await openPlaybook(file, io);
      const play = onePlay(opened, raw.play);
      const out = raw.out ?? `${play}-clip.html`;
      if (!/\.html?$/i.test(out)) throw badUse(`invalid --out: ${shown(out)} (expected a name that ends in .html).`);
      const foes = chosenFoes(opened.playbook, raw.against);
      io.err(levelNote(opened.playbook, conditions.level));
      const page = clipPage(io, opened, { play, foes, conditions, follow: raw.follow, withNames: raw.names === true });
      if (io.signal.aborted) throw io.signal.reason;
      await writeNew(out, page.html);
      const size = count(Math.ceil(Buffer.byteLength(page.html) / 1000));
      io.out(`Written: ${out}, ${size} kB, against ${page.schemes} of ${foes.schemes.length} schemes.\n`);
    });
};

function onePlay({ playbook }: OpenPlaybook, asked: string | undefined): string {
  const [play, ...others] = chosenPlays(playbook, asked);
  if (play === undefined || asked === undefined || others.length > 0) {
    const known = playbook.plays.map(({ id }) => id).join(', ');
    throw badUse(`a clip is that of one play: name one of ${known} after --play.`);
  }
  return play;
}

interface ClipWishes {
  readonly play: string;
  readonly foes: Foes;
  readonly conditions: Conditions;
  readonly follow: string | undefined;
  readonly withNames: boolean;
}

function clipPage(
  io: Io,
  opened: OpenPlaybook,
  wishes: ClipWishes,
): { readonly html: string; readonly schemes: number } {
  const { playbook } = opened;
  const { play, foes, withNames } = wishes;
  const built = foes.schemes.map((scheme) => clipAgainst(io, opened, scheme, wishes));
  const shownSchemes = built.flatMap(({ clip }) => (clip === undefined ? [] : [clip]));
  const { spots, players } = built[0]!;
  if (shownSchemes.length === 0) {
    throw new Failure(
      `${play} begins in none of ${watchedTrials} man-ups against any of these schemes, so there is nothing to show.`,
      exitCodes.no,
    );
  }
  const clip = {
    play: reportNames(playbook, play).play,
    team: playbook.team.name,
    spots,
    men: players.map((player) => manWords(player, withNames)),
    follow: followed(wishes.follow, spots),
    schemes: shownSchemes,
  };
  const parts = { field: drawnField(ruleCodeOf(playbook).markings), script: pageScript(io), hashOf };
  return { html: clipHtml(clip, parts), schemes: shownSchemes.length };
}

interface Against {
  readonly clip: ClipScheme | undefined;
  readonly spots: readonly string[];
  readonly players: readonly Player[];
}

function clipAgainst(
  io: Io,
  { playbook }: OpenPlaybook,
  scheme: string,
  { play, foes, conditions }: ClipWishes,
): Against {
  const { opponent } = foes;
  const built = buildMatchup(playbook, { ...conditions, play, scheme, ...(opponent && { opponent: opponent.id }) });
  if (built.kind === 'refused') throw badUse(`${built.reason}.`);
  const { matchup, players } = built;
  const spots = matchup.play.spots.map(({ id }) => id);
  const found = furthestScript(compileChance(matchup, conditions.seed), watchedTrials);
  if (found === undefined) {
    const name = schemeName(scheme, reportNames(playbook, play));
    io.err(`Against ${name} the play begins in none of ${watchedTrials} man-ups: left out.\n`);
    return { clip: undefined, spots, players };
  }
  const { script, watched, asFar } = found;
  const note =
    `This is one simulated man-up (number ${script.trial}, luck ${conditions.seed}) and no promise: of ${watched} the play came ` +
    `as far as here in ${asFar}. Nobody takes an opening, so that the play is seen as it is written.`;
  return { clip: clipOfScript(script, matchup.play, traceNames(matchup), note), spots, players };
}

function manWords({ number, name }: Player, withName: boolean): string {
  return withName ? `number ${number} ${name}` : `number ${number}`;
}

function followed(asked: string | undefined, spots: readonly string[]): number {
  if (asked === undefined) return -1;
  const index = spots.findIndex((spot) => spot.toLowerCase() === asked.toLowerCase());
  if (index < 0) throw badUse(`unknown spot after --follow: ${shown(asked)} (expected ${spots.join(', ')}).`);
  return index;
}

/** The page's program, built beside the worker. */
function pageScript({ worker }: Io): string {
  const path = new URL('./clip-page.js', worker);
  if (!existsSync(path)) throw badUse('the program of the page is not built here. Build it first: npm run build.');
  return readFileSync(path, 'utf8');
}

function hashOf(text: string): string {
  return createHash('sha256').update(text).digest('base64');
}
