import type { Matchup } from '../chance/matchup.ts';
import { dutyNames } from '../defense/duty.ts';
import { mirrorDefenderName } from '../defense/mirror-name.ts';
import type { Scheme } from '../defense/scheme.ts';
import type { OwnThrowSummary } from '../looks/own-throws.ts';
import { type LookValue, leastReplays } from '../looks/plan-forced.ts';
import type { LookSummary } from '../looks/summarize.ts';
import { estimateCount } from '../statistics/estimate-count.ts';
import { quartiles } from '../statistics/quantile.ts';
import { wilsonInterval } from '../statistics/wilson-interval.ts';
import type { LookReport, OwnThrowReport, PlayRunReport, SchemeReport, SeenLook } from './report.ts';
import type { Tally } from './tally.ts';
import { turnoverKinds } from './turnover-kinds.ts';

/** Looks listed for one scheme, besides those that the play throws itself. */
const mostLooks = 8;

/** What of a matchup a report names. */
export interface Reported extends Pick<Matchup, 'play' | 'sense'> {
  readonly scheme: Pick<Scheme, 'id' | 'names'>;
}

/** What watching a play's trials brought. */
export interface FoundLooks {
  /** Trials watched. */
  readonly watched: number;
  readonly looks: readonly LookSummary[];
  readonly values: readonly LookValue[];
  readonly own: readonly OwnThrowSummary[];
}

const nothingFound: FoundLooks = { watched: 0, looks: [], values: [], own: [] };

/**
 * What a play does against a scheme: a tally of its trials, and the looks of its watched trials with what they were found to be worth.
 * Looks without a value are left out; pass nothing found when only goals are wanted. Best looks first, by share x value,
 * then those whose value rests on too few replays.
 */
export function reportScheme(matchup: Reported, tally: Tally, found: FoundLooks = nothingFound): SchemeReport {
  const trials = tally.to - tally.from;
  return {
    scheme: matchup.scheme.id,
    trials,
    goalsPerChance: estimateCount(tally.goals_byTrial),
    shotsPerChance: estimateCount(tally.shots_byTrial),
    turnoversPerChance: estimateCount(tally.turnovers_byTrial),
    turnovers: Object.fromEntries(
      turnoverKinds.map((kind) => [kind, share(tally.turnovers[kind], trials)]),
    ) as SchemeReport['turnovers'],
    firstShot: quartiles(tally.firstShot_byTrial.filter((time) => time >= 0)) ?? null,
    shotQuality: share(tally.goalOddsSum, tally.shots),
    onTarget: share(tally.onTarget, tally.shots),
    assisted: share(tally.assistedGoals, tally.goals),
    play: reportPlay(matchup, tally, trials),
    watched: found.watched,
    looks: reportLooks(matchup, found),
    own: found.own.map((own) => reportThrow(matchup, own)),
    back: { mean: share(tally.backSum, tally.losses), fastBreak: share(tally.fastBreaks, tally.losses) },
  };
}

function reportPlay({ play }: Reported, tally: Tally, trials: number): PlayRunReport {
  return {
    begun: wilsonInterval(tally.begun, trials),
    beats: play.beats.map(({ id }, beat) => ({ id, share: share(tally.begun_byBeat[beat], trials) })),
    playPasses: share(tally.playPasses, tally.passes),
  };
}

/** Nothing out of nothing is 0. */
function share(part: number, whole: number): number {
  return whole === 0 ? 0 : part / whole;
}

function reportLooks(matchup: Reported, { looks, values, own }: FoundLooks): LookReport[] {
  const reports: LookReport[] = [];
  for (const look of looks) {
    const value = values.find(({ from, to }) => from === look.from && to === look.to);
    if (value !== undefined) reports.push(reportLook(matchup, look, value));
  }
  const { spots } = matchup.play;
  const isOwn = (look: LookReport): boolean =>
    own.some(({ from, to }) => spots[from].id === look.from && spots[to].id === look.to);
  return reports.sort(bestFirst).filter((look, at) => at < mostLooks || isOwn(look));
}

function reportThrow({ play }: Reported, own: OwnThrowSummary): OwnThrowReport {
  const { style, from, to, asked, beat, reached, share, completion } = own;
  return {
    kind: style === 'adjacent' ? 'pass' : style,
    from: play.spots[from].id,
    to: play.spots[to].id,
    asked,
    beat: beat < 0 ? null : play.beats[beat].id,
    reached,
    share,
    completion: reached === 0 ? null : completion,
  };
}

/** A worth that rests on too few replays is luck: such looks come after the others, by the odds that were seen. */
function bestFirst(a: LookReport, b: LookReport): number {
  const [known, other] = [a.replays >= leastReplays, b.replays >= leastReplays];
  if (known !== other) return known ? -1 : 1;
  return known ? b.share * b.value - a.share * a.value : promise(b) - promise(a);
}

function promise({ share, completion, shotValue }: LookReport): number {
  return share * completion * shotValue;
}

function reportLook(matchup: Reported, look: LookSummary, value: LookValue): LookReport {
  const { value: mean, valueLow, valueHigh, trials } = value;
  return { ...describeLook(matchup, look), value: mean, valueLow, valueHigh, replays: trials };
}

/** A look as it was seen, in the names of the play and the scheme: all of its report but what taking it is worth. */
export function describeLook(matchup: Reported, look: LookSummary): SeenLook {
  const { spots } = matchup.play;
  const { kind, share, opens, closes, completion, shotOdds, leftBy } = look;
  return {
    kind,
    from: spots[look.from].id,
    to: spots[look.to].id,
    share,
    opens,
    closes,
    completion,
    shotValue: shotOdds,
    leftBy: {
      defender: leftBy.defender < 0 ? null : defenderName(matchup, leftBy.defender),
      duty: leftBy.defender < 0 ? leftFree : dutyNames[leftBy.duty],
      lateBy: leftBy.defender < 0 ? 0 : leftBy.lateBy,
    },
  };
}

/** What stands for a duty where the scheme gives the man to nobody. */
const leftFree = 'left free';

/** In a mirrored chance the man called tr stands on the left. */
function defenderName({ scheme, sense }: Reported, defender: number): string {
  const name = scheme.names[defender];
  return sense === 1 ? name : mirrorDefenderName(name);
}
