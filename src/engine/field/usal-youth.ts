import { nfhs } from './nfhs.ts';
import { known, toConfirm } from './rule.ts';
import type { RuleCode } from './rule-code.ts';

const noReleaseSource =
  'Rule 7-2 b-g since 2023, usalacrosse.com, high school and youth boys\' rules changes: the text as read ends in "eliminates releasable penalty adm"';

/** Boys' youth, 14 and under: the high school book with the youth rules of USA Lacrosse. */
export const usal14U: RuleCode = {
  ...nfhs,
  id: 'usal14U',
  name: 'USA Lacrosse boys 14U',
  edition: '2017 youth rulebook with the changes reported to 2023',
  markings: {
    ...nfhs.markings,
    halfWidth: toConfirm(30, 'Rule 1.2.1 (2017): 53 1/3 to 60 yd wide', [80 / 3]),
    goalToRestraining: known(20, "2017 US Lacrosse Boys' Youth Rulebook, 14U diagram"),
    creaseRadius: known(3, "2017 US Lacrosse Boys' Youth Rulebook, Rule 1.3.1"),
  },
  penalties: {
    ...nfhs.penalties,
    goalReleases: toConfirm(false, noReleaseSource, [true]),
  },
};

/** Boys' youth, 12 and under; seven a side is common beside ten. */
export const usal12U: RuleCode = {
  ...usal14U,
  id: 'usal12U',
  name: 'USA Lacrosse boys 12U',
  counts: {
    ...usal14U.counts,
    players: toConfirm(10, 'aloapgh.org, NFHS and youth rules: seven a side on a full field, ten also played', [7]),
    longCrosses: toConfirm(4, 'aloapgh.org: 4 of ten, 3 of seven', [3]),
  },
};

const noManUpSource =
  'uslacrosse.org, changes and clarifications announced for US Lacrosse boys\' youth rules (2020): "teams never being man-down or man-up"';
const noManUpNote =
  'At this age no team is a man up in games: the man who fouled is replaced. Man-up plays are a game for practice.';

/** Boys' youth, 10 and under: nobody is a man up. */
export const usal10U: RuleCode = {
  ...usal12U,
  id: 'usal10U',
  name: 'USA Lacrosse boys 10U',
  counts: {
    ...usal12U.counts,
    players: toConfirm(7, 'aloapgh.org: six or seven a side with the goalkeeper', [6]),
    longCrosses: toConfirm(2, '2018 rulebook, 2.1.1: 2; aloapgh.org, undated: 3', [3]),
  },
  penalties: { ...usal12U.penalties, playedShort: known(false, noManUpSource) },
  restartDistance: known(5, 'uslacrosse.org, 2020 youth rules: all must be 5 yd away first'),
  note: noManUpNote,
};

/** Boys' youth, 8 and under: nobody is a man up. */
export const usal8U: RuleCode = {
  ...usal10U,
  id: 'usal8U',
  name: 'USA Lacrosse boys 8U',
  counts: { ...usal10U.counts, longCrosses: toConfirm(0, 'nipmuclax.com: no long crosse listed at this age') },
};
