import { parsePlaybook } from './parse.ts';

/** A small playbook without a fault, as loose as the cases below need it. */
// biome-ignore lint/suspicious/noExplicitAny: the cases break the document on purpose, in ways that its types forbid
export type Loose = any;

export function small(): Loose {
  const player = (number: number) => ({ number, name: `Player ${number}`, hand: number % 2 === 0 ? 'left' : 'right' });
  return {
    format: 'sliderule-playbook',
    version: 1,
    team: {
      name: 'Test',
      level: 'highSchool',
      roster: [...[2, 3, 4, 5, 6, 7, 8].map(player), { ...player(1), crosse: 'goalkeeper' }],
    },
    plays: [
      {
        id: 'swing',
        name: 'Swing',
        set: '2-3-1',
        start: { ball: 'TR', restart: [21, 10] },
        beats: [
          { id: 'one', on: 'start', do: ['TR pass TL'] },
          { id: 'two', on: 'catch TL', do: ['TL pass WL', 'C cut to -2,5'] },
          { id: 'three', on: 'catch WL', do: ['WL feed C'] },
          { id: 'four', on: 'catch C', do: ['C shoot'] },
        ],
        reads: [{ carrier: 'WL', if: ['open C'], then: 'feed C' }],
        reset: { ball: 'TR', then: 'again' },
      },
    ],
    schemes: [
      {
        id: 'ours',
        name: 'Ours',
        men: { tr: [5, 10], tl: [-5, 10], lr: [5, 3], ll: [-5, 3], c: [0, 5] },
        rows: [{ ball: 'TR', do: ['tr ball', 'tl split P TL', 'lr man WR', 'll pipe WL', 'c front crease'] }],
      },
    ],
    opponents: [{ id: 'them', name: 'Them', schemes: { ours: 1, 'box-zone': 2 }, discipline: { all: 'sharp' } }],
    settings: { penaltySeconds: 60 },
  };
}

/** Rule values that the book leaves open give one note to every file of that level, which is beside the point here. */
const quiet = new Set(['rule-unconfirmed']);

export function check(text: string) {
  const { value, diagnostics, moreMayShow } = parsePlaybook(text);
  return { value, moreMayShow, diagnostics: diagnostics.filter((diagnostic) => !quiet.has(diagnostic.code)) };
}

export function broken(edit: (doc: Loose) => void): string {
  const doc = small();
  edit(doc);
  return JSON.stringify(doc, null, 2);
}

export const play = (doc: Loose) => doc.plays[0];
export const beat = (doc: Loose, i: number) => doc.plays[0].beats[i];
