import type { Command } from 'commander';
import type { ExitCode } from './failure.ts';
import type { Io } from './io.ts';
import { asTyped } from './program-name.ts';

/** Where a command leaves its exit code when the answer is no without anything having failed. */
export type Finish = (code: ExitCode) => void;

/** Adds one command to the program. */
export type AddCommand = (program: Command, io: Io, finish: Finish) => void;

/** The examples below a command's help, written with the program's bare name and printed as it is typed here. */
export function examples(io: Io, lines: readonly string[]): string {
  return `\nExamples:\n${lines.map((line) => `  ${asTyped(line, io.program)}`).join('\n')}\n`;
}

/** The options that every simulating command shares. */
export function addConditions(command: Command): Command {
  return command
    .option('--side <left|right>', 'run the play on this side, as the offense sees it looking in', 'right')
    .option('--penalty <seconds>', "length of the penalty (default: the playbook's, or 30)")
    .option('--seed <number>', 'luck of the simulated chances; the same seed gives the same answer', '1')
    .option('--level <level>', "level both sides play at (default: the team's own)");
}
