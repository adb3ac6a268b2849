import { ruleCodeOf, toEnginePlay } from '../../playbook/index.ts';
import { count, drawnField, playFrames, sceneToSvg } from '../../render/index.ts';
import { chosenPlays } from '../choose-matchups.ts';
import { type AddCommand, examples } from '../command-line.ts';
import { readConditions } from '../conditions.ts';
import { type OpenPlaybook, openPlaybook } from '../open-playbook.ts';
import { writeNewFolder } from '../write-folder.ts';

interface RawDraw {
  readonly play?: string;
  readonly side: string;
  readonly out: string;
}

/** `sliderule draw FILE`: a play as it is written, one picture a beat. */
export const addDraw: AddCommand = (program, io) => {
  program
    .command('draw')
    .description('draw a play as it is written, one picture for each step, to see whether it says what you mean')
    .argument('<file>', 'the playbook, a JSON document')
    .option('--play <ids>', 'only these plays, with commas between them (default: every play)')
    .option('--side <left|right>', 'draw the play on this side, as the offense sees it looking in', 'right')
    .option('--out <dir>', 'write the pictures into this new folder', 'drawings')
    .addHelpText(
      'after',
      examples(io, [
        'sliderule draw playbook.json',
        'sliderule draw playbook.json --play lantern --out lantern-pictures',
        'sliderule draw playbook.json --play lantern --side left --out left',
      ]),
    )
    .action(async (file: string, raw: RawDraw) => {
      const { side } = readConditions({ side: raw.side });
      const opened = await openPlaybook(file, io);
      const plays = chosenPlays(opened.playbook, raw.play);
      const files = plays.flatMap((play) => picturesOf(opened, play, side));
      if (io.signal.aborted) throw io.signal.reason;
      await writeNewFolder(raw.out, files);
      io.out(
        `Written: ${count(files.length)} pictures into ${raw.out}, ${files[0]?.name} first. Any browser opens them.\n`,
      );
    });
};

function picturesOf(
  { playbook }: OpenPlaybook,
  play: string,
  side: 'left' | 'right',
): readonly { readonly name: string; readonly content: string }[] {
  const field = drawnField(ruleCodeOf(playbook).markings);
  const frames = playFrames(toEnginePlay(playbook, play, side), field);
  return frames.map(({ beat, lastTen, scene }, i) => ({
    // Two digits, so that folders list them in order.
    name: [
      play,
      ...(side === 'left' ? ['left'] : []),
      String(i).padStart(2, '0'),
      ...(lastTen ? ['last-ten'] : []),
      beat,
    ]
      .join('-')
      .concat('.svg'),
    content: sceneToSvg(scene),
  }));
}
