import { ruleCodes, schemeById } from '../../engine/index.ts';
import type {
  Chance,
  MergeKind,
  MergePart,
  Opponent,
  OwnSet,
  Playbook,
  Practice,
  QuizEntry,
  SchemeEntry,
  Settings,
  TeamHead,
} from '../../playbook/index.ts';
import { chanceFacts } from './chance-facts.ts';
import { type Facts, factsOf, line } from './difference.ts';
import { levelNames } from './level-names.ts';
import { numberText, placeText } from './place-text.ts';
import { playFacts } from './play-facts.ts';
import { playerFacts } from './player-facts.ts';
import { practiceFacts } from './practice-facts.ts';
import { quizFacts } from './quiz-facts.ts';

/** All that a part of a playbook says, in a coach's words; nothing when it is not there. */
export function partFacts(kind: MergeKind, part: MergePart | undefined, playbook: Playbook): Facts {
  if (part === undefined) return new Map();
  // The kind tells the type: both come from the same reader of the playbook.
  switch (kind) {
    case 'play':
      return playFacts(part as Playbook['plays'][number], playbook);
    case 'player':
      return playerFacts(part as Playbook['team']['roster'][number]);
    case 'team':
      return teamFacts(part as TeamHead);
    case 'set':
      return setFacts(part as OwnSet);
    case 'scheme':
      return schemeFacts(part as SchemeEntry);
    case 'opponent':
      return opponentFacts(part as Opponent, playbook);
    case 'practice':
      return practiceFacts(part as Practice, playbook);
    case 'quiz':
      return quizFacts(part as QuizEntry, playbook);
    case 'chance':
      return chanceFacts(part as Chance, playbook);
    case 'settings':
      return settingsFacts(part as Settings);
    case 'notes':
      return factsOf([['Notes', line(part as string)]]);
    default:
      return exhaustive(kind);
  }
}

function teamFacts(team: TeamHead): Facts {
  return factsOf([
    ['Name', line(team.name)],
    ['Level', [levelNames[team.level]]],
    ['Rules', line(team.ruleCode && ruleCodes[team.ruleCode].name)],
    ...Object.entries(team.depth ?? {}).map(
      ([spot, numbers]) => [`Order at ${spot}`, [numbers.map((number) => `#${number}`).join(', ')]] as const,
    ),
    ['Notes', line(team.notes)],
  ]);
}

function setFacts(set: OwnSet): Facts {
  return factsOf([
    ['Name', line(set.name)],
    ...Object.entries(set.spots).map(([id, spot]) => {
      const needs = Object.entries(spot.needs ?? {}).map(([need, weight]) => `${need} ${weight}`);
      const lines = [
        placeText(spot.at[0], spot.at[1]),
        ...(spot.hand === undefined ? [] : [`inside hand ${spot.hand}`]),
        ...(needs.length === 0 ? [] : [`needs ${needs.join(', ')}`]),
        ...(spot.safety === undefined ? [] : [safetyWords[spot.safety]]),
      ];
      return [`Spot ${id}`, lines] as const;
    }),
    ['Notes', line(set.notes)],
  ]);
}

const safetyWords = {
  backUp: 'backs up shots',
  getBack: 'gets back when the ball is lost',
  none: 'no duty when the ball is lost',
} as const;

function schemeFacts(scheme: SchemeEntry): Facts {
  return factsOf([
    ['Name', line(scheme.name)],
    ...Object.entries(scheme.men).map(([id, [x, y]]) => [`Home of ${id}`, [placeText(x, y)]] as const),
    ['Short sticks', scheme.shortSticks ?? []],
    ['Meets a carrier', line(scheme.extends === undefined ? undefined : `${scheme.extends} yards from the goal`)],
    ...scheme.rows.map((row) => [`Ball at ${row.ball}`, row.do] as const),
    ['Notes', line(scheme.notes)],
  ]);
}

function opponentFacts(opponent: Opponent, { schemes: own }: Playbook): Facts {
  const nameOf = (id: string): string => own?.find((one) => one.id === id)?.name ?? schemeById(id)?.notes.name ?? id;
  return factsOf([
    ['Name', line(opponent.name)],
    ['Schemes', Object.entries(opponent.schemes ?? {}).map(([id, weight]) => `${nameOf(id)}, weight ${weight}`)],
    [
      'Discipline',
      Object.entries(opponent.discipline ?? {}).map(([who, word]) => `${who === 'all' ? 'everybody' : who} ${word}`),
    ],
    ['Before marks', Object.entries(opponent.before ?? {}).map(([id, weight]) => `${nameOf(id)}, weight ${weight}`)],
    ['Man-ups counted', Object.entries(opponent.counted ?? {}).map(([id, seen]) => `${nameOf(id)} ${seen}`)],
    [
      'Shots on their goalkeeper',
      (opponent.keeper ?? []).map(({ at: [x, y], result }) => `${numberText(x)}, ${numberText(y)} ft: ${result}`),
    ],
    ['Their goalkeeper', line(opponent.keeperNotes)],
    ['Notes', line(opponent.notes)],
  ]);
}

function settingsFacts({ penaltySeconds, rules }: Settings): Facts {
  return factsOf([
    ['Penalty', line(penaltySeconds === undefined ? undefined : `${penaltySeconds} s`)],
    ...Object.entries(rules ?? {}).map(([path, value]) => [`Rule ${path}`, [ruleWords(value)]] as const),
  ]);
}

function ruleWords(value: number | boolean | null): string {
  if (value === null) return 'none';
  return typeof value === 'number' ? numberText(value) : value ? 'yes' : 'no';
}

function exhaustive(kind: never): never {
  throw new TypeError(`unknown kind of part: ${JSON.stringify(kind)}`);
}
