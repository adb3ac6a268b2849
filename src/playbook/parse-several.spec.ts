import { describe, expect, test } from 'vitest';
import { diagnosticText } from './diagnostic.ts';
import { parsePlaybook } from './parse.ts';
import { beat, broken, check, type Loose, play } from './small-playbook.fixture.ts';

/** The codes and paths of everything that is wrong, in the order of the text. */
function found(edit: (doc: Loose) => void): readonly string[] {
  return check(broken(edit)).diagnostics.map((each) => `${each.code} ${each.path}`);
}

describe('several faults are told at once', () => {
  test('a misspelt spot, a pass to nobody, a beat that cannot start, a man in two places, a long run', () => {
    const edit = (d: Loose) => {
      beat(d, 0).do = ['TR pass LT'];
      beat(d, 1).do = ['TL pass', 'C cut to -2,5', 'C pop to 6,9'];
      beat(d, 2).do.push('WR cut to -20,36');
      d.plays[0].beats.push({ id: 'five', on: 'catch X', do: ['X shoot'] });
    };
    expect(found(edit)).toEqual([
      'spot-unknown plays[0].beats[0].do[0]',
      'action-syntax plays[0].beats[1].do[0]',
      'two-places plays[0].beats[1].do[2]',
      'long-run plays[0].beats[2].do[1]',
      'beat-never-starts plays[0].beats[4].on',
    ]);
  });

  test('faults of shape do not hide what is wrong elsewhere', () => {
    const edit = (d: Loose) => {
      d.team.roster[0].hnd = 'left';
      d.team.roster[1].hand = 'up';
      d.team.depth = { X: [99] };
      beat(d, 1).do[0] = 'TL pass LW';
      d.schemes[0].rows[0].do.pop();
      d.opponents[0].schemes = { 'box-zne': 1 };
    };
    expect(found(edit)).toEqual([
      'field-unknown team.roster[0].hnd',
      'field-value team.roster[1].hand',
      'depth-player team.depth.X[0]',
      'spot-unknown plays[0].beats[1].do[0]',
      'duty-missing schemes[0].rows[0].do',
      'scheme-unknown opponents[0].schemes.box-zne',
    ]);
  });

  test('an unsound play does not hide the next one, nor an unsound row of a scheme', () => {
    const edit = (d: Loose) => {
      d.plays.push({ ...structuredClone(d.plays[0]), id: 'other', name: 'Other' });
      play(d).beats = {};
      d.plays[1].beats[3].on = 'catch WR';
      d.schemes[0].rows.unshift({ ball: 'TL', do: ['tl'] });
      d.schemes[0].rows[1].do[0] = 'tr man TR';
    };
    expect(found(edit)).toEqual([
      'field-type plays[0].beats',
      'beat-never-starts plays[1].beats[3].on',
      'duty-syntax schemes[0].rows[0].do[0]',
      'nobody-on-ball schemes[0].rows[1].do',
    ]);
  });

  // [what is broken, whether something could not be looked at because of it]
  test.each<[string, (doc: Loose) => void, boolean]>([
    ['nothing', () => undefined, false],
    ['a name that can be guessed', (d) => (beat(d, 1).do[0] = 'TL pass LW'), false],
    ['a beat that cannot start', (d) => (beat(d, 3).on = 'catch WR'), false],
    ['a pass to nobody', (d) => (beat(d, 1).do[0] = 'TL pass'), true],
    ['a field of a play that nobody knows', (d) => (play(d).raeds = []), true],
    ['an unknown set', (d) => (play(d).set = '7-7'), true],
  ])('after %s it says whether more may show', (_, edit, more) => {
    expect(check(broken(edit)).moreMayShow).toBe(more);
  });

  test('a text that stops in the middle may hide more', () => {
    expect(parsePlaybook('{"format": "sliderule-playbook", ').moreMayShow).toBe(true);
  });
});

describe('causes are told, not what follows from them', () => {
  test('a beat that a read of a later beat could lead to is no follower of that beat', () => {
    const edit = (d: Loose) => {
      beat(d, 1).on = 'catch WR';
      beat(d, 3).on = 'catch X';
      play(d).reads = [{ carrier: 'X', during: 'four', if: ['open WR'], then: 'feed WR' }];
    };
    const stuck = ['beat-never-starts plays[0].beats[1].on', 'beat-never-starts plays[0].beats[3].on'];
    expect(found(edit)).toEqual(stuck);
  });

  test('a field that nobody knows is told without a count from 0', () => {
    const [first] = check(broken((d) => (play(d).raeds = []))).diagnostics;
    expect(diagnosticText(first!)).toMatch(/\(Swing, raeds\): The play has no field "raeds"\. Did you mean "reads"\?/);
  });
});

describe('places in the words of the file', () => {
  test.each<[string, (doc: Loose) => void]>([
    ['Swing, step "two"', (d) => (beat(d, 1).do[0] = 'TL pass')],
    ['Swing, read 1, of WL', (d) => (play(d).reads[0].if = ['C is open'])],
    ['Swing, lastTen', (d) => (play(d).lastTen = {})],
    [
      'Swing, last ten seconds, step "late"',
      (d) => (play(d).lastTen = { beats: [{ id: 'late', on: 'start', do: ['C shoots'] }] }),
    ],
    ['Swing, start, restart', (d) => (play(d).start.restart = [0, 41])],
    ['scheme Ours, ball at TR', (d) => d.schemes[0].rows[0].do.pop()],
    ['opponent Them, schemes, box-zne', (d) => (d.opponents[0].schemes = { 'box-zne': 1 })],
    ['player 2 Player 2, hand', (d) => (d.team.roster[0].hand = 'up')],
    ['player Player 4, number', (d) => delete d.team.roster[2].number],
    ['team, depth, Q', (d) => (d.team.depth = { Q: [2] })],
    ['swing, name', (d) => (play(d).name = 7)],
  ])('%s', (where, edit) => {
    expect(check(broken(edit)).diagnostics.map((each) => each.where)).toEqual([where]);
  });

  test('a slip in the text itself has its line alone', () => {
    const [slip] = parsePlaybook('{} {}').diagnostics;
    expect(slip).toMatchObject({ where: '', line: 1, column: 4 });
    expect(diagnosticText(slip!)).toMatch(/^1:4 error json-extra: There/);
  });
});

describe('places in the text', () => {
  test('a fault inside a phrase is pointed at by line and column', () => {
    const text =
      '{\n  "format": "sliderule-playbook",\n  "version": 1,\n  "team": {"name": "T", "level": "pro", "roster": []},\n  "plays": [{"id": "a", "name": "A", "set": "3-3", "start": {"ball": "P", "restart": [0, 22]},\n    "beats": [{"id": "b", "on": "start", "do": ["P pass TQ"]}],\n    "reset": {"ball": "P", "then": "free"}}]\n}';
    const { diagnostics } = check(text);
    expect(diagnostics.find((each) => each.code === 'spot-unknown')).toMatchObject({ line: 6, column: 57 });
    expect(text.split('\n')[5]!.slice(56, 58)).toBe('TQ');
  });

  test('problems come in the order of the text, all at once', () => {
    const { diagnostics } = check(
      broken((doc) => {
        doc.team.roster[0].hand = 'up';
        doc.plays[0].name = 3;
        doc.opponents[0].name = '';
      }),
    );
    expect(diagnostics.map((each) => each.path)).toEqual(['team.roster[0].hand', 'plays[0].name', 'opponents[0].name']);
    expect(diagnostics.map((each) => each.line)).toEqual(
      [...diagnostics.map((each) => each.line)].sort((a, b) => a! - b!),
    );
  });
});
