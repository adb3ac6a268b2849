import { hasErrors } from '../../playbook/index.ts';
import { type AddCommand, examples } from '../command-line.ts';
import { exitCodes } from '../failure.ts';
import { counted } from '../number-text.ts';
import { diagnosticLines, problemCount, readPlaybook } from '../open-playbook.ts';

/** `sliderule check FILE`: every problem of a playbook file at once; exit code 1 when it cannot be played. */
export const addCheck: AddCommand = (program, io, finish) => {
  program
    .command('check')
    .description('say everything that is wrong with a playbook file')
    .argument('<file>', 'the playbook, a JSON document')
    .addHelpText('after', examples(['sliderule check playbook.json', 'sliderule check playbook.json && echo ready']))
    .action(async (file: string) => {
      const { playbook, diagnostics } = await readPlaybook(file);
      io.out(diagnosticLines(diagnostics));
      if (playbook === undefined || hasErrors(diagnostics)) {
        io.out(`${file}: ${problemCount(diagnostics)}. The playbook cannot be played before the errors are mended.\n`);
        finish(exitCodes.no);
        return;
      }
      const plays = counted(playbook.plays.length, 'play');
      const players = counted(playbook.team.roster.length, 'player');
      io.out(
        `${file}: ${problemCount(diagnostics)}. ${playbook.team.name}, ${playbook.team.level}: ${plays}, ${players}.\n`,
      );
    });
};
