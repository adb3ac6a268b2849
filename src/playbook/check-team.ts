import type { Report } from './report.ts';
import type { Playbook } from './schema.ts';
import { allSpots } from './scheme-data.ts';
import { oddReadings } from './to-athlete.ts';

/** Men on the field in a man-up unit. */
const unitSize = 6;

/** Says what is wrong with the roster, its measurements and the depth chart. */
export function checkTeam(playbook: Playbook, report: Report): void {
  checkRoster(playbook, report);
  checkMeasured(playbook, report);
  checkDepth(playbook, report);
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

function checkMeasured(playbook: Playbook, report: Report): void {
  for (const [i, player] of playbook.team.roster.entries()) {
    // One measurement at a time, so that each slip is told at its own place.
    for (const name of oddReadings(playbook, player)) {
      report.add(
        'measured-odd',
        ['team', 'roster', i, 'measured', name],
        `${name} of ${player.name} is so far from what is usual at ${player.level ?? playbook.team.level} that it must be a slip or in another unit. Look at the numbers again.`,
      );
    }
  }
}

function checkDepth(playbook: Playbook, report: Report): void {
  const { team } = playbook;
  const known = allSpots(playbook);
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
