import {
  type Assignment,
  assignSpots,
  type Candidate,
  type Level,
  mirrorPlay,
  type Play,
  type Skills,
  skillsAt,
} from '../engine/index.ts';
import { fieldOf } from './field-limits.ts';
import { readPlay } from './play/read-play.ts';
import { createReport } from './report.ts';
import type { Playbook, Player } from './schema.ts';
import { oddReadings, toAthlete } from './to-athlete.ts';

/** The side that a play is run from: `right` is as it is written. */
export type Side = 'left' | 'right';

/**
 * The engine's play for a play of a playbook that `parsePlaybook` gave, as written or mirrored.
 * Throws RangeError when the playbook has no such play, TypeError when the playbook was never checked.
 */
export function toEnginePlay(playbook: Playbook, playId: string, side: Side = 'right'): Play {
  const entry = playbook.plays.find((play) => play.id === playId);
  if (entry === undefined)
    throw new RangeError(`unknown play: ${playId} (expected ${playbook.plays.map((play) => play.id).join(', ')})`);
  const report = createReport();
  const { value: play } = readPlay(
    entry,
    ['plays', playbook.plays.indexOf(entry)],
    playbook.sets ?? [],
    fieldOf(playbook),
    report,
  );
  if (play === undefined) throw new TypeError(`invalid play: ${report.finish()[0]?.message ?? playId}`);
  return side === 'left' ? mirrorPlay(play) : play;
}

/**
 * A player as the fit of players to spots takes him; his id is his number. His skills are those of the athlete that the simulation makes of
 * him, among the men of the team's level: so his readings count as they do there, and so does a level of his own. A reading that nobody can
 * have measured counts for nothing; `parsePlaybook` tells of it.
 */
export function toCandidate(playbook: Playbook, player: Player): Candidate {
  return {
    id: String(player.number),
    hand: player.hand,
    crosse: player.crosse ?? 'short',
    skills: skillsOf(playbook, player),
  };
}

// A line-up is asked for once for each man who may be missing, and each time for the same players.
const known = new WeakMap<Player, { readonly level: Level; readonly skills: Skills }>();

function skillsOf(playbook: Playbook, player: Player): Skills {
  const { level } = playbook.team;
  const before = known.get(player);
  if (before?.level === level) return before.skills;
  const skills = skillsAt(level, toAthlete(playbook, withoutOddReadings(playbook, player)));
  known.set(player, { level, skills });
  return skills;
}

function withoutOddReadings(playbook: Playbook, player: Player): Player {
  const odd = oddReadings(playbook, player);
  if (odd.length === 0) return player;
  return {
    ...player,
    measured: Object.fromEntries(Object.entries(player.measured ?? {}).filter(([name]) => !odd.includes(name))),
  };
}

/** Six players for a play: where each stands and why. */
export interface LineUp {
  readonly assignment: Assignment;
  /** The players in the order of the play's spots; empty when there are too few. */
  readonly players: readonly Player[];
}

/** The best six of those who are not absent, after the coach's depth chart, for the spots of an engine play. */
export function lineUpFor(playbook: Playbook, play: Play): LineUp {
  const present = playbook.team.roster.filter((player) => player.absent !== true);
  const pins = new Map<string, string>();
  for (const spot of play.spots) {
    const first = playbook.team.depth?.[spot.id]?.find(
      (number) => mayStart(present, number) && ![...pins.values()].includes(String(number)),
    );
    if (first !== undefined) pins.set(spot.id, String(first));
  }
  const assignment = assignSpots(
    play.spots,
    present.map((player) => toCandidate(playbook, player)),
    pins,
  );
  if (assignment.kind === 'short') return { assignment, players: [] };
  return {
    assignment,
    players: assignment.fits.map((fit) => present.find((player) => String(player.number) === fit.candidate)!),
  };
}

function mayStart(present: readonly Player[], number: number): boolean {
  return present.some((player) => player.number === number && player.crosse !== 'goalkeeper');
}
