import { describe, expect, test } from 'vitest';
import { createAthlete, createDutySheet, mirrorPlay, sets } from '../engine/index.ts';
import { demoPlaybook } from './demo.ts';
import { parsePlaybook } from './parse.ts';
import { ruleCodeOf } from './rule-settings.ts';
import type { Playbook, Player } from './schema.ts';
import { toEngineScheme } from './scheme-data.ts';
import { toAthlete } from './to-athlete.ts';
import { lineUpFor, toEnginePlay } from './to-engine.ts';

function names(playbook: Playbook, id: string, side: 'left' | 'right'): Record<string, string> {
  const play = toEnginePlay(playbook, id, side);
  const { players } = lineUpFor(playbook, play);
  return Object.fromEntries(play.spots.map((spot, i) => [spot.id, players[i]!.name]));
}

function withTeam(team: Partial<Playbook['team']>): Playbook {
  return { ...demoPlaybook, team: { ...demoPlaybook.team, ...team } };
}

describe('toEnginePlay', () => {
  const play = toEnginePlay(demoPlaybook, 'lantern');

  test('takes the set and moves its spots', () => {
    expect(play.spots.map((spot) => spot.id)).toEqual(sets['2-3-1']!.spots.map((spot) => spot.id));
    expect(play.spots.find((spot) => spot.id === 'X')!.at).toEqual({ x: 0, y: -6 });
    expect(play.spots.find((spot) => spot.id === 'TR')).toEqual(sets['2-3-1']!.spots.find((spot) => spot.id === 'TR'));
  });

  test('reads beats, reads and the last ten seconds', () => {
    expect(play.beats[2]).toEqual({
      id: 'behind',
      when: { kind: 'catch', by: 'WL' },
      actions: [
        { kind: 'pass', by: 'WL', to: 'X', style: 'adjacent' },
        { kind: 'run', run: 'replace', by: 'TL', path: [{ x: -5, y: 15 }], go: 'now' },
        { kind: 'run', run: 'sneak', by: 'WR', path: [{ x: 6, y: 3 }], go: 'whenOpen' },
      ],
    });
    expect(play.reads[0]).toEqual({
      carrier: 'WL',
      during: 'behind',
      cues: [{ kind: 'iAmFree' }],
      then: { kind: 'shot', by: 'WL' },
    });
    expect(play.lastTen?.reads.length).toBe(4);
    expect(toEnginePlay(demoPlaybook, 'ferry').lastTen).toBeUndefined();
  });

  test('on the left it is the mirror image', () => {
    expect(toEnginePlay(demoPlaybook, 'lantern', 'left')).toEqual(mirrorPlay(play));
  });

  test('refuses a play that is not there', () => {
    expect(() => toEnginePlay(demoPlaybook, 'nothing')).toThrow(
      'unknown play: nothing (expected lantern, quarry, ferry)',
    );
  });

  test('every play of the demo has three passes, a shot, a reset, a man for the end line and a man to get back', () => {
    for (const { id } of demoPlaybook.plays) {
      const { beats, spots } = toEnginePlay(demoPlaybook, id);
      const kinds = beats.flatMap((beat) => beat.actions.map((action) => action.kind));
      expect(kinds.filter((kind) => kind === 'pass').length).toBeGreaterThanOrEqual(3);
      expect(kinds).toContain('shot');
      expect(kinds).toContain('run');
      expect(new Set(spots.map((spot) => spot.safety))).toEqual(new Set(['none', 'backUp', 'getBack']));
    }
  });
});

describe('lineUpFor', () => {
  test('puts the feeder behind, the best lefty on the right and the finisher inside', () => {
    expect(names(demoPlaybook, 'lantern', 'right')).toMatchObject({
      X: 'Odell Marsh',
      TR: 'Ravi Lindqvist',
      C: 'Jonah Whitlock',
    });
  });

  test('on the left side the hands still decide: a lefty stays on the right of the field', () => {
    expect(names(demoPlaybook, 'lantern', 'left')).toMatchObject({ X: 'Odell Marsh', TR: 'Ravi Lindqvist' });
    expect(names(demoPlaybook, 'quarry', 'right').WL).toBe('Odell Marsh');
  });

  test('follows the depth chart, down to the next man when the first is absent', () => {
    const absent = demoPlaybook.team.roster.map((player) =>
      player.number === 4 ? { ...player, absent: true } : player,
    );
    expect(names(withTeam({ roster: absent }), 'lantern', 'right').X).toBe('Mateus Keller');
    expect(names(withTeam({ depth: { C: [25] } }), 'lantern', 'right').C).toBe('Desmond Yau');
  });

  test('a man who is first at two spots stands at the first of them', () => {
    const six = Object.values(names(withTeam({ depth: { TR: [4], X: [4] } }), 'lantern', 'right'));
    expect(new Set(six).size).toBe(6);
  });

  test('says how many are missing', () => {
    const few = demoPlaybook.team.roster.slice(0, 5);
    const play = toEnginePlay(demoPlaybook, 'lantern');
    expect(lineUpFor(withTeam({ roster: few }), play)).toEqual({
      assignment: { kind: 'short', missing: 2 },
      players: [],
    });
  });
});

describe('toAthlete', () => {
  const player: Player = {
    number: 3,
    name: 'X',
    hand: 'left',
    measured: { shotSpeedMph: [60, 62], onGoal: { hits: 3, shots: 5 } },
  };

  test('means the readings and counts them', () => {
    expect(toAthlete(demoPlaybook, player)).toEqual({
      level: '14U',
      hand: 'left',
      crosse: 'short',
      measured: { shotSpeedMph: { mean: 61, tries: 2 }, onGoal: { hits: 3, shots: 5 } },
    });
  });

  test('every player of the demo is one', () => {
    const all = demoPlaybook.team.roster.map((each) => createAthlete(toAthlete(demoPlaybook, each)));
    const speeds = new Map(demoPlaybook.team.roster.map((each, i) => [each.name, all[i]!.topSpeed]));
    expect(Math.max(...speeds.values())).toBe(speeds.get('Finn Abernathy'));
    expect(new Set(all.map((athlete) => athlete.hand))).toEqual(new Set(['left', 'right', 'both']));
  });
});

describe('toEngineScheme', () => {
  test('plays the grid that the coach wrote', () => {
    const play = toEnginePlay(demoPlaybook, 'lantern');
    const scheme = toEngineScheme(demoPlaybook, 'northgate-net', play)!;
    expect(scheme.names).toEqual(['tr', 'tl', 'lr', 'll', 'c']);
    expect(scheme.shortSticks).toEqual([4]);
    const sheet = createDutySheet(scheme, play.spots, ['TR', 'WL', 'X']);
    expect(sheet.rows.map((row) => row.duties)).toEqual([
      ['ball', 'TL', 'WR', 'pipe for WL', 'fronts C'],
      ['holds (0, 8)', 'TL', 'pipe for WR', 'ball', 'fronts C'],
      ['splits TR + TL', 'WL', 'WR', 'ball', 'locks C'],
    ]);
  });

  test('finds the built-in ones too, and nothing else', () => {
    const play = toEnginePlay(demoPlaybook, 'lantern');
    expect(toEngineScheme(demoPlaybook, 'box-zone', play)?.id).toBe('box-zone');
    expect(toEngineScheme(demoPlaybook, 'constructor', play)).toBeUndefined();
  });
});

describe('ruleCodeOf', () => {
  test('is that of the level, or the one that the team names', () => {
    expect(ruleCodeOf(demoPlaybook).id).toBe('usal14U');
    expect(ruleCodeOf(withTeam({ ruleCode: 'ncaa' })).id).toBe('ncaa');
  });

  test('takes the values that the playbook sets', () => {
    const code = ruleCodeOf({
      ...demoPlaybook,
      settings: { rules: { 'penalties.goalReleases': true, 'markings.goalToRestraining': 25 } },
    });
    expect(code.penalties.goalReleases).toEqual({ value: true, source: 'set in the playbook', confirmed: true });
    expect(code.markings.goalToRestraining.value).toBe(25);
    expect(code.markings.goalToEndLine.value).toBe(15);
  });

  test('moves the box with the restraining line', () => {
    const text = JSON.stringify({ ...demoPlaybook, settings: { rules: { 'markings.goalToRestraining': 25 } } });
    // The demo's Ferry restarts at 0,22: outside the classic box, inside that of a unified field.
    expect(parsePlaybook(text).diagnostics.map((each) => [each.code, each.path])).toContainEqual([
      'restart-in-box',
      'plays[2].start.restart',
    ]);
  });
});
