import { inputHash } from '../../engine/index.ts';
import { ruleCodeOf, toEnginePlay } from '../../playbook/index.ts';
import { drawnField, type PaperName, type SheetContent } from '../../render/index.ts';
import { buildMatchup } from '../../worker/index.ts';
import type { Foes } from '../choose-matchups.ts';
import type { Conditions } from '../conditions.ts';
import type { OpenPlaybook } from '../open-playbook.ts';
import { reportNames, schemeName } from '../report-names.ts';
import type { SimulatedPlay } from '../simulate-plays.ts';

/** How pages are wanted, whatever stands on them. */
export interface SheetWishes {
  readonly paper: PaperName;
  readonly made: Date;
  readonly withNames: boolean;
}

/** All that pages say of one play; what it makes against the schemes only where it was simulated. */
export function sheetContent(
  { playbook }: OpenPlaybook,
  id: string,
  { schemes }: Foes,
  { side, penalty, level }: Conditions,
  { paper, made, withNames }: SheetWishes,
  simulated: SimulatedPlay | undefined,
): SheetContent {
  const entry = playbook.plays.find((play) => play.id === id)!;
  const play = toEnginePlay(playbook, id, side);
  const names = reportNames(playbook, id);
  const built = buildMatchup(playbook, { play: id, scheme: schemes[0]!, side, penalty, level });
  const players = built.kind === 'refused' ? [] : built.players;
  const results = simulated?.report.results ?? [];
  return {
    play,
    set: entry.set,
    team: playbook.team.name,
    side,
    field: drawnField(ruleCodeOf(playbook).markings),
    men: players.map(({ number, name }, at) => ({ spot: play.spots[at]!.id, number, ...(withNames && { name }) })),
    worths: results.map(({ scheme, goalsPerChance }) => ({ scheme: schemeName(scheme, names), goals: goalsPerChance })),
    trials: results.reduce((least, { trials }) => Math.min(least, trials), Number.POSITIVE_INFINITY),
    version: inputHash(entry).slice(0, 6),
    date: made.toLocaleDateString('en-GB', { day: 'numeric', month: 'long', year: 'numeric' }),
    paper,
  };
}
