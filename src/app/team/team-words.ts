import type { Crosse, Grades, Hand, Level, RuleCodeId } from '../../engine/index.ts';
import { levels, ruleCodeIds, ruleCodes } from '../../engine/index.ts';
import type { PlayerRole } from '../../playbook/index.ts';

/** The levels as a coach says them. */
export const levelWords: Readonly<Record<Level, string>> = {
  '8U': '8U',
  '10U': '10U',
  '12U': '12U',
  '14U': '14U',
  highSchool: 'High school',
  college: 'College',
  pro: 'Pro',
};

export const handWords: Readonly<Record<Hand, string>> = { right: 'Right', left: 'Left', both: 'Both' };

export const crosseWords: Readonly<Record<Crosse, string>> = { short: 'Short', pole: 'Pole', goalkeeper: 'Goalie' };

export const roleWords: Readonly<Record<PlayerRole, string>> = {
  attack: 'Attack',
  midfield: 'Midfield',
  defense: 'Defense',
  lsm: 'LSM',
  goalkeeper: 'Goalkeeper',
};

export type Skill = keyof Grades;

/** The nine skills in the order of the table: his name in a column's head, and what a grade of it moves. */
export const skillWords: Readonly<
  Record<Skill, { readonly short: string; readonly name: string; readonly moves: string }>
> = {
  speed: { short: 'Spd', name: 'Speed', moves: 'top speed and start' },
  catch: { short: 'Cat', name: 'Catch', moves: 'odds to catch' },
  pass: { short: 'Pas', name: 'Pass', moves: 'speed and aim of passes' },
  feed: { short: 'Fee', name: 'Feed', moves: 'aim and quickness of passes inside' },
  shoot: { short: 'Sho', name: 'Shoot', moves: 'speed and aim of shots' },
  inside: { short: 'Ins', name: 'Inside', moves: 'how quickly a catch becomes a shot' },
  handle: { short: 'Han', name: 'Handle', moves: 'how quickly a catch becomes a pass' },
  offHand: { short: 'Off', name: 'Off hand', moves: 'how little is lost with the other hand' },
  sense: { short: 'Sen', name: 'Sense', moves: 'how early he sees things, how few fakes he bites on' },
};

export const skillNames = Object.keys(skillWords) as readonly Skill[];

export const levelOptions = levels.map((value) => ({ value, text: levelWords[value] }));

export const ruleCodeOptions = ruleCodeIds.map((value: RuleCodeId) => ({ value, text: ruleCodes[value].name }));
