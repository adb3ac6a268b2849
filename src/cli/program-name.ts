import { basename, relative } from 'node:path';
import { shellCommand } from './repeat-command.ts';

/** Where whoever starts the program for somebody says how it was called, such as "npm start --". */
export const programVariable = 'SLIDERULE_PROGRAM';

/**
 * What to type in front of a command so that it works from where this one was typed: what the starter says, the bare name when the
 * program is installed under it, else Node with the file's path.
 */
export function programName(said: string | undefined, script: string, folder: string): string {
  if (said !== undefined && said !== '') return said;
  if (basename(script) === 'sliderule') return 'sliderule';
  const path = relative(folder, script);
  return shellCommand(['node', path.startsWith('..') ? script : path]);
}

/** A line that is written with the bare name, as it is typed here. */
export function asTyped(line: string, program: string): string {
  // npm prints lines of its own, which must not come into a file that another program reads.
  const quiet = line.includes(' > ') ? program.replace(/^(npm .*)--$/, '$1--silent --') : program;
  return line.replaceAll(/\bsliderule(?= )/g, () => quiet);
}
