import { feet } from '../units.ts';
import { nfhs } from './nfhs.ts';
import { known, toConfirm } from './rule.ts';
import type { RuleCode } from './rule-code.ts';

/** College men in the United States. */
export const ncaa: RuleCode = {
  ...nfhs,
  id: 'ncaa',
  name: 'NCAA men (college)',
  edition: '2025, as reported',
  markings: {
    ...nfhs.markings,
    halfWidth: known(30, 'NCAA 2025 Rule 1, as quoted in a public course text'),
    goalToEndLine: known(15, "kids.britannica.com, men's lacrosse"),
    goalToRestraining: known(20, 'crylax.org n=72532'),
    goalToMidfield: known(40, 'half of 80 yd between goals (britannica, trumarkathletics.com)'),
    boxHalfWidth: known(20, 'trumarkathletics.com/lacrossefield.aspx: box 35 by 40 yd'),
    creaseRadius: known(feet(9), 'crylax.org n=72532'),
    goalMouthRadius: known(feet(6), 'ncaa.com 2019-09-12, goal mouth arc approved'),
    gateHalfLength: known(5, 'usalacrosse.com, NCAA rules committee alters shot clock proposal (2019)'),
  },
  penalties: {
    ...nfhs.penalties,
    goalReleases: toConfirm(true, 'from memory', [false]),
    goalReleasesAll: toConfirm(true, 'from memory', [false]),
    nonReleasableFirst: toConfirm(true, 'from memory', [false]),
    simultaneousNonReleasable: toConfirm(true, 'from memory', [false]),
  },
  flagDown: {
    ...nfhs.flagDown,
    endsOn: toConfirm(
      nfhs.flagDown.endsOn.value,
      'forums.insidelacrosse.com 322843, as read by officials: essentially aligned with NFHS',
    ),
    mayLeaveBox: toConfirm(true, 'forums.insidelacrosse.com 322843, as read by officials', [false]),
  },
  restartDistance: toConfirm(5, 'from memory'),
  shotClock: known(
    { seconds: 80, afterPenalty: { threshold: 60, atOrBelow: 60, above: 80 } },
    'from 2022, usalacrosse.com, NCAA approves 60-second shot clock reset; 80 s: docslib.org/doc/12930869',
  ),
};
