import { schemeList } from '../../engine/index.ts';
import { type AddCommand, examples } from '../command-line.ts';
import { formatTable, tableWidth } from '../table.ts';
import { wrapParagraph } from '../wrap-paragraph.ts';

/** `sliderule schemes`: the man-down schemes that `--against` can name. */
export const addSchemes: AddCommand = (program, io) => {
  program
    .command('schemes')
    .description('list the man-down schemes that --against can name')
    .addHelpText('after', examples(io, ['sliderule schemes']))
    .action(() => {
      const rows = schemeList.map((scheme) => [
        scheme.id,
        `6 v ${scheme.defenders}`,
        scheme.notes.summary,
        scheme.notes.leaves,
      ]);
      const table = formatTable(
        [
          { title: 'scheme', align: 'left' },
          { title: 'men', align: 'left' },
          { title: 'what it does', align: 'left', flexible: true },
          { title: 'what it leaves open', align: 'left', flexible: true },
        ],
        rows,
      );
      const own = 'A playbook can hold schemes of its own; they are named by their id as well.';
      io.out(`${table}\n\n${wrapParagraph(own, tableWidth)}\n`);
    });
};
