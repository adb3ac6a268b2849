import { hasErrors } from '../../playbook/index.ts';
import { counted } from '../../render/index.ts';
import { type AddCommand, examples } from '../command-line.ts';
import { exitCodes } from '../failure.ts';
import { diagnosticLines, moreWords, problemCount, readPlaybook } from '../open-playbook.ts';
import { tableWidth } from '../table.ts';
import { wrapParagraph } from '../wrap-paragraph.ts';

interface RawCheck {
  readonly json?: true;
}

/** `sliderule check FILE`: every problem of a playbook file at once; exit code 1 when it cannot be played. */
export const addCheck: AddCommand = (program, io, finish) => {
  program
    .command('check')
    .description('say everything that is wrong with a playbook file')
    .argument('<file>', 'the playbook, a JSON document')
    .option('--json', 'print the problems as JSON for another program')
    .addHelpText(
      'after',
      examples(io, ['sliderule check playbook.json', 'sliderule check playbook.json && echo ready']),
    )
    .action(async (file: string, raw: RawCheck) => {
      const { playbook, diagnostics, moreMayShow } = await readPlaybook(file);
      if (raw.json === true) {
        io.out(`${JSON.stringify({ diagnostics, moreMayShow }, null, 2)}\n`);
        if (playbook === undefined) finish(exitCodes.no);
        return;
      }
      // Notes last: they are many lines of what is right.
      io.out(diagnosticLines(diagnostics.filter(({ severity }) => severity !== 'note')));
      io.out(diagnosticLines(diagnostics.filter(({ severity }) => severity === 'note')));
      if (playbook === undefined || hasErrors(diagnostics)) {
        const sum = `${file}: ${problemCount(diagnostics)}. The playbook cannot be played before the errors are fixed.`;
        io.out(`${wrapParagraph(`${sum}${moreWords(moreMayShow)}`, tableWidth)}\n`);
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
