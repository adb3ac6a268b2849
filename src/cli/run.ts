import { Command, CommanderError } from 'commander';
import { type AddCommand, examples, type Finish } from './command-line.ts';
import { addCall } from './commands/call.ts';
import { addCheck } from './commands/check.ts';
import { addClip } from './commands/clip.ts';
import { addCompare } from './commands/compare.ts';
import { addDemo } from './commands/demo.ts';
import { addDraw } from './commands/draw.ts';
import { addOpen } from './commands/open.ts';
import { addPractice } from './commands/practice.ts';
import { addQuiz } from './commands/quiz.ts';
import { addReads } from './commands/reads.ts';
import { addSchemes } from './commands/schemes.ts';
import { addScout } from './commands/scout.ts';
import { addSeason } from './commands/season.ts';
import { addSets } from './commands/sets.ts';
import { addSheet } from './commands/sheet.ts';
import { addTest } from './commands/test.ts';
import { addTrace } from './commands/trace.ts';
import { type ExitCode, exitCodes, Failure } from './failure.ts';
import type { Io } from './io.ts';
import { printable } from './printable.ts';
import { tableWidth } from './table.ts';
import { version } from './version.ts';
import { wrapParagraph } from './wrap-paragraph.ts';

const commands: readonly AddCommand[] = [
  addOpen,
  addCheck,
  addDraw,
  addTest,
  addCompare,
  addReads,
  addCall,
  addSheet,
  addPractice,
  addClip,
  addQuiz,
  addSeason,
  addScout,
  addTrace,
  addSchemes,
  addSets,
  addDemo,
];

/**
 * Runs one command line and returns its exit code. Touches nothing but `io` and the files that the command names;
 * never throws, and never prints a stack trace.
 */
export async function run(args: readonly string[], io: Io): Promise<ExitCode> {
  const safe: Io = { ...io, out: (text) => io.out(printable(text)), err: (text) => io.err(printable(text)) };
  let exitCode: ExitCode = exitCodes.fine;
  const program = createProgram(safe, (code) => {
    exitCode = code;
  });
  if (args.length === 0) {
    safe.err(program.helpInformation());
    return exitCodes.badUse;
  }
  try {
    await program.parseAsync([...args], { from: 'user' });
    return exitCode;
  } catch (error) {
    return explain(error, safe);
  }
}

function createProgram(io: Io, finish: Finish): Command {
  const program = new Command(io.program)
    .description('Test a man-up play against every man-down scheme: who comes open, when, and what it is worth.')
    .version(version, '-V, --version', 'print the version')
    .helpOption('-h, --help', 'print this help')
    .helpCommand('help [command]', 'print the help of a command')
    .configureOutput({
      writeOut: io.out,
      writeErr: () => undefined,
      getOutHelpWidth: () => tableWidth,
      getErrHelpWidth: () => tableWidth,
    })
    .addHelpText(
      'after',
      examples(io, ['sliderule demo my-team', 'sliderule test my-team/playbook.json', 'sliderule help test']),
    )
    .exitOverride();
  for (const add of commands) add(program, io, finish);
  return program;
}

function explain(error: unknown, io: Io): ExitCode {
  if (error instanceof CommanderError) {
    if (error.exitCode === 0) return exitCodes.fine;
    io.err(`${sentence(error.message.replace(/^error: /, ''))} See: ${io.program} --help\n`);
    return exitCodes.badUse;
  }
  if (io.signal.aborted) {
    io.err('Stopped. Nothing was written.\n');
    return exitCodes.interrupted;
  }
  if (error instanceof Failure) {
    io.err(`${wrapParagraph(error.message, tableWidth)}\n`);
    return error.exitCode;
  }
  const what = error instanceof Error ? error.message : String(error);
  io.err(
    `${wrapParagraph(`Sliderule itself failed: ${what}. This is a fault of the program, not yours; please report it with the command that you typed.`, tableWidth)}\n`,
  );
  return exitCodes.badUse;
}

// Commander's own messages have no full stop, and some carry a second line with the likeliest name.
function sentence(message: string): string {
  const [first = '', second] = message.split('\n');
  const whole = second === undefined ? first : `${first} ${second.replace(/^\((.*)\)$/, '$1')}`;
  return /[.?!]$/.test(whole) ? whole : `${whole}.`;
}
