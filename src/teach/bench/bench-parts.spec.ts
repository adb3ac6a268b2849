import { describe, expect, it } from 'vitest';
import { ruleCodes } from '../../engine/index.ts';
import { demoPlaybook, parsePlaybook, serializePlaybook, toEnginePlay } from '../../playbook/index.ts';
import { adviceFor } from './advice.ts';
import { gameOf, wallAtStart } from './bench-taps.fixture.ts';
import { benchUnit, changesWords, offsideWords, servingNumbers, unitChanges } from './bench-unit.ts';
import { chanceRecords, writeChances } from './chance-records.ts';
import { foldGame, stateLater } from './fold-game.ts';
import { keptGameText, readKeptGame } from './kept-game.ts';
import { looksOfPlay, tappedLookWords } from './looks-of-play.ts';
import { situationOf } from './situation.ts';

const ferry = { play: 'ferry', fromSide: 'right' } as const;

describe('the unit', () => {
  it('is refilled when a man serves, and says who comes on', () => {
    const usual = benchUnit(demoPlaybook, ferry, []);
    expect(usual).toHaveLength(6);
    const out = usual[0]!.number;
    const now = benchUnit(demoPlaybook, ferry, [out]);
    expect(now.map(({ number }) => number)).not.toContain(out);
    const changes = unitChanges(usual, now);
    expect(changes.off).toEqual([out]);
    expect(changes.on).toHaveLength(1);
    expect(changesWords(changes)).toMatch(new RegExp(`^On: \\d+ at [A-Z]+\\. Off: ${out}\\.`));
    expect(changesWords(unitChanges(usual, usual))).toBe('The usual six.');
  });

  it('is empty when too few are there', () => {
    const out = demoPlaybook.team.roster.slice(0, 6).map(({ number }) => number);
    expect(benchUnit(demoPlaybook, ferry, out)).toEqual([]);
  });

  it('knows who serves, and how many may be over midfield', () => {
    const state = foldGame(gameOf(['0 start', '10 fouls us 60 man 7 them 30']), ruleCodes.nfhs);
    expect(servingNumbers(state.box)).toEqual([7]);
    // inlaxref.org, play of the game: six and seven, men who serve count.
    expect(offsideWords(ruleCodes.nfhs, state.box).words).toMatch(
      /^Over midfield: 5 of ours at most.* 6 with the keeper, 7/,
    );
  });
});

describe('the advice', () => {
  it.each([
    ['a flag', ['0 start', '10 flag them'], 12, /^Free play/],
    ['a long man-up', ['0 start', '10 fouls them 60', '10 start'], 12, /then one more/],
    ['thirty seconds', ['0 start', '10 fouls them 30', '10 start'], 12, /One good look/],
    ['the last ten', ['0 start', '10 fouls them 30', '10 start'], 31, /^Last ten: the end of Lantern/],
    ['the last eight', ['0 start', '10 fouls them 30', '10 start'], 33, /^7 s left: no reset/],
    ['two up', ['0 start', '10 fouls them 60 them 60', '10 start'], 12, /^Two up: slow down/],
    ['after a timeout', ['0 start', '10 fouls them 60', '12 timeout us', '20 start'], 22, /^Out of the timeout/],
    ['ahead late', ['0 goal us', '1 set 4 100', '1 fouls them 60', '2 start'], 5, /^Ahead late/],
    ['fives', ['0 start', '10 both them 30 us 30', '10 start'], 12, /^5 v 5: nobody is extra/],
    ['the run in', ['0 start', '10 fouls them 30', '10 start'], 42, /^Their man is on. He needs 5 to 7 s/],
    ['us short', ['0 start', '10 fouls us 30', '10 start'], 12, /^One short: inside first/],
  ] as const)('in %s', (_, taps, at, expected) => {
    const code = ruleCodes.nfhs;
    const state = stateLater(foldGame(gameOf(taps), code), code, wallAtStart + at);
    const ground = { code, state, periods: 4, lastTenOf: 'Lantern' };
    expect(adviceFor(situationOf(state, code), ground).what).toMatch(expected);
  });

  it('names what should be looked up: at 14U, that a goal ends nothing', () => {
    const code = ruleCodes.usal14U;
    const state = foldGame(gameOf(['0 start', '10 fouls them 60']), code);
    const { also, confirm } = adviceFor(situationOf(state, code), { code, state, periods: 4, lastTenOf: null });
    expect(also[0]).toMatch(/^A goal lets nobody back/);
    expect(confirm).toEqual(['whether a goal ends a penalty']);
  });

  it('says at 10U that there is no man-up', () => {
    const code = ruleCodes.usal10U;
    const state = foldGame(gameOf(['0 start', '10 fouls them 60']), code);
    const { what } = adviceFor(situationOf(state, code), { code, state, periods: 4, lastTenOf: null });
    expect(what).toBe('No team is a man up at this age.');
  });
});

describe('what is written into the playbook', () => {
  const game = gameOf([
    '0 start',
    '10 fouls them 60 fixed',
    '12 call ferry',
    '14 start',
    '20 shot',
    '30 result goal',
    '31 look WL CR',
    '32 seen box-zone',
  ]);

  it('is a man-up that a playbook can hold', () => {
    const records = chanceRecords(game, foldGame(game, ruleCodes.nfhs).chances);
    const { playbook } = writeChances(demoPlaybook, records, {});
    const { value, diagnostics } = parsePlaybook(serializePlaybook(playbook));
    expect(diagnostics.filter(({ path }) => path.startsWith('chances'))).toEqual([]);
    expect(value?.chances).toEqual([
      {
        id: 'm-2026-03-14-1',
        side: 'ours',
        date: '2026-03-14',
        opponent: 'copper-falls',
        period: 1,
        clock: 590,
        penalty: { seconds: 60, fixed: true },
        start: 'restart',
        call: 'ferry',
        fromSide: 'right',
        scheme: 'box-zone',
        result: 'goal',
        shots: 2,
        firstShot: 6,
        look: { kind: 'feed', from: 'WL', to: 'CR' },
        scorer: 16,
      },
    ]);
  });

  it('keeps what was added elsewhere, and does not bring back what was deleted there', () => {
    const records = chanceRecords(game, foldGame(game, ruleCodes.nfhs).chances);
    const first = writeChances(demoPlaybook, records, {});
    const noted = { ...first.playbook, chances: [{ ...first.playbook.chances![0]!, assist: 4, notes: 'Wide open.' }] };
    const later = writeChances(noted, [{ ...records[0]!, scheme: 'jump' }], first.written);
    expect(later.playbook.chances).toMatchObject([{ assist: 4, notes: 'Wide open.', scheme: 'jump' }]);
    const deleted = { ...first.playbook, chances: [] };
    expect(writeChances(deleted, records, first.written).playbook).toBe(deleted);
  });
});

describe('a game that is kept', () => {
  const text = keptGameText({ game: gameOf(['0 start', '10 fouls them 30']), written: { a: '{}' } });

  it.each([
    [null, 'none'],
    ['', 'none'],
    [text, 'game'],
    [text.slice(0, -20), 'broken'],
    ['[]', 'broken'],
    [text.replace('"version":1', '"version":9'), 'broken'],
    [text.replace('"seconds":30', '"seconds":-3'), 'broken'],
    [text.replace('"does":"start"', '"does":"fly"'), 'broken'],
    [text.replace('"kind":"clock"', '"kind":"constructor"'), 'broken'],
  ])('is read or said to be damaged: %s', (kept, kind) => {
    expect(readKeptGame(kept).kind).toBe(kind);
  });

  it('says which tap is damaged', () => {
    expect(readKeptGame(text.replace('"seconds":30', '"seconds":null'))).toEqual({
      kind: 'broken',
      why: 'tap 2 of 2 is damaged',
    });
  });
});

describe('the advice while several of theirs serve', () => {
  const adviceAt = (seconds: number, ...taps: readonly string[]) => {
    const code = ruleCodes.nfhs;
    const state = stateLater(foldGame(gameOf(['0 start', ...taps]), code), code, wallAtStart + seconds);
    const situation = situationOf(state, code);
    if (situation.kind !== 'manUp') throw new TypeError(`no man-up: ${situation.kind}`);
    return { edge: situation.edgeLeft, what: adviceFor(situation, { code, state, periods: 4, lastTenOf: null }).what };
  };

  it('goes by the time until the sides are even, not by the next man', () => {
    expect(adviceAt(35, '10 fouls them 30 them 60', '10 start')).toEqual({
      edge: 35,
      what: 'One of theirs is back in 5 s, and we are still more: go on.',
    });
    expect(adviceAt(64, '10 fouls them 30 them 60', '10 start').what).toMatch(/^6 s left: no reset/);
  });

  it('counts ours who come back before', () => {
    // Theirs are back after 30 and 60 s, ours after 20 s: two against one, then two, then one until 60 s.
    expect(adviceAt(12, '10 fouls them 30 them 60 us 20', '10 start').edge).toBe(58);
    // Ours after 40 s: when their first is back the sides are even.
    expect(adviceAt(12, '10 fouls them 30 them 60 us 40', '10 start').edge).toBe(28);
  });
});

describe('the looks to tap', () => {
  it.each(demoPlaybook.plays.map(({ id }) => id))('are those of the play, feeds first: %s', (id) => {
    const looks = looksOfPlay(toEnginePlay(demoPlaybook, id));
    expect(looks.length).toBeGreaterThanOrEqual(3);
    expect(looks.length).toBeLessThanOrEqual(6);
    expect(new Set(looks.map(tappedLookWords)).size).toBe(looks.length);
  });
});
