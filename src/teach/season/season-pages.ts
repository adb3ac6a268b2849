import type { Playbook } from '../../playbook/index.ts';
import {
  counted,
  type PaperName,
  percent,
  type SeasonRow,
  type SeasonSection,
  seasonSheet,
} from '../../render/index.ts';
import type { PrintedPages } from '../sheets/printed-pages.ts';
import { type ChanceGrouping, opponentName } from './chance-groups.ts';
import type { GroupNumbers } from './group-numbers.ts';
import { countManUps, type ManUpNumbers } from './man-ups.ts';
import type { PlanAndResult } from './plan-and-result.ts';
import type { SeasonPrior } from './season-prior.ts';
import { type SeasonReport, type SideReport, seasonReport } from './season-report.ts';
import {
  clearsSentence,
  countingSentence,
  firstShotText,
  forecastSentence,
  groupingWords,
  planBinText,
  shareText,
  shotsText,
} from './season-words.ts';

/** How the pages of a season are wanted. */
export interface SeasonPagesWishes {
  /** Only against this one. */
  readonly opponent?: string;
  /** What else the chances were chosen by, in words, where the playbook holds only those. */
  readonly only?: string;
  readonly paper: PaperName;
  /** The day that they are made: see `dayWords`. */
  readonly made: string;
}

/** A season on paper: how we and they do, by call, scheme and opponent, and whether the simulation was right. */
export function seasonPages(playbook: Playbook, { opponent, only, paper, made }: SeasonPagesWishes): PrintedPages {
  const of = (by: ChanceGrouping): SeasonReport =>
    seasonReport(playbook, { by, ...(opponent !== undefined && { opponent }) });
  const byCall = of('call');
  const against = opponent === undefined ? '' : ` against ${opponentName(playbook, opponent)}`;
  const title = `Man-ups of ${playbook.team.name}${against}`;
  const pages = seasonSheet({
    title,
    about: `${aboutWords(playbook, opponent)}${only === undefined ? '' : ` Only ${only}.`}`,
    leads: leadsOf(byCall),
    sections: [
      wholeSection(byCall),
      groupSection(byCall.ours, 'By call'),
      groupSection(of('scheme').ours, 'By what they played'),
      ...(opponent === undefined ? [groupSection(of('opponent').ours, 'By opponent')] : []),
      ...looksSection(byCall.ours),
      planSection(byCall, byCall.plan),
      ...(byCall.theirs.all.chances === 0
        ? []
        : [theirSection(of(opponent === undefined ? 'opponent' : 'scheme').theirs)]),
    ].filter((section): section is SeasonSection => section !== undefined),
    basis: basisWords(byCall.ours),
    paper,
    made,
  });
  return { title, pages };
}

/** What the figures rest on, in words that stand below every table of them. */
function basisWords({ prior: { source }, manUps }: SideReport): string {
  return `${countingSentence(manUps)} Goals: of how many chances. Share: goals a chance as counted, and where the truth lies 95 times in 100 (Wilson). Best guess: the same drawn toward what is usual, more the fewer there are. ${source} First shot: the middle one, and between which two times half of them came; one or two say nothing of that. "Surely" leaves room for how many groups are compared.`;
}

function aboutWords({ chances = [] }: Playbook, opponent: string | undefined): string {
  const shown = chances.filter(
    (chance) => chance.side !== 'others' && (opponent === undefined || chance.opponent === opponent),
  );
  const days = shown.flatMap(({ date }) => date ?? []).sort();
  const [first, last] = [days[0], days.at(-1)];
  const when = first === undefined || last === undefined ? '' : first === last ? `, ${first}` : `, ${first} to ${last}`;
  const games = new Set(
    shown.filter(({ date }) => date !== undefined).map(({ date, opponent: other, game }) => `${date} ${other} ${game}`),
  );
  const { manUps } = countManUps(shown);
  return `${counted(shown.length, 'chance')} in ${counted(manUps, 'man-up')}${games.size === 0 ? '' : `, ${counted(games.size, 'game')}`}${when}.`;
}

function leadsOf({ ours, theirs }: SeasonReport): readonly string[] {
  const words = (who: string, { manUps, scored, raw }: ManUpNumbers): readonly string[] =>
    manUps === 0 ? [] : [`${who} in ${scored} of ${counted(manUps, 'man-up')}: ${percent(raw.mean)}.`];
  return [...words('We scored', ours.manUps), ...words('They scored', theirs.manUps)];
}

function wholeSection({ ours, theirs }: SeasonReport): SeasonSection {
  return {
    heading: 'All of them',
    says: [`Ours: ${ours.says}`, ...(theirs.all.chances === 0 ? [] : [`Theirs: ${theirs.says}`])],
    of: 'Whose',
    rows: [
      rowOf('Ours', ours.all, ours.prior),
      ...(theirs.all.chances === 0 ? [] : [rowOf('Theirs', theirs.all, theirs.prior)]),
    ],
  };
}

function groupSection(report: SideReport, heading: string): SeasonSection | undefined {
  const known = report.groups.filter(({ key }) => key !== '');
  if (known.length === 0) return undefined;
  return {
    heading,
    says: report.told,
    of: groupingWords[report.by],
    rows: report.groups.map(({ name, numbers }) => rowOf(name, numbers, report.prior)),
  };
}

function theirSection(report: SideReport): SeasonSection {
  const cleared = clearsSentence(report.clears);
  return {
    heading: 'Their chances, goals against us',
    says: [...report.told, ...(cleared === undefined ? [] : [cleared])],
    of: groupingWords[report.by],
    rows: report.groups.map(({ name, numbers }) => rowOf(name, numbers, report.prior)),
  };
}

function planSection({ planSays }: SeasonReport, plan: PlanAndResult | undefined): SeasonSection | undefined {
  if (plan === undefined) return undefined;
  return {
    heading: 'What the simulation said, and what came',
    says: [planSays, forecastSentence(plan)],
    of: 'It expected',
    columns: 'share',
    rows: plan.bins.map((bin) => ({
      name: planBinText(bin),
      count: `${bin.goals} of ${bin.chances}`,
      raw: shareText(bin.came),
      guess: '',
      shots: '',
      firstShot: '',
      bar: { ...bin.came, mark: bin.expected },
    })),
  };
}

function looksSection({ looksSay }: SideReport): readonly SeasonSection[] {
  return looksSay === undefined ? [] : [{ heading: 'Looks', says: [looksSay], of: '', rows: [] }];
}

function rowOf(name: string, numbers: GroupNumbers, { mean }: SeasonPrior): SeasonRow {
  return {
    name,
    count: `${numbers.goals} of ${numbers.chances}`,
    raw: shareText(numbers.raw),
    guess: shareText(numbers.shrunk),
    shots: shotsText(numbers),
    firstShot: firstShotText(numbers),
    bar: { ...numbers.raw, mark: mean },
  };
}
