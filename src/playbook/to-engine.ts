import { type Assignment, assignSpots, type Candidate, mirrorPlay, type Play } from '../engine/index.ts';
import { fieldOf } from './field-limits.ts';
import { readPlay } from './play/read-play.ts';
import { createReport } from './report.ts';
import type { Playbook, Player } from './schema.ts';

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

/** A player as the fit of players to spots takes him; his id is his number. */
export function toCandidate(player: Player): Candidate {
  const { grades = {} } = player;
  const grade = (name: keyof typeof grades) => grades[name] ?? usualGrade;
  return {
    id: String(player.number),
    hand: player.hand,
    crosse: player.crosse ?? 'short',
    skills: { feed: grade('feed'), shoot: grade('shoot'), inside: grade('inside'), handle: grade('handle') },
  };
}

const usualGrade = 3;

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
  const assignment = assignSpots(play.spots, present.map(toCandidate), pins);
  if (assignment.kind === 'short') return { assignment, players: [] };
  return {
    assignment,
    players: assignment.fits.map((fit) => present.find((player) => String(player.number) === fit.candidate)!),
  };
}

function mayStart(present: readonly Player[], number: number): boolean {
  return present.some((player) => player.number === number && player.crosse !== 'goalkeeper');
}
