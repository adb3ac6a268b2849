import { type AddCommand, addConditions, examples } from '../command-line.ts';
import { type RawConditions, readConditions } from '../conditions.ts';
import { openPlaybook } from '../open-playbook.ts';
import { testPlays } from '../test-plays.ts';

interface RawTest extends RawConditions {
  readonly play?: string;
  readonly against: string;
  readonly json?: true;
}

/** `sliderule test FILE`: who comes open, when, and what it is worth against each scheme. */
export const addTest: AddCommand = (program, io) => {
  const command = program
    .command('test')
    .description('say who comes open, when, and what it is worth against each man-down scheme')
    .argument('<file>', 'the playbook, a JSON document')
    .option('--play <ids>', 'only these plays, with commas between them (default: every play)')
    .option('--against <ids>', "schemes with commas between them, an opponent's id, or all", 'all');
  addConditions(command)
    .option('--trials <number>', 'simulated man-ups for each play and scheme (default: until goals are known to 0.03)')
    .option('--threads <number>', 'worker threads (default: one a core)')
    .option('--json', 'print the numbers as JSON for another program')
    .addHelpText(
      'after',
      examples(io, [
        'sliderule test playbook.json',
        'sliderule test playbook.json --play lantern --against box-zone,shutoff',
        'sliderule test playbook.json --side left --penalty 60 --trials 4000',
        'sliderule test playbook.json --json > result.json',
      ]),
    )
    .action(async (file: string, raw: RawTest) => {
      const conditions = readConditions(raw);
      const opened = await openPlaybook(file, io);
      const choice = { plays: raw.play, against: raw.against, json: raw.json === true };
      await testPlays(io, opened, choice, conditions, ['test', file]);
    });
};
