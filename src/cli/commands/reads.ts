import { engineVersion, inputHash, mostReadsAt, type Play } from '../../engine/index.ts';
import { toEnginePlay } from '../../playbook/index.ts';
import { hardlyEverWords } from '../../render/index.ts';
import { penaltyOf, type ReadsEffort, readsEffort, studyReads, type WeighedSetup } from '../../worker/index.ts';
import { createTrialPool, defaultThreads } from '../../worker/node.ts';
import { chosenFoes, chosenPlays, type Foes } from '../choose-matchups.ts';
import { type AddCommand, addConditions, examples } from '../command-line.ts';
import { type Conditions, type RawConditions, readConditions, wholeNumber } from '../conditions.ts';
import { badUse, unknownName } from '../failure.ts';
import type { Io } from '../io.ts';
import { levelNote } from '../level-note.ts';
import { type OpenPlaybook, openPlaybook } from '../open-playbook.ts';
import { startProgress } from '../progress.ts';
import { readsJson } from '../reads-json.ts';
import { readsText } from '../reads-text.ts';
import { shellCommand } from '../repeat-command.ts';
import { reportNames } from '../report-names.ts';
import { runSkills } from './reads-skills.ts';

interface RawReads extends RawConditions {
  readonly play?: string;
  readonly carrier?: string;
  readonly against: string;
  readonly card?: string;
  readonly skills?: true;
  readonly json?: true;
}

/** Man-ups against each scheme that decisions are learnt from when nobody names a number, and as many others to measure them in. */
const usualTrials = 200;

/** `sliderule reads FILE`: what a man with the ball should look for, as a card. */
export const addReads: AddCommand = (program, io) => {
  const command = program
    .command('reads')
    .description('find what the man with the ball should look for, and what it is worth')
    .argument('<file>', 'the playbook, a JSON document')
    .option('--play <id>', 'the play; needed')
    .option('--carrier <spot>', 'the man with the ball (default: the one who starts the play)')
    .option(
      '--skills',
      'in place of reads what is best to practise: what a better skill of the six, or of one man, is worth',
    )
    .option('--against <ids>', "schemes with commas between them, an opponent's id, or all", 'all')
    .option('--card <number>', 'most reads on the card, 0 to 4 (default: 3 up to 12U, 4 above)');
  addConditions(command)
    .option(
      '--trials <number>',
      `man-ups against each scheme to learn from, and as many to measure in (default: ${usualTrials})`,
    )
    .option('--threads <number>', 'worker threads (default: one a core)')
    .option('--json', 'print all of it as JSON')
    .addHelpText(
      'after',
      examples(io, [
        'sliderule reads playbook.json --play lantern',
        'sliderule reads playbook.json --play lantern --carrier WL --card 2',
        'sliderule reads playbook.json --play lantern --skills',
        'sliderule reads playbook.json --play ferry --against shutoff --json',
      ]),
    )
    .action(async (file: string, raw: RawReads) => {
      const conditions = readConditions(raw);
      const opened = await openPlaybook(file, io);
      const [play, ...others] = chosenPlays(opened.playbook, raw.play);
      if (play === undefined || raw.play === undefined || others.length > 0) {
        const known = opened.playbook.plays.map(({ id }) => id).join(', ');
        throw badUse(`reads are those of one play: name one of ${known} after --play.`);
      }
      if (raw.skills === true) {
        const foes = chosenFoes(opened.playbook, raw.against);
        await runSkills(io, { file, against: raw.against, json: raw.json === true, opened, play, foes, conditions });
        return;
      }
      const written = toEnginePlay(opened.playbook, play, conditions.side);
      const carrier = chosenCarrier(written, raw.carrier);
      const level = conditions.level ?? opened.playbook.team.level;
      const reads = raw.card === undefined ? mostReadsAt(level) : wholeNumber('--card', raw.card, 0, 4);
      const foes = chosenFoes(opened.playbook, raw.against);
      io.err(levelNote(opened.playbook, conditions.level));
      const effort = readsEffort(conditions.trials ?? usualTrials);
      const study = await gather(
        io,
        setupsOf(opened, play, foes, conditions),
        { play: written, carrier },
        effort,
        conditions,
      );
      const spot = written.spots[carrier]!.id;
      if (study === null) {
        throw badUse(`${hardlyEverWords(spot)}. Name another spot after --carrier.`);
      }
      const penalty = conditions.penalty ?? penaltyOf(opened.playbook);
      const hash = inputHash({
        playbook: opened.playbook,
        play,
        carrier: spot,
        schemes: foes.schemes,
        ...(foes.opponent && { opponent: foes.opponent.id }),
        side: conditions.side,
        penalty,
        level,
        effort: { ...effort },
      });
      if (raw.json === true) {
        io.out(readsJson(study, written, reads, { seed: conditions.seed, hash, penalty, level }));
        return;
      }
      io.out(`${readsText(study, written, reads, reportNames(opened.playbook, play))}\n\n`);
      const words = [
        'reads',
        file,
        '--play',
        play,
        '--carrier',
        spot,
        '--against',
        raw.against,
        '--card',
        String(reads),
      ];
      const luck = ['--side', conditions.side, '--seed', String(conditions.seed), '--penalty', String(penalty)];
      const size = [
        '--trials',
        String(effort.trials),
        ...(conditions.level === null ? [] : ['--level', conditions.level]),
      ];
      io.out(`Same numbers again: ${io.program} ${shellCommand([...words, ...luck, ...size])}\n`);
      io.out(`Engine ${engineVersion}, seed ${conditions.seed}, input ${hash}.\n`);
    });
};

function chosenCarrier(play: Play, spot: string | undefined): number {
  const known = play.spots.map(({ id }) => id);
  const name = spot ?? play.start.ball;
  const carrier = known.findIndex((id) => id.toLowerCase() === name.toLowerCase());
  if (carrier < 0) throw unknownName('spot', name, known, undefined);
  return carrier;
}

function setupsOf(
  { document }: OpenPlaybook,
  play: string,
  { schemes, opponent }: Foes,
  { side, penalty, level, seed }: Conditions,
): readonly WeighedSetup[] {
  return schemes.map((scheme) => ({
    setup: { document, play, scheme, ...(opponent && { opponent: opponent.id }), side, penalty, level, seed },
    weight: opponent?.schemes?.[scheme] ?? 1,
  }));
}

async function gather(
  io: Io,
  setups: readonly WeighedSetup[],
  asked: { readonly play: Play; readonly carrier: number },
  effort: ReadsEffort,
  { threads }: Conditions,
) {
  const pool = createTrialPool({ threads: threads ?? defaultThreads(), worker: io.worker });
  const progress = startProgress(io, 'Simulating');
  try {
    return await studyReads(pool, setups, asked, effort, {
      signal: io.signal,
      onPlan: progress.plan,
      onAnswer: progress.step,
    });
  } finally {
    progress.stop();
    await pool.close();
  }
}
