import { chosenPlays, weighedFoes } from '../choose-matchups.ts';
import { type AddCommand, addConditions, examples } from '../command-line.ts';
import { type RawConditions, readConditions } from '../conditions.ts';
import { badUse } from '../failure.ts';
import { type OpenPlaybook, openPlaybook } from '../open-playbook.ts';
import { runCarrierReads, usualReadsTrials } from './reads-carrier.ts';
import { runRunnerReads } from './reads-runner.ts';
import { runSkills } from './reads-skills.ts';

interface RawReads extends RawConditions {
  readonly play?: string;
  readonly carrier?: string;
  readonly runner?: string;
  readonly against: string;
  readonly card?: string;
  readonly skills?: true;
  readonly json?: true;
}

/** `sliderule reads FILE`: what a man should look for, with the ball or before a run without it, as a card. */
export const addReads: AddCommand = (program, io) => {
  const command = program
    .command('reads')
    .description('find what the man with the ball should look for, and what it is worth')
    .argument('<file>', 'the playbook, a JSON document')
    .option('--play <id>', 'the play; needed')
    .option('--carrier <spot>', 'the man with the ball, or all of them (default: the one who starts the play)')
    .option('--runner <spot>', 'in his place a man without the ball: when to make each of his runs')
    .option(
      '--skills',
      'in place of reads what is best to practise: what a better skill of the six, or of one man, is worth',
    )
    .option(
      '--against <ids>',
      "schemes with commas between them, each with how often it is met if you like (box-zone:3,jump:1), an opponent's id, or all",
      'all',
    )
    .option(
      '--card <number>',
      'most reads on the card, 0 to 4 (default: 3 up to 12U, 4 above); for a run 0 to 3 (default: 1)',
    );
  addConditions(command)
    .option(
      '--trials <number>',
      `man-ups against each scheme to learn from, and as many to measure in (default: ${usualReadsTrials})`,
    )
    .option('--threads <number>', 'worker threads (default: one a core)')
    .option('--json', 'print all of it as JSON')
    .addHelpText(
      'after',
      examples(io, [
        'sliderule reads playbook.json --play lantern',
        'sliderule reads playbook.json --play lantern --carrier WL --card 2',
        'sliderule reads playbook.json --play lantern --carrier all',
        'sliderule reads playbook.json --play quarry --runner WR',
        'sliderule reads playbook.json --play lantern --skills',
        'sliderule reads playbook.json --play ferry --against box-zone:3,jump:1',
      ]),
    )
    .action(async (file: string, raw: RawReads) => {
      if (raw.carrier !== undefined && raw.runner !== undefined) {
        throw badUse('name one man: after --carrier with the ball, or after --runner without it.');
      }
      const conditions = readConditions(raw);
      const opened = await openPlaybook(file, io);
      const asked = {
        file,
        against: raw.against,
        card: raw.card,
        json: raw.json === true,
        opened,
        play: chosenPlay(opened, raw.play),
        foes: weighedFoes(opened.playbook, raw.against),
        conditions,
      };
      if (raw.skills === true) await runSkills(io, asked);
      else if (raw.runner === undefined) await runCarrierReads(io, asked, raw.carrier);
      else await runRunnerReads(io, asked, raw.runner);
    });
};

function chosenPlay({ playbook }: OpenPlaybook, named: string | undefined): string {
  const [play, ...others] = chosenPlays(playbook, named);
  if (play !== undefined && named !== undefined && others.length === 0) return play;
  const known = playbook.plays.map(({ id }) => id).join(', ');
  throw badUse(`reads are those of one play: name one of ${known} after --play.`);
}
