import { feet } from '../units.ts';
import { known, toConfirm } from './rule.ts';
import type { Counts, FlagDown, Markings, Penalties, RuleCode } from './rule-code.ts';

const markings: Markings = {
  halfWidth: toConfirm(30, 'inlaxref.org, trumarkathletics.com: 53 1/3 to 60 yd wide', [80 / 3]),
  goalToEndLine: known(15, 'galaxref.com/?p=17201'),
  goalToRestraining: toConfirm(20, 'NFHS 2022 Rule 1-2-3 as quoted at gploa.org/?p=801; 25 on a unified field', [25]),
  goalToMidfield: toConfirm(40, 'half of 80 yd between goals (galaxref.com/?p=17201); 45 on a unified field', [45]),
  boxHalfWidth: known(20, "2017 US Lacrosse Boys' Youth Rulebook, 14U diagram: box 35 by 40 yd"),
  creaseRadius: known(feet(9), 'galaxref.com/?p=17201'),
  goalMouthRadius: known(null, 'emloa.org, NFHS and NCAA rule differences: no goal mouth'),
  goalWidth: known(feet(6), 'trumarkathletics.com/lacrossefield.aspx'),
  goalHeight: known(feet(6), 'trumarkathletics.com/lacrossefield.aspx'),
  goalDepth: known(feet(7), 'trumarkathletics.com/lacrossefield.aspx'),
  gateHalfLength: known(
    5,
    "Rules 1-2-7 and 1-2-8, usalacrosse.com, high school and youth boys' rules changes for 2023",
  ),
};

const counts: Counts = {
  players: known(10, 'inlaxref.org, play of the game'),
  attackingEnd: known(6, 'inlaxref.org, play of the game'),
  defendingEnd: known(7, 'inlaxref.org, play of the game'),
  servingCounts: known(true, 'inlaxref.org, play of the game: including players serving penalties'),
  mostShort: known(3, 'umloa.org, Rule 7 penalty enforcement'),
  longCrosses: known(4, 'NFHS 2-7-2 (2024), lakehoustonlax.com copy of the USA Lacrosse release'),
};

const penalties: Penalties = {
  playedShort: known(true, 'inlaxref.org, fouls and penalties'),
  technical: known(30, 'inlaxref.org, fouls and penalties'),
  personal: known([60, 120, 180], 'inlaxref.org, fouls and penalties'),
  goalReleases: known(true, 'Rule 7-2, powershow.com/view/980e4 (rules clinic)'),
  goalReleasesAll: known(true, 'umloa.org, Rule 7 penalty enforcement'),
  nonReleasableFirst: known(true, 'powershow.com/view/980e4 (rules clinic)'),
  simultaneousNonReleasable: known(true, 'Rules 7-6 and 7-2-1d, powershow.com/view/980e4 (rules clinic)'),
};

const flagDown: FlagDown = {
  endsOn: known(
    [
      'goal',
      'ball out of bounds',
      'defense gains possession',
      'attack fouls',
      'serious injury',
      'lost required equipment in a scrimmage area',
      'attack calls time-out',
      'period ends',
      'second defensive foul, unless a scoring play is imminent',
    ],
    'Rule 7-8, rmloa.org/goodies',
  ),
  goalWipesTechnical: toConfirm(true, 'from memory', [false]),
  mayLeaveBox: known(true, "since 2019, usalacrosse.com, NFHS amends multiple boys' lacrosse rules"),
};

/** High school boys in the United States. */
export const nfhs: RuleCode = {
  id: 'nfhs',
  name: 'NFHS boys (high school)',
  edition: '2022 to 2026, as reported',
  markings,
  counts,
  penalties,
  flagDown,
  restartOutsideBox: known(true, 'Rule 7-3, powershow.com/view/980e4; umloa.org, Rule 4 play of the game'),
  restartDistance: known(5, 'Rule 4-22 (2020), lexingtonlax.org'),
  shotClock: toConfirm(null, 'emloa.org, NFHS and NCAA rule differences; states may adopt one'),
};
