import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { ruleCodes, sets } from '../engine/index.ts';
import { diagnosticText } from './diagnostic.ts';
import { diagnosticCodes } from './diagnostic-codes.ts';
import { cuePattern, readActionPattern, triggerPattern } from './language/patterns.ts';
import { parsePlaybook } from './parse.ts';
import { rulesInUse, settableRules } from './rule-settings.ts';

const page = readFileSync(new URL('../../docs/playbook-format.md', import.meta.url), 'utf8');
const blocks = [...page.matchAll(/^```json ([\w-]+)\n([\s\S]*?)^```$/gm)].map(([, kind, body]) => ({
  kind: kind!,
  body: body!,
}));

/** The page's own small playbook, into which its other examples are put. */
const whole = JSON.parse(blocks.find((block) => block.kind === 'playbook')!.body);

/** A play that has the beat and the throws that the examples of reads speak of. */
const host = {
  ...whole.plays[0],
  id: 'host',
  beats: [
    { id: 'around', on: 'start', do: ['TL pass WL'] },
    { id: 'down', on: 'catch WL', do: ['WL pass X'] },
    { id: 'look', on: 'catch X', do: ['X pass TL'] },
  ],
  reads: [],
};

/** The playbook with an example of each kind in its place. */
function embed(kind: string, value: never): unknown {
  switch (kind) {
    case 'playbook':
      return value;
    case 'player':
      return { ...whole, team: { ...whole.team, roster: [...whole.team.roster, value] } };
    case 'depth':
      return { ...whole, team: { ...whole.team, depth: value } };
    case 'play':
      return { ...whole, plays: [...whole.plays, value] };
    case 'spots':
      return { ...whole, plays: [{ ...whole.plays[0], spots: value }] };
    case 'reads':
      return { ...whole, plays: [{ ...host, reads: value }] };
    case 'reset':
      return {
        ...whole,
        plays: [
          {
            ...host,
            start: { ball: 'TR', restart: [21, 12] },
            beats: [{ id: 'one', on: 'start', do: ['TR pass TL'] }],
            reset: value,
          },
        ],
      };
    case 'last-ten':
      return { ...whole, plays: [{ ...whole.plays[0], lastTen: value }] };
    case 'set':
      return {
        ...whole,
        sets: [value],
        plays: [
          {
            ...host,
            set: 'stack',
            start: { ball: 'P', restart: [0, 22] },
            beats: [{ id: 'one', on: 'start', do: ['P pass TR'] }],
            reset: { ball: 'P', then: 'again' },
          },
        ],
      };
    case 'scheme':
      return { ...whole, schemes: [value] };
    case 'opponent':
      return { ...whole, opponents: [value] };
    case 'practice':
      return { ...whole, practices: [value] };
    case 'quiz':
      return { ...whole, quizzes: [value] };
    case 'chance':
      return { ...whole, chances: [value] };
    case 'settings':
      return { ...whole, settings: value };
    default:
      throw new RangeError(`unknown kind of example: ${kind}`);
  }
}

describe('every example of the page is right', () => {
  test.each(blocks)('$kind', ({ kind, body }) => {
    const { value, diagnostics } = parsePlaybook(JSON.stringify(embed(kind, JSON.parse(body) as never)));
    expect(diagnostics.filter((each) => each.severity !== 'note').map(diagnosticText)).toEqual([]);
    expect(value).toBeDefined();
  });

  test('there are examples of all kinds', () => {
    expect(new Set(blocks.map((block) => block.kind)).size).toBe(15);
  });
});

/** First cells of the rows of the table under a heading, without their backticks. */
function firstCells(heading: string, cell = 0): readonly string[] {
  const section = page.split(`\n## ${heading}\n`)[1]!.split('\n## ')[0]!;
  return section
    .split('\n')
    .filter((line) => line.startsWith('| `'))
    .map((line) => line.split('|')[cell + 1]!.trim());
}

test('the table of sets is that of the program', () => {
  const written = firstCells('Sets and spots').map((cell, i) => `${cell} ${firstCells('Sets and spots', 2)[i]}`);
  const ours = Object.values(sets).map(
    (set) => `\`${set.id}\` ${set.spots.map((spot) => `${spot.id} ${spot.at.x},${spot.at.y}`).join(' · ')}`,
  );
  expect(written).toEqual(ours);
});

test('the table of rules is that of the program, and says which of them move something', () => {
  const rows = firstCells('Settings').map((cell, i) => [cell.replaceAll('`', ''), firstCells('Settings', 2)[i]!]);
  expect(rows.map(([rule]) => rule)).toEqual([...settableRules(ruleCodes.nfhs).keys()]);
  const moving = rows.filter(([, moves]) => moves !== 'nothing yet').map(([rule]) => rule);
  expect(moving).toEqual([...rulesInUse]);
});

test.each([
  ['Beats', (phrase: string) => triggerPattern.test(phrase)],
  ['Reads', (phrase: string) => cuePattern.test(phrase)],
])('every phrase in the table of "%s" is one', (heading, isOne) => {
  const phrases = firstCells(heading).map((cell) => cell.replaceAll('`', ''));
  expect(phrases.length).toBeGreaterThan(3);
  expect(phrases.filter((phrase) => !isOne(phrase))).toEqual([]);
});

test('every action and duty in its table is read in a play and a scheme', () => {
  const actions = firstCells('What men do').map((cell) => cell.replaceAll('`', ''));
  const spots = { P: [0, 14], TR: [8, 12], TL: [-8, 12], WR: [9, 5], WL: [-9, 5], C: [0, 6], X: [0, -6] };
  expect(actions.length).toBe(17);
  for (const action of actions) {
    const [by] = action.split(' ');
    const six = [
      by!,
      ...['P', 'TR', 'TL', 'WL', 'C', 'X', 'WR'].filter((spot) => spot !== by && action.includes(spot)),
      'P',
      'TR',
      'TL',
      'WL',
      'C',
      'X',
    ];
    const kept = [...new Set(six)].slice(0, 6);
    const set = {
      id: 'own',
      name: 'Own',
      spots: Object.fromEntries(kept.map((spot) => [spot, { at: spots[spot as keyof typeof spots] }])),
    };
    const play = {
      ...host,
      set: 'own',
      start: { ball: by, restart: [21, 12] },
      beats: [{ id: 'one', on: 'start', do: [action] }],
      reset: { ball: by, then: 'free' },
    };
    const { diagnostics } = parsePlaybook(JSON.stringify({ ...whole, sets: [set], plays: [play] }));
    expect(diagnostics.filter((each) => each.severity === 'error').map(diagnosticText)).toEqual([]);
  }
});

test('the ends of reads that the page names are ends of reads', () => {
  for (const phrase of ['feed C', 'shoot', 'step to 4,10']) {
    expect(page).toContain(`\`${phrase}\``);
    expect(readActionPattern.test(phrase)).toBe(true);
  }
});

test('every code stands in the page with its help', () => {
  const table = Object.entries(diagnosticCodes).map(
    ([code, { severity, help }]) => `| \`${code}\` | ${severity} | ${help} |`,
  );
  const written = page.split('\n').filter((line) => /^\| `[a-z0-9-]+` \| (error|warning|note) \|/.test(line));
  expect(written).toEqual(table);
});
