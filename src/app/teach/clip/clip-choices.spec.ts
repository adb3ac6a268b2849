import { describe, expect, it } from 'vitest';
import { demoPlaybook } from '../../../playbook/index.ts';
import { schemeChoices, usualSchemes } from '../../schemes/scheme-choices.ts';
import { type ClipAgainst, type ClipFormat, clipFilmOptions, clipFoes } from './clip-choices.ts';
import { clipFileName } from './clip-file-name.ts';

const choices = schemeChoices(demoPlaybook);
const onPlay = usualSchemes(choices);
const foes = (against: ClipAgainst, format: ClipFormat = 'page') =>
  clipFoes(demoPlaybook, against, format, choices, onPlay);

describe('against what a clip is shown', () => {
  it('is all on Play for a page and the first for a film, until somebody chooses', () => {
    expect(foes({ kind: 'usual' })).toEqual({ schemes: onPlay });
    for (const format of ['video', 'gif'] as const)
      expect(foes({ kind: 'usual' }, format)).toEqual({ schemes: [onPlay[0]] });
    expect(foes({ kind: 'onPlay' }, 'gif')).toEqual({ schemes: onPlay });
  });

  it('is in the order of the list, without what is not there any more', () => {
    expect(foes({ kind: 'some', schemes: ['jump', 'gone', 'box-zone'] }).schemes).toEqual(['box-zone', 'jump']);
    expect(foes({ kind: 'some', schemes: [] }).schemes).toEqual([]);
    expect(foes({ kind: 'scheme', scheme: 'jump' }).schemes).toEqual(['jump']);
    expect(foes({ kind: 'scheme', scheme: 'gone' }).schemes).toEqual([onPlay[0]]);
  });

  it('is what an opponent plays, as well as he plays it', () => {
    const { id, schemes } = demoPlaybook.opponents![0]!;
    const found = foes({ kind: 'opponent', opponent: id });
    expect(found.opponent).toBe(id);
    expect([...found.schemes].sort()).toEqual(
      Object.entries(schemes ?? {})
        .filter(([, weight]) => weight > 0)
        .map(([scheme]) => scheme)
        .sort(),
    );
    expect(foes({ kind: 'opponent', opponent: 'gone' })).toEqual({ schemes: onPlay });
  });
});

describe('a film from the workbench', () => {
  it.each([
    ['video', undefined, 'wide', 30],
    ['gif', undefined, 'card', 12.5],
    ['gif', 'tall', 'tall', 12.5],
  ] as const)('%s, asked as %s, is %s at %d pictures a second', (format, form, drawn, rate) => {
    expect(clipFilmOptions(format, form, 1)).toEqual({ form: drawn, rate, speed: 1 });
  });

  it.each([
    ['Ferry', ['Jump'], 'ferry-against-jump.mp4'],
    ['Ferry', ['Jump', 'Box'], 'ferry-clip.mp4'],
    ['¡Łódź!', ['String & lock'], 'łodz-against-string-lock.mp4'],
    ['…', ['Jump', 'Box'], 'clip.mp4'],
  ])('of %s against %o has a name that every device takes', (play, names, file) => {
    const schemes = names.map((name) => ({ name }));
    expect(clipFileName({ play, schemes } as unknown as Parameters<typeof clipFileName>[0], 'mp4')).toBe(file);
  });
});
