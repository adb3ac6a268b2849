import { sets } from '../engine/index.ts';
import type { Report } from './report.ts';
import type { Playbook } from './schema.ts';

/** Men on the field in a man-up unit. */
const unitSize = 6;

/** Says what is wrong with the roster and the depth chart, and at which levels no team is ever a man up. */
export function checkTeam(playbook: Playbook, report: Report): void {
  checkLevel(playbook, report);
  checkRoster(playbook, report);
  checkDepth(playbook, report);
}

function checkLevel({ team }: Playbook, report: Report): void {
  if (team.level !== '8U' && team.level !== '10U') return;
  report.add(
    'level-no-man-up',
    ['team', 'level'],
    `At ${team.level} no team is ever a man up or down in games: the player who fouls is replaced (USA Lacrosse boys' youth rules, since 2020). Use these plays in practice; confirm in your rulebook.`,
  );
}

function checkRoster({ team }: Playbook, report: Report): void {
  const wearers = new Map<number, string>();
  for (const [i, player] of team.roster.entries()) {
    const other = wearers.get(player.number);
    if (other !== undefined) {
      report.add(
        'number-twice',
        ['team', 'roster', i, 'number'],
        `Number ${player.number} is worn by ${other} and by ${player.name}. Give one of them another number.`,
      );
    }
    wearers.set(player.number, player.name);
  }
  const field = team.roster.filter((player) => player.crosse !== 'goalkeeper' && player.absent !== true);
  if (field.length < unitSize) {
    report.add(
      'roster-short',
      ['team', 'roster'],
      `The roster has ${field.length} field players who are not absent. A man-up unit needs ${unitSize}: add ${unitSize - field.length}.`,
    );
  }
  if (!team.roster.some((player) => player.crosse === 'goalkeeper')) {
    report.add(
      'keeper-missing',
      ['team', 'roster'],
      'The roster has no goalkeeper. Give one player "crosse": "goalkeeper"; plays can be tested without one.',
    );
  }
}

function checkDepth(playbook: Playbook, report: Report): void {
  const { team } = playbook;
  const known = knownSpots(playbook);
  for (const [spot, numbers] of Object.entries(team.depth ?? {})) {
    if (!known.has(spot)) {
      report.add(
        'spot-unknown',
        ['team', 'depth', spot],
        `No set has a spot "${spot}". The spots are ${[...known].join(', ')}.`,
      );
    }
    for (const [i, number] of numbers.entries()) {
      const here = ['team', 'depth', spot, i];
      const player = team.roster.find((each) => each.number === number);
      if (player === undefined)
        report.add(
          'depth-player',
          here,
          `The depth chart has number ${number} at ${spot}, but nobody on the roster wears it.`,
        );
      else if (player.crosse === 'goalkeeper')
        report.add('depth-player', here, `The depth chart has ${player.name} at ${spot}, but he is the goalkeeper.`);
      if (numbers.indexOf(number) < i)
        report.add('depth-player', here, `The depth chart has number ${number} twice at ${spot}. Take one out.`);
    }
  }
}

function knownSpots(playbook: Playbook): ReadonlySet<string> {
  const builtIn = Object.values(sets).flatMap((set) => set.spots.map((spot) => spot.id));
  const own = (playbook.sets ?? []).flatMap((set) => Object.keys(set.spots));
  return new Set([...builtIn, ...own]);
}
