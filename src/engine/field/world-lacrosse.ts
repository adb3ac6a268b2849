import { feet, metres } from '../units.ts';
import { nfhs } from './nfhs.ts';
import { known, toConfirm } from './rule.ts';
import type { RuleCode } from './rule-code.ts';

/** Men's field play between nations. */
export const worldLacrosse: RuleCode = {
  ...nfhs,
  id: 'worldLacrosse',
  name: 'World Lacrosse men (field)',
  edition: '2025-2027, as quoted in a public course text',
  markings: {
    ...nfhs.markings,
    halfWidth: toConfirm(metres(27.5), 'Rule 1.1: 50 to 60 m wide', [metres(25), metres(30)]),
    goalToEndLine: known(metres(12), 'worldlacrosse.sport/mens-lacrosse; Rule 2.2'),
    goalToRestraining: known(metres(18), 'dlgsc.wa.gov.au sports dimensions guide'),
    goalToMidfield: toConfirm(
      metres(38),
      'Rule 1.1: 91.4 to 100 m long, less 24 m, halved; a news page of the body says 110 m',
      [metres(33.7), metres(43)],
    ),
    boxHalfWidth: known(null, 'dlgsc.wa.gov.au sports dimensions guide: the line spans the field'),
    creaseRadius: toConfirm(metres(3), 'worldlacrosse.sport/mens-lacrosse', [metres(2.74)]),
    goalMouthRadius: toConfirm(null, 'from memory'),
    goalWidth: known(metres(1.83), 'Rule 2.1; dlgsc.wa.gov.au'),
    goalHeight: known(metres(1.83), 'Rule 2.1; dlgsc.wa.gov.au'),
    goalDepth: toConfirm(feet(7), 'as in the United States; not read'),
    gateHalfLength: known(metres(6.5), 'worldlacrosse.sport/mens-lacrosse: 13 m'),
  },
  counts: {
    ...nfhs.counts,
    attackingEnd: known(6, 'Rule 65.1'),
    defendingEnd: known(7, 'Rule 65.1'),
    servingCounts: toConfirm(true, 'as in the United States; not read', [false]),
    mostShort: toConfirm(3, 'as in the United States; not read'),
    longCrosses: toConfirm(4, 'from memory'),
  },
  penalties: {
    playedShort: known(true, 'Rules 50.1 and 68.1'),
    technical: known(30, 'Rule 50.1 (minor foul)'),
    personal: known([60, 120, 180], 'Rule 68.1 (major foul)'),
    goalReleases: toConfirm(true, 'from memory', [false]),
    goalReleasesAll: toConfirm(true, 'from memory', [false]),
    nonReleasableFirst: toConfirm(true, 'from memory', [false]),
    simultaneousNonReleasable: toConfirm(true, 'from memory', [false]),
  },
  flagDown: {
    endsOn: toConfirm(
      ['loss of control', 'clear loss of a scoring chance', 'a shot', 'ball taken behind the goal a second time'],
      'healthguidedaily.com (older international text; may be superseded)',
    ),
    goalWipesTechnical: toConfirm(true, 'from memory', [false]),
    mayLeaveBox: toConfirm(true, 'not read', [false]),
  },
  restartOutsideBox: toConfirm(true, 'as in the United States; not read', [false]),
  restartDistance: toConfirm(metres(5), 'from memory'),
  shotClock: toConfirm(
    { seconds: 80, afterPenalty: { threshold: 80, atOrBelow: 80, above: 80 } },
    '80 s: Rule 43.1; what a penalty does to it was not read',
  ),
};
