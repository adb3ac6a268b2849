import { describe, expect, test } from 'vitest';
import { demoPlaybook } from '../demo.ts';
import type { Playbook, PlayEntry } from '../schema.ts';
import { beat as beatDoc, small } from '../small-playbook.fixture.ts';
import { toEnginePlay } from '../to-engine.ts';
import { addAction, changeTarget, changeVerb, putAction, removeAction, setWhenOpen } from './edit-actions.ts';
import { addBeatAfter, changeTrigger, renameBeat } from './edit-beats.ts';
import { addPathPoint, movePathPoint, removePathPoint, reorderPathPoint } from './edit-paths.ts';
import type { PlayEdit } from './edit-result.ts';
import { moveSpot } from './edit-spots.ts';
import { passTo } from './pass-to.ts';
import { groundOf } from './play-ground.ts';
import { removeBeat } from './remove-beat.ts';

const playbook = demoPlaybook;
const ground = groundOf(playbook);
const named = (id: string): PlayEntry => playbook.plays.find((play) => play.id === id)!;
const lantern = named('lantern');
const quarry = named('quarry');
const ferry = named('ferry');

/** The beats as they are written, one a line: `swing on start: TR pass TL`. */
function text(edit: PlayEdit | PlayEntry): string {
  const play = 'kind' in edit ? edited(edit) : edit;
  const line = (beat: PlayEntry['beats'][number]) => `${beat.id} on ${beat.on}: ${beat.do.join(', ')}`;
  return [...play.beats, ...(play.lastTen?.beats ?? [])].map(line).join('\n');
}

function edited(edit: PlayEdit): PlayEntry {
  if (edit.kind === 'refused') throw new Error(edit.reason);
  return edit.play;
}

const lineOf = (edit: PlayEdit | PlayEntry, id: string) =>
  text(edit)
    .split('\n')
    .find((line) => line.startsWith(`${id} `));

const reason = (edit: PlayEdit) => (edit.kind === 'refused' ? edit.reason : `edited: ${text(edit)}`);

describe('spots', () => {
  test('a moved spot is written to a tenth of a yard, and back home not at all', () => {
    const moved = edited(moveSpot(lantern, ground, 'TR', { x: 6.04, y: 13.26 }));
    expect(moved.spots).toEqual({ X: [0, -6], TR: [6, 13.3] });
    expect(moved.beats).toBe(lantern.beats);
    expect(edited(moveSpot(moved, ground, 'TR', { x: 7, y: 14 }))).toEqual(lantern);
    expect(edited(moveSpot(lantern, ground, 'X', { x: 0, y: -5 }))).not.toHaveProperty('spots');
  });

  test('what goes by the name of a spot follows it', () => {
    const moved = edited(moveSpot(ferry, ground, 'TR', { x: 9, y: 12 }));
    expect(moved.beats).toEqual(ferry.beats);
  });

  test.each([
    ['the crease', 'C', { x: 1, y: 2 }, /inside the crease/],
    ['behind the end line', 'X', { x: 0, y: -16 }, /behind the end line/],
    ['over the sideline', 'WR', { x: 31, y: 4 }, /sideline/],
    ['where another stands', 'C', { x: -6.8, y: 14 }, /TL stands there already, at -7,14/],
    ['nowhere', 'C', { x: Number.NaN, y: 0 }, /no place/],
    ['a spot of another set', 'BR', { x: 3, y: -6 }, /no spot BR/],
  ])('is refused: %s', (_, spot, to, words) => {
    expect(reason(moveSpot(lantern, ground, spot, to))).toMatch(words);
  });

  test('a place at the edge of the crease is not rounded into it', () => {
    const edge = { x: 2.14, y: 2.14 };
    expect(Math.hypot(edge.x, edge.y)).toBeGreaterThan(3);
    const [x, y] = edited(moveSpot(lantern, ground, 'C', edge)).spots!.C!;
    expect(Math.hypot(x, y)).toBeGreaterThanOrEqual(3);
  });
});

describe('ways', () => {
  const curl = { beat: 'curl', action: 1 };
  test.each([
    ['its end', movePathPoint(quarry, ground, curl, 1, { x: -4, y: 5 }), 'CR cut via 0,8.5 to -4,5'],
    ['a bend', movePathPoint(quarry, ground, curl, 0, { x: 0, y: 9 }), 'CR cut via 0,9 to -3.5,5'],
    ['its end, by a name', movePathPoint(quarry, ground, curl, 1, 'CL'), 'CR cut via 0,8.5 to CL'],
    ['one bend more', addPathPoint(quarry, ground, curl, 0, { x: 2, y: 8 }), 'CR cut via 2,8 via 0,8.5 to -3.5,5'],
    ['one bend less', removePathPoint(quarry, ground, curl, 0), 'CR cut to -3.5,5'],
    ['the end taken out', removePathPoint(quarry, ground, curl, 1), 'CR cut to 0,8.5'],
    ['the order of points', reorderPathPoint(quarry, ground, curl, 1, 0), 'CR cut via -3.5,5 to 0,8.5'],
    ['a step', movePathPoint(lantern, ground, { beat: 'finish', action: 1 }, 0, { x: 4, y: 12 }), 'TR step to 4,12'],
    ['a pick', movePathPoint(quarry, ground, { beat: 'low', action: 1 }, 0, { x: 2, y: 6 }), 'CL pick at 2,6 on CR'],
  ])('%s', (_, edit, phrase) => {
    expect(text(edit)).toContain(phrase);
  });

  test('who fills a place fills it by its name', () => {
    const replace = movePathPoint(lantern, ground, { beat: 'behind', action: 1 }, 0, { x: 7, y: 14 });
    expect(text(replace)).toContain('TL replace to TR');
  });

  test.each([
    ['into the crease', movePathPoint(quarry, ground, curl, 1, { x: 1, y: 1 }), /inside the crease/],
    ['off the field', movePathPoint(quarry, ground, curl, 1, { x: 0, y: 41 }), /midline/],
    ['its only point taken out', removePathPoint(lantern, ground, { beat: 'look', action: 1 }, 0), /an end/],
    ['a bend in a step', addPathPoint(lantern, ground, { beat: 'finish', action: 1 }, 0, { x: 5, y: 12 }), /straight/],
    ['a pass', movePathPoint(lantern, ground, { beat: 'swing', action: 0 }, 0, { x: 5, y: 12 }), /leads nowhere/],
    ['a point that is not there', movePathPoint(quarry, ground, curl, 2, { x: 5, y: 5 }), /no such point/],
    [
      'a beat that is not there',
      movePathPoint(quarry, ground, { beat: 'x', action: 0 }, 0, { x: 5, y: 5 }),
      /no step "x"/,
    ],
  ])('refused: %s', (_, edit, words) => {
    expect(reason(edit)).toMatch(words);
  });
});

describe('actions', () => {
  test('are added, and nothing else changes', () => {
    const edit = addAction(lantern, ground, 'swing', {
      kind: 'run',
      run: 'pop',
      by: 'C',
      path: [{ x: 4, y: 8 }],
      go: 'whenOpen',
    });
    const play = edited(edit);
    expect(lineOf(play, 'swing')).toBe('swing on start: TR pass TL, C pop to 4,8 when open');
    expect(play.beats.slice(1)).toEqual(lantern.beats.slice(1));
    expect(play.beats[1]).toBe(lantern.beats[1]);
    expect(play.lastTen).toBe(lantern.lastTen);
    expect(edited(removeAction(play, { beat: 'swing', action: 1 }))).toEqual(lantern);
  });

  test('a second way for a man in one beat is refused, and put in the place of the first when that is meant', () => {
    const carry = { kind: 'carry', by: 'X', path: [{ x: 6, y: -3 }] } as const;
    expect(reason(addAction(lantern, ground, 'look', carry))).toMatch(/X is told already: X carry to 5,-4/);
    expect(lineOf(putAction(lantern, ground, 'look', carry), 'look')).toBe(
      'look on catch X: X carry to 6,-3, C pop to -1,8, TR replace to 5,13',
    );
  });

  const at = (beat: string, action: number) => ({ beat, action });
  test.each([
    ['a pass becomes a skip', changeVerb(lantern, ground, at('swing', 0), 'skip'), 'TR skip TL'],
    ['a pass becomes a fake', changeVerb(lantern, ground, at('swing', 0), 'fake'), 'TR fake TL'],
    ['a carry becomes a cut', changeVerb(lantern, ground, at('look', 0), 'cut'), 'X cut to 5,-4'],
    ['a cut becomes a pop', changeVerb(lantern, ground, at('down', 1), 'pop'), 'C pop to -2,6'],
    [
      'a sneak stays patient as a flash',
      changeVerb(lantern, ground, at('behind', 2), 'flash'),
      'WR flash to 6,3 when open',
    ],
    ['a shot becomes a hold', changeVerb(lantern, ground, at('rip', 0), 'hold'), 'TR hold 1'],
    ['a pick becomes a seal', changeVerb(quarry, ground, at('low', 1), 'seal'), 'CL seal on CR'],
    ['another receiver', changeTarget(lantern, ground, at('swing', 0), 'WR'), 'TR pass WR'],
    ['at once', setWhenOpen(lantern, ground, at('behind', 2), false), 'WR sneak to 6,3,'.slice(0, -1)],
  ])('%s', (_, edit, phrase) => {
    expect(text(edit)).toContain(phrase);
    expect(text(edit)).not.toContain(`${phrase} when open when`);
  });

  test.each([
    ['a pass to himself', changeTarget(lantern, ground, at('swing', 0), 'TR'), /himself/],
    ['a shot that becomes a pass to nobody', changeVerb(lantern, ground, at('rip', 0), 'pass'), /Say whom/],
    ['a pass that leads nowhere as a cut', changeVerb(lantern, ground, at('swing', 0), 'cut'), /Say where/],
    ['a patient carry', setWhenOpen(lantern, ground, at('look', 0), true), /Only a run/],
    ['a hold of a minute', addAction(lantern, ground, 'rip', { kind: 'hold', by: 'TR', seconds: 60 }), /at most 20/],
    ['an action that is gone', removeAction(lantern, at('rip', 1)), /no such action/],
  ])('refused: %s', (_, edit, words) => {
    expect(reason(edit)).toMatch(words);
  });
});

describe('a phrase that cannot be read', () => {
  const doc = small();
  beatDoc(doc, 1).do[1] = 'C cutt to -2,5';
  const book = doc as Playbook;
  const play = book.plays[0]!;
  test('stays as it is while others are edited', () => {
    const edit = changeTarget(play, groundOf(book), { beat: 'two', action: 0 }, 'X');
    expect(lineOf(edit, 'two')).toBe('two on catch TL: TL pass X, C cutt to -2,5');
  });
  test('is not edited itself', () => {
    expect(reason(movePathPoint(play, groundOf(book), { beat: 'two', action: 1 }, 0, { x: 0, y: 8 }))).toMatch(
      /cannot be read/,
    );
  });
});

describe('beats', () => {
  test.each([
    ['after a pass, the catch', addBeatAfter(quarry, ground, 'feed'), 'call feed + 1'],
    ['after a carry, its end', addBeatAfter(edited(removeBeat(lantern, ground, 'rip')), ground, 'finish'), 'catch TR'],
    ['after a run, its end', addBeatAfter(quarry, ground, 'seep'), 'arrive CL'],
    [
      'after runs that all wait, the end of the last',
      addBeatAfter(edited(removeAction(quarry, { beat: 'seep', action: 1 })), ground, 'seep'),
      'arrive WR',
    ],
    [
      'after a pass beside runs, the catch',
      addBeatAfter({ ...lantern, beats: lantern.beats.slice(0, 3), reads: [] }, ground, 'behind'),
      'catch X',
    ],
    [
      'after a pick alone, a call',
      addBeatAfter(edited(removeAction(quarry, { beat: 'low', action: 0 })), ground, 'low'),
      'call low + 1',
    ],
    ['when the end of the carry is waited for already, a call', addBeatAfter(lantern, ground, 'look'), 'call look + 1'],
  ])('start on what follows: %s', (_, edit, on) => {
    expect(text(edit)).toContain(`on ${on}: `);
    expect(edited(edit).beats).toHaveLength(text(edit).split('\n').length - (edited(edit).lastTen?.beats?.length ?? 0));
  });

  test('a name is followed by calls and reads', () => {
    const edit = renameBeat(quarry, ground, 'curl', 'over-top');
    expect(lineOf(edit, 'seep')).toMatch(/^seep on call over-top \+ 0\.8:/);
    const turned = edited(renameBeat(lantern, ground, 'finish', 'end'));
    expect(turned.reads!.map((read) => read.during)).toEqual(['behind', 'end', 'end', 'rip']);
    expect(turned.reads![0]).toBe(lantern.reads![0]);
    expect(reason(renameBeat(quarry, ground, 'curl', 'low'))).toMatch(/called "low" already/);
    expect(reason(renameBeat(quarry, ground, 'curl', 'Low 2'))).toMatch(/small letters/);
  });

  test('a trigger is changed', () => {
    const edit = changeTrigger(lantern, ground, 'finish', { kind: 'call', beat: 'look', seconds: 1.5 });
    expect(lineOf(edit, 'finish')).toMatch(/^finish on call look \+ 1\.5:/);
    const itself = changeTrigger(lantern, ground, 'look', { kind: 'call', beat: 'look', seconds: 1 });
    expect(reason(itself)).toMatch(/itself/);
    expect(reason(changeTrigger(lantern, ground, 'look', { kind: 'catch', by: 'BR' }))).toMatch(/no spot BR/);
  });
});

describe('a beat is taken out', () => {
  test('at the end of the play', () => {
    const edit = removeBeat(lantern, ground, 'rip');
    expect(edited(edit).beats).toEqual(lantern.beats.slice(0, -1));
    expect(edit).toHaveProperty('also', ['A read that belonged to it went with it.']);
    expect(edited(edit).reads).toEqual(lantern.reads!.slice(0, 3));
  });

  test('and a call that counted from it counts from what started it', () => {
    const chained = edited(changeTrigger(quarry, ground, 'curl', { kind: 'call', beat: 'low', seconds: 0.7 }));
    const edit = removeBeat(edited(removeBeat(chained, ground, 'feed', 'withRest')), ground, 'curl', 'withRest');
    expect(lineOf(edit, 'seep')).toMatch(/^seep on call low \+ 1\.5:/);
    expect(edit).toHaveProperty('also', ['"seep" starts on "call low + 1.5" now.', 'A read'].slice(0, 1));
  });

  test('in the middle, and the ball goes straight to the next man', () => {
    const edit = removeBeat(lantern, ground, 'down');
    expect(lineOf(edit, 'swing')).toBe('swing on start: TR skip WL');
    expect(edit).toHaveProperty('also', ['TR throws to WL now.']);
  });

  test('at the start, and the next man starts', () => {
    const edit = removeBeat(lantern, ground, 'swing');
    expect(edited(edit).start.ball).toBe('TL');
    expect(edited(edit).reset).toEqual({ ball: 'TL', then: 'again' });
    expect(lineOf(edit, 'down')).toMatch(/^down on start:/);
  });

  test('with what hangs on it, or not at all', () => {
    expect(reason(removeBeat(lantern, ground, 'look'))).toBe(
      '"finish" and "rip" hang on "look": nothing else in the play starts them.',
    );
    const edit = removeBeat(lantern, ground, 'look', 'withRest');
    expect(edited(edit).beats.map((beat) => beat.id)).toEqual(['swing', 'down', 'behind']);
    expect(edited(edit).reads!.map((read) => read.carrier)).toEqual(['WL']);
  });
});

describe('point at the man who is to get the ball', () => {
  test.each([
    [
      'in an empty beat its holder throws',
      edited(addBeatAfter(edited(removeBeat(lantern, ground, 'rip')), ground, 'finish')),
      'step-6',
      'WR',
      'step-6 on catch TR: TR feed WR',
    ],
    [
      'at the end of a carry he throws in the same beat',
      edited(removeAction(quarry, { beat: 'feed', action: 0 })),
      'curl',
      'TL',
      'curl on catch WL: WL carry to -9,4, CR cut via 0,8.5 to -3.5,5, TR replace to 7,11, WL pass TL',
    ],
    [
      'after a throw the catcher throws in a new beat',
      edited(removeBeat(lantern, ground, 'rip')),
      'finish',
      'WL',
      'step-6 on catch TR: TR skip WL',
    ],
    [
      'inside it is a feed',
      edited(removeBeat(lantern, ground, 'look', 'withRest')),
      'behind',
      'C',
      'step-4 on catch X: X feed C',
    ],
    [
      'a beat that waits for the catch gets the throw',
      edited(removeAction(quarry, { beat: 'turn', action: 0 })),
      'feed',
      'TL',
      'turn on catch CR: CR pass TL',
    ],
  ])('%s', (_, play, beat, to, line) => {
    const edit = passTo(play, ground, beat, to);
    expect(text(edit).split('\n')).toContain(line);
    expect(edit).toHaveProperty('at.beat', line.split(' ')[0]);
  });

  test.each([
    ['to the man who has it', lantern, 'swing', 'TL', /has the ball already/],
    ['from a man who throws it elsewhere', lantern, 'swing', 'WR', /TL is told already: TL pass WL/],
    ['from a man who shoots', lantern, 'rip', 'TL', /shoots/],
    ['to nobody', lantern, 'swing', 'ZZ', /no spot ZZ/],
  ])('refused: %s', (_, play, beat, to, words) => {
    expect(reason(passTo(play, ground, beat, to))).toMatch(words);
  });

  test('what was pointed at can be run', () => {
    const play = edited(passTo(edited(removeBeat(lantern, ground, 'look', 'withRest')), ground, 'behind', 'C'));
    const book: Playbook = { ...playbook, plays: [play] };
    expect(toEnginePlay(book, 'lantern').beats.at(-1)!.actions).toEqual([
      { kind: 'pass', by: 'X', to: 'C', style: 'feed' },
    ]);
  });
});
