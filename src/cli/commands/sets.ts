import { sets } from '../../engine/index.ts';
import { type AddCommand, examples } from '../command-line.ts';
import { formatTable, tableWidth } from '../table.ts';
import { wrapParagraph } from '../wrap-paragraph.ts';

/** `sliderule sets`: the sets that a play can start from. */
export const addSets: AddCommand = (program, io) => {
  program
    .command('sets')
    .description('list the man-up sets that a play can name')
    .addHelpText('after', examples(io, ['sliderule sets']))
    .action(() => {
      const rows = Object.values(sets).map((set) => [set.id, set.spots.map((spot) => spot.id).join(' '), set.summary]);
      const table = formatTable(
        [
          { title: 'set', align: 'left' },
          { title: 'spots', align: 'left' },
          { title: 'where they stand', align: 'left', flexible: true },
        ],
        rows,
      );
      io.out(
        `${table}\n\n${wrapParagraph("Sets are counted from the top down. Left and right are the offense's, looking in at the goal.", tableWidth)}\n`,
      );
    });
};
