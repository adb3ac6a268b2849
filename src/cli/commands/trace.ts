import { type Playbook, ruleCodeOf } from '../../playbook/index.ts';
import {
  count,
  drawnField,
  eventLine,
  isMainEvent,
  playRunWords,
  sceneToSvg,
  traceEnd,
  traceScene,
} from '../../render/index.ts';
import { penaltyOf } from '../../worker/index.ts';
import { chosenFoe, chosenPlays, foeIds } from '../choose-matchups.ts';
import { type AddCommand, addConditions, examples } from '../command-line.ts';
import { type RawConditions, readConditions, wholeNumber } from '../conditions.ts';
import { badUse } from '../failure.ts';
import { levelNote } from '../level-note.ts';
import { openPlaybook } from '../open-playbook.ts';
import { type RecordedTrial, recordTrial } from '../record-trial.ts';
import { shellCommand } from '../repeat-command.ts';
import { tableWidth } from '../table.ts';
import { wrapParagraph } from '../wrap-paragraph.ts';
import { writeNewFolder } from '../write-folder.ts';

interface RawTrace extends RawConditions {
  readonly play?: string;
  readonly against?: string;
  readonly trial: string;
  readonly svg?: string;
  readonly every?: string;
  readonly duties?: true;
}

/** `sliderule trace FILE`: one simulated man-up, told in words and, when asked, drawn. */
export const addTrace: AddCommand = (program, io) => {
  const command = program
    .command('trace')
    .description('tell one simulated man-up in words, and draw it when asked')
    .argument('<file>', 'the playbook, a JSON document')
    .option('--play <id>', 'the play; needed')
    .option('--against <id>', 'the scheme, or an opponent, who then plays what he plays most; needed');
  addConditions(command)
    .option('--trial <number>', 'which of the simulated man-ups', '0')
    .option('--duties', "tell every change of a defender's duty too")
    .option('--svg <dir>', 'write pictures into this new folder')
    .option('--every <seconds>', 'one picture every so many seconds (default: one for each thing that happens)')
    .addHelpText(
      'after',
      examples(io, [
        'sliderule trace playbook.json --play lantern --against box-zone --seed 1',
        'sliderule trace playbook.json --play lantern --against jump --trial 3',
        'sliderule trace playbook.json --play lantern --against jump --svg pictures',
      ]),
    )
    .action(async (file: string, raw: RawTrace) => {
      const conditions = readConditions(raw);
      const trial = wholeNumber('--trial', raw.trial, 0, 999_999);
      const every = raw.every === undefined ? null : readEvery(raw.every);
      const opened = await openPlaybook(file, io);
      const { play, foe } = askedFor(opened.playbook, raw);
      io.err(levelNote(opened.playbook, conditions.level));
      const { scheme, opponent } = foe;
      const asked = { play, scheme, ...(opponent && { opponent: opponent.id }) };
      const recorded = recordTrial(opened, asked, conditions, trial);
      if (opponent !== undefined) io.out(`${opponent.name}, who plays this most:\n`);
      io.out(traceText(recorded, trial, raw.duties === true));
      const penalty = conditions.penalty ?? penaltyOf(opened.playbook);
      const words = ['trace', file, '--play', play, '--against', opponent?.id ?? scheme, '--side', conditions.side];
      const luck = ['--penalty', String(penalty), '--seed', String(conditions.seed), '--trial', String(trial)];
      const atLevel = conditions.level === null ? [] : ['--level', conditions.level];
      io.out(`\nSame man-up again: ${io.program} ${shellCommand([...words, ...luck, ...atLevel])}\n`);
      if (raw.svg === undefined) return;
      const files = pictures(recorded, every, drawnField(ruleCodeOf(opened.playbook).markings));
      if (io.signal.aborted) throw io.signal.reason;
      await writeNewFolder(raw.svg, files);
      io.out(`Written: ${count(files.length)} pictures into ${raw.svg}.\n`);
    });
};

/** Both that have to be named; what is missing is said in one sentence, with what can be named. */
function askedFor(
  playbook: Playbook,
  { play, against }: RawTrace,
): { readonly play: string; readonly foe: ReturnType<typeof chosenFoe> } {
  const plays = chosenPlays(playbook, undefined);
  const missing = [
    ...(play === undefined ? [`--play (one of ${plays.join(', ')})`] : []),
    ...(against === undefined ? [`--against (one of ${foeIds(playbook).join(', ')})`] : []),
  ];
  if (play === undefined || against === undefined) throw badUse(`missing ${missing.join(' and ')}.`);
  const [first = '', ...more] = chosenPlays(playbook, play);
  if (more.length > 0)
    throw badUse(`one man-up is played with one play: name ${first} or ${more.join(' or ')} after --play.`);
  return { play: first, foe: chosenFoe(playbook, against) };
}

function traceText({ trace, names, lineUp, matchup }: RecordedTrial, trial: number, duties: boolean): string {
  const lines = trace.events
    .filter((event) => duties || isMainEvent(event))
    .map((event) => eventLine(event, trace, names));
  return [
    `${names.play} against ${names.scheme}, man-up ${count(trial)}`,
    wrapParagraph(`${lineUp.join('; ')}. Defenders in small letters. Left and right are the offense's.`, tableWidth),
    wrapParagraph(oddsMeaning, tableWidth),
    '',
    ...lines.map(hangingLine),
    '',
    wrapParagraph(playRunWords(trace, matchup.play), tableWidth),
    '',
  ].join('\n');
}

const oddsMeaning =
  'Odds of a pass: that it gets past the sticks and is caught, as it leaves the stick. What the passer thought stands ' +
  'beside them where he was far out.';

// What does not fit goes on below the sentence, not below the time.
function hangingLine(line: string): string {
  const indent = line.length - line.trimStart().length;
  const text = /^ *\d+\.\d s {2}/.exec(line)?.[0] ?? '';
  const rest = wrapParagraph(line.slice(text.length), tableWidth - text.length);
  return `${' '.repeat(indent)}${text.trimStart()}${rest.replaceAll('\n', `\n${' '.repeat(text.length)}`)}`;
}

function readEvery(raw: string): number {
  const value = /^\d{1,3}(\.\d{1,3})?$/.test(raw) ? Number(raw) : Number.NaN;
  if (!(value >= 0.05 && value <= 60)) {
    throw badUse(`invalid --every: ${raw.slice(0, 40)} (expected seconds from 0.05 to 60).`);
  }
  return value;
}

type Field = ReturnType<typeof drawnField>;

function pictures(
  { trace, names, matchup }: RecordedTrial,
  every: number | null,
  field: Field,
): readonly { readonly name: string; readonly content: string }[] {
  const end = traceEnd(trace);
  const times =
    every === null
      ? [...new Set(trace.events.filter(isMainEvent).map((event) => Math.min(event.time, end)))]
      : Array.from({ length: Math.floor(end / every + 1e-9) + 1 }, (_, index) => index * every);
  const reach = matchup.defenders.map((defender) => defender.stickReach);
  return times.map((time, index) => ({
    name: `${String(index + 1).padStart(4, '0')}-${time.toFixed(2)}s.svg`,
    content: sceneToSvg(traceScene(trace, time, names, field, { reach })),
  }));
}
