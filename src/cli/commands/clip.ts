import { createHash } from 'node:crypto';
import { existsSync, readFileSync } from 'node:fs';
import { toEnginePlay } from '../../playbook/index.ts';
import { count } from '../../render/index.ts';
import { clipPage, type PlayClip, playClip, watchedForClip } from '../../teach/index.ts';
import { createTrialPool, defaultThreads } from '../../worker/node.ts';
import { chosenFoes, chosenPlays, type Foes } from '../choose-matchups.ts';
import { type AddCommand, addConditions, examples } from '../command-line.ts';
import { type Conditions, type RawConditions, readConditions } from '../conditions.ts';
import { badUse, exitCodes, Failure, unknownName } from '../failure.ts';
import type { Io } from '../io.ts';
import { levelNote } from '../level-note.ts';
import { type OpenPlaybook, openPlaybook } from '../open-playbook.ts';
import { startProgress } from '../progress.ts';
import { checkNew, writeNew } from '../write-file.ts';
import { clipFilm } from './clip-film.ts';
import { checkClipLook, type RawClipLook, readClipFormat, readFilmOptions } from './clip-format.ts';

interface RawClip extends RawConditions, RawClipLook {
  readonly play?: string;
  readonly against: string;
  readonly out?: string;
  readonly names?: true;
}

/** `sliderule clip FILE`: a play as one page that plays on a phone, or as a film. */
export const addClip: AddCommand = (program, io) => {
  const command = program
    .command('clip')
    .description('make of a play one web page that plays on a phone without a network, or a film')
    .argument('<file>', 'the playbook, a JSON document')
    .option('--play <id>', 'the play; needed')
    .option('--against <ids>', "schemes with commas between them, an opponent's id, or all", 'all')
    .option('--follow <spot>', "begin with this man's view, such as TR (default: the whole unit)")
    .option('--out <file>', 'a page (.html) or a film (.mp4, .webm, .gif) by its ending (default: ID-clip.html)')
    .option('--speed <speed>', 'of a film: half or real (default: half)')
    .option(
      '--form <form>',
      'of a film: wide for a screen, tall for a phone, card for a message (default: wide, of a GIF card)',
    )
    .option('--names', 'with names beside the numbers (left out by themselves, for the sake of minors)');
  addConditions(command)
    .addHelpText(
      'after',
      examples(io, [
        'sliderule clip playbook.json --play lantern',
        'sliderule clip playbook.json --play lantern --against box-zone,jump --follow X',
        'sliderule clip playbook.json --play ferry --side left --out ferry-left.html',
        'sliderule clip playbook.json --play ferry --against jump --out ferry.mp4',
      ]),
    )
    .action(async (file: string, raw: RawClip) => {
      const conditions = readConditions(raw);
      const opened = await openPlaybook(file, io);
      const play = onePlay(opened, raw.play);
      const out = raw.out ?? `${play}-clip.html`;
      const format = readClipFormat(out);
      checkClipLook(format, raw);
      const film = format === 'html' ? undefined : readFilmOptions(format, raw);
      checkNew(out);
      const foes = chosenFoes(opened.playbook, raw.against);
      io.err(levelNote(opened.playbook, conditions.level));
      const follow = raw.follow === undefined ? undefined : spotOf(opened, play, raw.follow);
      const wishes = { play, foes, conditions, follow, withNames: raw.names === true };
      const { clip, leftOut } = await madeClip(io, opened, wishes);
      for (const name of leftOut)
        io.err(`Against ${name} the play begins in none of ${watchedForClip} man-ups: left out.\n`);
      const against = `against ${clip.schemes.length} of ${foes.schemes.length} schemes.`;
      if (format === 'html' || film === undefined) {
        const html = await clipPage(opened.playbook, clip, { script: pageScript(io), hashOf });
        await writeNew(out, html);
        io.out(`Written: ${out}, ${count(Math.ceil(Buffer.byteLength(html) / 1000))} kB, ${against}\n`);
        return;
      }
      const { bytes, seconds } = await clipFilm(io, opened.playbook, clip, format, film);
      await writeNew(out, bytes);
      io.out(`Written: ${out}, ${(bytes.length / 1e6).toFixed(1)} MB, ${Math.round(seconds)} s, ${against}\n`);
      if (format === 'gif' && bytes.length > largeGif) io.err(largeGifWords);
    });
};

/** Bytes that a GIF in a message should not be more than, and what to do about it. */
const largeGif = 5_000_000;
const largeGifWords =
  'A GIF of this size is slow in a message: name one or two schemes after --against, or write an .mp4.\n';

interface Wishes {
  readonly play: string;
  readonly foes: Foes;
  readonly conditions: Conditions;
  readonly follow: string | undefined;
  readonly withNames: boolean;
}

async function madeClip(
  io: Io,
  { playbook }: OpenPlaybook,
  { play, foes: { schemes, opponent }, conditions, follow, withNames }: Wishes,
): Promise<Extract<PlayClip, { kind: 'made' }>> {
  const { side, penalty, level, seed, threads } = conditions;
  const pool = createTrialPool({ threads: threads ?? defaultThreads(), worker: io.worker });
  const progress = startProgress(io, 'Watching');
  progress.plan(schemes.length);
  try {
    const made = await playClip(
      pool,
      playbook,
      {
        ...{ play, side, penalty, level, seed, schemes, withNames },
        ...(opponent && { opponent: opponent.id }),
        ...(follow !== undefined && { follow }),
      },
      { signal: io.signal, onAnswer: progress.step },
    );
    if (made.kind === 'made') return made;
  } finally {
    progress.stop();
    await pool.close();
  }
  throw new Failure(
    `${play} begins in none of ${watchedForClip} man-ups against any of these schemes, so there is nothing to show.`,
    exitCodes.no,
  );
}

function onePlay({ playbook }: OpenPlaybook, asked: string | undefined): string {
  const [play, ...others] = chosenPlays(playbook, asked);
  if (play === undefined || asked === undefined || others.length > 0) {
    const known = playbook.plays.map(({ id }) => id).join(', ');
    throw badUse(`a clip is that of one play: name one of ${known} after --play.`);
  }
  return play;
}

/** The spot by its name, whatever its letters' size; fails with the names that there are. */
function spotOf({ playbook }: OpenPlaybook, play: string, asked: string): string {
  const spots = toEnginePlay(playbook, play).spots.map(({ id }) => id);
  const spot = spots.find((one) => one.toLowerCase() === asked.toLowerCase());
  if (spot === undefined) throw unknownName('spot after --follow', asked, spots, undefined);
  return spot;
}

/** The page's program, built beside the worker. */
function pageScript({ worker }: Io): string {
  const path = new URL('./clip-page.js', worker);
  if (!existsSync(path)) throw badUse('the program of the page is not built here. Build it first: npm run build.');
  return readFileSync(path, 'utf8');
}

async function hashOf(text: string): Promise<string> {
  return createHash('sha256').update(text).digest('base64');
}
