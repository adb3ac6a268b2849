import { chosenPlays, chosenSchemes } from '../choose-matchups.ts';
import { type AddCommand, addConditions, examples } from '../command-line.ts';
import { compareText } from '../compare-text.ts';
import { type RawConditions, readConditions } from '../conditions.ts';
import { openPlaybook } from '../open-playbook.ts';
import { repeatLines } from '../repeat-lines.ts';
import { reportNames } from '../report-names.ts';
import { simulatePlays } from '../simulate-plays.ts';

interface RawCompare extends RawConditions {
  readonly against: string;
}

/** `sliderule compare FILE`: every play against every scheme in one table. */
export const addCompare: AddCommand = (program, io) => {
  const command = program
    .command('compare')
    .description('put every play against every scheme in one table')
    .argument('<file>', 'the playbook, a JSON document')
    .option('--against <ids>', 'schemes with commas between them, or all', 'all');
  addConditions(command)
    .option('--trials <number>', 'simulated man-ups for each play and scheme (default: until goals are known to 0.03)')
    .option('--threads <number>', 'worker threads (default: one a core)')
    .addHelpText(
      'after',
      examples(io, [
        'sliderule compare playbook.json',
        'sliderule compare playbook.json --level highSchool --trials 4000',
      ]),
    )
    .action(async (file: string, raw: RawCompare) => {
      const conditions = readConditions(raw);
      const opened = await openPlaybook(file, io);
      const plays = chosenPlays(opened.playbook, undefined);
      const schemes = chosenSchemes(opened.playbook, raw.against);
      const simulated = await simulatePlays(io, opened, plays, schemes, conditions, 'goals');
      const reports = simulated.map(({ report }) => report);
      const names = plays.map((play) => reportNames(opened.playbook, play));
      io.out(`${compareText(simulated, names)}\n\n`);
      io.out(repeatLines(io.program, ['compare', file, '--against', raw.against], conditions, reports));
    });
};
