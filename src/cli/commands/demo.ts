import { join } from 'node:path';
import { demoPlaybook, demoText } from '../../playbook/index.ts';
import { type AddCommand, addConditions, examples } from '../command-line.ts';
import { type RawConditions, readConditions } from '../conditions.ts';
import { shellCommand } from '../repeat-command.ts';
import { testPlays } from '../test-plays.ts';
import { writeNew } from '../write-file.ts';

/** What the demo is called where it is written to. */
const demoFile = 'playbook.json';

/**
 * Few enough that the whole demo, build included, is on the screen within ten seconds on two cores: of the CPU time of `npm start` all
 * but about 3 s goes into trials. A test of one's own runs longer.
 */
const demoTrials = '150';

/** `sliderule demo [DIR]`: writes the demo playbook, or plays it when no folder is named. */
export const addDemo: AddCommand = (program, io) => {
  const command = program
    .command('demo')
    .description('write the demo playbook into a folder to start your own from, or test it when no folder is named')
    .argument('[dir]', 'folder to write playbook.json into; an existing file is left alone');
  addConditions(command)
    .option('--trials <number>', `simulated man-ups for each play and scheme (default: ${demoTrials})`)
    .option('--threads <number>', 'worker threads (default: one a core)')
    .addHelpText(
      'after',
      examples(io, ['sliderule demo', 'sliderule demo my-team && sliderule test my-team/playbook.json']),
    )
    .action(async (dir: string | undefined, raw: RawConditions) => {
      if (dir === undefined) {
        const opened = { playbook: demoPlaybook, document: demoText };
        const conditions = readConditions({ trials: demoTrials, ...raw });
        await testPlays(io, opened, { plays: undefined, against: 'all', json: false }, conditions, ['demo']);
        return;
      }
      const path = join(dir, demoFile);
      await writeNew(path, demoText);
      const next = ['check', 'test', 'compare'].map((name) => `  ${io.program} ${shellCommand([name, path])}`);
      io.out(`Written: ${path}. Open it in any editor, then try:\n${next.join('\n')}\n`);
    });
};
