import { chosenFoes, chosenPlays } from '../choose-matchups.ts';
import { type AddCommand, addConditions, examples } from '../command-line.ts';
import { compareText } from '../compare-text.ts';
import { type RawConditions, readConditions } from '../conditions.ts';
import { openPlaybook } from '../open-playbook.ts';
import { repeatLines } from '../repeat-lines.ts';
import { reportNames } from '../report-names.ts';
import { simulatePlays } from '../simulate-plays.ts';

interface RawCompare extends RawConditions {
  readonly play?: string;
  readonly against: string;
}

/** `sliderule compare FILE`: every play against every scheme in one table. */
export const addCompare: AddCommand = (program, io) => {
  const command = program
    .command('compare')
    .description('put every play against every scheme in one table')
    .argument('<file>', 'the playbook, a JSON document')
    .option('--play <ids>', 'only these plays, with commas between them (default: every play)')
    .option('--against <ids>', "schemes with commas between them, an opponent's id, or all", 'all');
  addConditions(command)
    .option('--trials <number>', 'simulated man-ups for each play and scheme (default: until goals are known to 0.03)')
    .option('--threads <number>', 'worker threads (default: one a core)')
    .addHelpText(
      'after',
      examples(io, [
        'sliderule compare playbook.json',
        'sliderule compare playbook.json --play lantern,ferry --against shutoff',
        'sliderule compare playbook.json --level highSchool --trials 4000',
      ]),
    )
    .action(async (file: string, raw: RawCompare) => {
      const conditions = readConditions(raw);
      const opened = await openPlaybook(file, io);
      const plays = chosenPlays(opened.playbook, raw.play);
      const foes = chosenFoes(opened.playbook, raw.against);
      const simulated = await simulatePlays(io, opened, plays, foes, conditions, 'goals');
      const reports = simulated.map(({ report }) => report);
      const names = plays.map((play) => reportNames(opened.playbook, play));
      const words = ['compare', file, ...(raw.play === undefined ? [] : ['--play', raw.play])];
      io.out(`${compareText(simulated, names)}\n\n`);
      io.out(repeatLines(io.program, [...words, '--against', raw.against], conditions, reports));
    });
};
