import { describe, expect, test } from 'vitest';
import { demoPlaybook, demoText } from './demo.ts';
import { diagnosticText, type Severity } from './diagnostic.ts';
import { diagnosticCodes } from './diagnostic-codes.ts';
import { parsePlaybook } from './parse.ts';
import { beat, broken, check, type Loose, play, small } from './small-playbook.fixture.ts';

describe('a playbook without a fault', () => {
  test('has no errors or warnings', () => {
    const { value, diagnostics } = check(JSON.stringify(small()));
    expect(diagnostics.map(diagnosticText)).toEqual([]);
    expect(value).toEqual(small());
  });

  test('the demo too', () => {
    expect(check(demoText).diagnostics.map(diagnosticText)).toEqual([]);
    expect(check(demoText).value).toEqual(demoPlaybook);
  });

  test('is told which rule values to confirm, once', () => {
    const notes = parsePlaybook(demoText).diagnostics;
    expect(notes.map((note) => [note.code, note.severity, note.path])).toEqual([
      ['rule-unconfirmed', 'note', 'team.level'],
    ]);
    expect(notes[0]!.message).toMatch(
      /4 rule values .* Some books have .*"penalties\.goalReleases": true.*paste this right after/,
    );
    expect(notes[0]!.paste).toContain('"penalties.goalReleases": false,');
  });

  test('is not asked to confirm what it has set itself', () => {
    const text = broken((doc) => {
      doc.team.level = '14U';
      doc.settings.rules = { 'penalties.goalReleases': true };
    });
    const note = parsePlaybook(text).diagnostics.find((each) => each.code === 'rule-unconfirmed')!;
    expect(note.message + note.paste).not.toContain('goalReleases');
    expect(note.paste).toContain('"shotClock": null');
  });

  // Where the lines go, and a text that has such a place.
  test.each<[string, (doc: Loose) => void]>([
    ['{', (d) => delete d.settings],
    ['"settings": {', (d) => (d.settings = {})],
    ['"settings": {', (d) => (d.settings = { penaltySeconds: 60 })],
    ['"rules": {', (d) => (d.settings = { rules: {} })],
    ['"rules": {', (d) => (d.settings = { rules: { 'penalties.goalReleases': true } })],
  ])('can be pasted after %s, and is told no more', (place, edit) => {
    const text = broken((doc) => {
      doc.team.level = '14U';
      edit(doc);
    });
    const [note] = parsePlaybook(text).diagnostics;
    expect(note!.message).toContain(`right after ${place === '{' ? 'the first {' : place}`);
    const at = text.indexOf(place) + place.length;
    const { value, diagnostics } = parsePlaybook(`${text.slice(0, at)}${note!.paste}${text.slice(at)}`);
    expect(diagnostics.map(diagnosticText)).toEqual([]);
    expect(Object.keys(value!.settings!.rules!).sort()).toEqual([
      'markings.goalToMidfield',
      'markings.halfWidth',
      'penalties.goalReleases',
      'shotClock',
    ]);
  });
});

interface Case {
  readonly name: string;
  readonly edit: (doc: Loose) => void;
  readonly code: string;
  readonly path: string;
  readonly says: string | RegExp;
}

// biome-ignore format: a table reads better with one case a line
const cases: readonly Case[] = [
  // The shape of the document.
  { name: 'no format', edit: (d) => delete d.format, code: 'format-wrong', path: 'format', says: 'has no "format"' },
  { name: 'another format', edit: (d) => (d.format = 'x'), code: 'format-wrong', path: 'format', says: 'another' },
  { name: 'no version', edit: (d) => delete d.version, code: 'version-wrong', path: 'version', says: '"version": 1' },
  { name: 'version 1.5', edit: (d) => (d.version = 1.5), code: 'version-wrong', path: 'version', says: 'whole number' },
  { name: 'a newer version', edit: (d) => (d.version = 2), code: 'version-newer', path: 'version', says: 'version 2' },
  { name: 'no team name', edit: (d) => delete d.team.name, code: 'field-missing', path: 'team.name', says: 'a text in quotes' },
  { name: 'no level', edit: (d) => delete d.team.level, code: 'field-missing', path: 'team.level', says: 'one of "8U"' },
  { name: 'a name that is a number', edit: (d) => (play(d).name = 7), code: 'field-type', path: 'plays[0].name', says: 'not 7' },
  { name: 'beats that are an object', edit: (d) => (play(d).beats = {}), code: 'field-type', path: 'plays[0].beats', says: 'a list in [ ]' },
  { name: 'a slip in a field', edit: (d) => (play(d).biats = []), code: 'field-unknown', path: 'plays[0].biats', says: 'Did you mean "beats"' },
  { name: 'a slip in a player', edit: (d) => (d.team.roster[0].hnd = 1), code: 'field-unknown', path: 'team.roster[0].hnd', says: 'Did you mean "hand"' },
  { name: 'an unknown hand', edit: (d) => (d.team.roster[0].hand = 'lefty'), code: 'field-value', path: 'team.roster[0].hand', says: 'Did you mean "left"' },
  { name: 'a grade of 7', edit: (d) => (d.team.roster[0].grades = { shoot: 7 }), code: 'field-range', path: 'team.roster[0].grades.shoot', says: 'at most 5, not 7' },
  { name: 'a number of 7.5', edit: (d) => (d.team.roster[0].number = 7.5), code: 'field-type', path: 'team.roster[0].number', says: 'a whole number' },
  { name: 'an empty name', edit: (d) => (d.team.name = ''), code: 'field-length', path: 'team.name', says: 'not be empty' },
  { name: 'a long name', edit: (d) => (d.team.name = 'x'.repeat(81)), code: 'field-length', path: 'team.name', says: '80 characters' },
  { name: 'no beats', edit: (d) => (play(d).beats = []), code: 'field-length', path: 'plays[0].beats', says: 'at least 1, and holds 0' },
  { name: 'a place of three numbers', edit: (d) => (play(d).start.restart = [1, 2, 3]), code: 'field-length', path: 'plays[0].start.restart', says: 'at most 2' },
  { name: 'an id with spaces', edit: (d) => (play(d).id = 'My play'), code: 'field-form', path: 'plays[0].id', says: 'quick-swing' },
  { name: 'a spot in small letters', edit: (d) => (play(d).start.ball = 'tr'), code: 'field-form', path: 'plays[0].start.ball', says: 'capital letters' },
  { name: 'a spot in small letters as a name', edit: (d) => (play(d).spots = { x: [0, -6] }), code: 'field-form', path: 'plays[0].spots.x', says: 'capital letters' },
  { name: 'a rule value that is a text', edit: (d) => (d.settings.rules = { 'penalties.goalReleases': 'yes' }), code: 'field-type', path: 'settings.rules["penalties.goalReleases"]', says: 'a number, true, false or null' },

  // Team and settings.
  { name: 'five field players', edit: (d) => d.team.roster.splice(0, 2), code: 'roster-short', path: 'team.roster', says: 'has 5 field players' },
  { name: 'too many absent', edit: (d) => Object.assign(d.team.roster[0], { absent: true }) && Object.assign(d.team.roster[1], { absent: true }), code: 'roster-short', path: 'team.roster', says: 'add 1' },
  { name: 'one number twice', edit: (d) => (d.team.roster[1].number = 2), code: 'number-twice', path: 'team.roster[1].number', says: 'worn by Player 2 and by Player 3' },
  { name: 'no keeper', edit: (d) => d.team.roster.pop(), code: 'keeper-missing', path: 'team.roster', says: 'no goalkeeper' },
  { name: 'depth of a stranger', edit: (d) => (d.team.depth = { X: [2, 99] }), code: 'depth-player', path: 'team.depth.X[1]', says: 'nobody on the roster wears it' },
  { name: 'depth of the keeper', edit: (d) => (d.team.depth = { X: [1] }), code: 'depth-player', path: 'team.depth.X[0]', says: 'goalkeeper' },
  { name: 'depth of one man twice', edit: (d) => (d.team.depth = { X: [2, 2] }), code: 'depth-player', path: 'team.depth.X[1]', says: 'twice at X' },
  { name: 'depth at an unknown spot', edit: (d) => (d.team.depth = { Q: [2] }), code: 'spot-unknown', path: 'team.depth.Q', says: 'No set has a spot "Q"' },
  { name: 'a shot of 530 mph', edit: (d) => (d.team.roster[0].measured = { shotSpeedMph: [530, 540] }), code: 'measured-odd', path: 'team.roster[0].measured.shotSpeedMph', says: 'Player 2' },
  { name: 'more hits than shots', edit: (d) => (d.team.roster[0].measured = { onGoal: { hits: 9, shots: 4 } }), code: 'measured-odd', path: 'team.roster[0].measured.onGoal', says: 'a slip' },
  { name: 'level 10U', edit: (d) => (d.team.level = '10U'), code: 'level-no-man-up', path: 'team.level', says: 'no team is ever a man up' },
  { name: 'an unknown rule', edit: (d) => (d.settings.rules = { 'penalties.goalRelease': true }), code: 'rule-unknown', path: 'settings.rules["penalties.goalRelease"]', says: 'Did you mean "penalties.goalReleases"' },
  { name: 'a rule of the wrong kind', edit: (d) => (d.settings.rules = { 'penalties.goalReleases': 3 }), code: 'rule-unknown', path: 'settings.rules["penalties.goalReleases"]', says: 'true or false' },

  // Sets and spots.
  { name: 'two plays of one id', edit: (d) => d.plays.push({ ...play(d), name: 'Other' }), code: 'id-twice', path: 'plays[1].id', says: 'belongs to "Swing"' },
  { name: 'two beats of one id', edit: (d) => (beat(d, 3).id = 'one'), code: 'id-twice', path: 'plays[0].beats[3].id', says: '"one" is already used' },
  { name: 'an unknown set', edit: (d) => (play(d).set = '2-3-2'), code: 'set-unknown', path: 'plays[0].set', says: 'Did you mean' },
  { name: 'a set of two meanings', edit: (d) => (play(d).set = '2-2-2'), code: 'set-ambiguous', path: 'plays[0].set', says: '"2-2-2-low" (two on top' },
  { name: 'an own set of five', edit: (d) => (d.sets = [{ id: 'mine', name: 'Mine', spots: { A: { at: [0, 9] } } }]), code: 'spot-count', path: 'sets[0].spots', says: 'has 1 spots' },
  { name: 'an own set by a built-in name', edit: (d) => (d.sets = [ownSet('3-3')]), code: 'id-twice', path: 'sets[0].id', says: 'built in' },
  { name: 'an unknown spot', edit: (d) => (beat(d, 0).do = ['TR pass TT']), code: 'spot-unknown', path: 'plays[0].beats[0].do[0]', says: 'no spot "TT"' },
  { name: 'a spot of the set counted from behind', edit: (d) => (play(d).reset.ball = 'BR'), code: 'spot-unknown', path: 'plays[0].reset.ball', says: /counted from the top down.*"1-3-2" here and has P, WR, WL, C, BR, BL/ },
  { name: 'a spot with two letters in the wrong order', edit: (d) => (beat(d, 1).do[0] = 'TL pass LW'), code: 'spot-unknown', path: 'plays[0].beats[1].do[0]', says: /^The play has no spot "LW"\. Did you mean WL\? Its spots are [A-Z, ]+\.$/ },
  { name: 'a spot with a letter too many', edit: (d) => (beat(d, 1).on = 'catch TLL'), code: 'spot-unknown', path: 'plays[0].beats[1].on', says: /Did you mean TL\? Its spots are [A-Z, ]+\.$/ },
  { name: 'the point of the set counted from behind', edit: (d) => (beat(d, 1).do[0] = 'TL pass P'), code: 'spot-unknown', path: 'plays[0].beats[1].do[0]', says: /^The play has no spot "P"\. Its spots are .* counted from the top down here/ },
  { name: 'a set counted from behind', edit: (d) => (play(d).set = '1-3-2'), code: 'spot-unknown', path: 'plays[0].set', says: /names TR, TL, which the set "1-3-2" does not have.*"set": "2-3-1".*counted from the top down/ },
  { name: 'a spot like no other', edit: (d) => (beat(d, 1).do[0] = 'TL pass Q'), code: 'spot-unknown', path: 'plays[0].beats[1].do[0]', says: /^The play has no spot "Q"\. Its spots are [A-Z, ]+\.$/ },
  { name: 'a moved spot that is not there', edit: (d) => (play(d).spots = { P: [0, 14] }), code: 'spot-unknown', path: 'plays[0].spots.P', says: 'no spot "P"' },
  { name: 'two men in one place', edit: (d) => (play(d).spots = { X: [0, 6] }), code: 'spots-overlap', path: 'plays[0].spots.X', says: 'C and X would stand in the same place' },
  { name: 'a spot in the crease', edit: (d) => (play(d).spots = { C: [0, 2] }), code: 'place-in-crease', path: 'plays[0].spots.C', says: 'inside the crease' },
  { name: 'a run into the crease', edit: (d) => (beat(d, 1).do[1] = 'C cut to 1,2'), code: 'place-in-crease', path: 'plays[0].beats[1].do[1]', says: '1,2 lies inside the crease' },
  { name: 'a spot behind the end line', edit: (d) => (play(d).spots = { X: [0, -16] }), code: 'place-out-of-bounds', path: 'plays[0].spots.X', says: 'behind the end line (y -15)' },
  { name: 'a run over the sideline', edit: (d) => (beat(d, 1).do[1] = 'C cut to 31,2'), code: 'place-out-of-bounds', path: 'plays[0].beats[1].do[1]', says: 'sideline (x 30)' },
  { name: 'a restart over the midline', edit: (d) => (play(d).start.restart = [0, 41]), code: 'place-out-of-bounds', path: 'plays[0].start.restart', says: 'over the midline (y 40)' },
  { name: 'a restart in the box', edit: (d) => (play(d).start.restart = [10, 10]), code: 'restart-in-box', path: 'plays[0].start.restart', says: 'outside it' },

  // The play language.
  { name: 'no such verb', edit: (d) => (beat(d, 3).do = ['C shoots']), code: 'action-syntax', path: 'plays[0].beats[3].do[0]', says: '"shoot" should stand where "shoots" stands' },
  { name: 'a pass with a "to"', edit: (d) => (beat(d, 0).do = ['TR pass to TL']), code: 'action-syntax', path: 'plays[0].beats[0].do[0]', says: 'a spot in capital letters should stand where "to" stands' },
  { name: 'a pass to nobody', edit: (d) => (beat(d, 1).do[0] = 'TL pass'), code: 'action-syntax', path: 'plays[0].beats[1].do[0]', says: '"TL pass": pass to whom? Write it like' },
  { name: 'a passer in small letters', edit: (d) => (beat(d, 1).do[0] = 'tl pass WL'), code: 'action-syntax', path: 'plays[0].beats[1].do[0]', says: 'TL in capital letters should stand where "tl" stands' },
  { name: 'a verb like no other', edit: (d) => (beat(d, 1).do[0] = 'TL yeets WL'), code: 'action-syntax', path: 'plays[0].beats[1].do[0]', says: 'a verb (pass' },
  { name: 'half a place', edit: (d) => (beat(d, 1).do[1] = 'C cut to 5'), code: 'action-syntax', path: 'plays[0].beats[1].do[1]', says: '"C cut to 5" ends too soon: a comma should follow' },
  { name: 'a trigger in other words', edit: (d) => (beat(d, 1).on = 'when TL catches'), code: 'trigger-syntax', path: 'plays[0].beats[1].on', says: 'start, catch, pass, arrive or call' },
  { name: 'a cue in other words', edit: (d) => (play(d).reads[0].if = ['C is open']), code: 'cue-syntax', path: 'plays[0].reads[0].if[0]', says: 'free, pressed, next steps, my man leaves, crease up, far low looks away, far low crosses, open, left or lane taken should stand where "C" stands' },
  { name: 'half a cue', edit: (d) => (play(d).reads[0].if = ['far low']), code: 'cue-syntax', path: 'plays[0].reads[0].if[0]', says: '"far low" ends too soon: looks away or crosses should follow' },
  { name: 'a lane to nobody', edit: (d) => (play(d).reads[0].if = ['lane taken']), code: 'cue-syntax', path: 'plays[0].reads[0].if[0]', says: '"lane taken": who?' },
  { name: 'a lane to himself', edit: (d) => (play(d).reads[0].if = [`lane taken ${play(d).reads[0].carrier}`]), code: 'self-target', path: 'plays[0].reads[0].if[0]', says: 'cannot look for himself' },
  { name: 'a read with the man', edit: (d) => (play(d).reads[0].then = 'WL feed C'), code: 'read-syntax', path: 'plays[0].reads[0].then', says: 'the carrier acts' },
  { name: 'a read that only runners do', edit: (d) => (play(d).reads[0].then = 'cut to 3,9'), code: 'read-syntax', path: 'plays[0].reads[0].then', says: 'a verb (pass, skip' },
  { name: 'a hold of a minute', edit: (d) => beat(d, 0).do.unshift('TR hold 60'), code: 'seconds-range', path: 'plays[0].beats[0].do[0]', says: 'at most 20' },
  { name: 'a call before its beat', edit: (d) => (beat(d, 3).on = 'call two + -1'), code: 'seconds-range', path: 'plays[0].beats[3].on', says: '0 to 60' },
  { name: 'a pass to himself', edit: (d) => (beat(d, 0).do = ['TR pass TR']), code: 'self-target', path: 'plays[0].beats[0].do[0]', says: 'TR cannot pass to himself' },
  { name: 'a look for himself', edit: (d) => (play(d).reads[0].if = ['open WL']), code: 'self-target', path: 'plays[0].reads[0].if[0]', says: 'WL cannot look for himself' },
  { name: 'an unknown beat', edit: (d) => (beat(d, 3).on = 'call tow + 1'), code: 'beat-unknown', path: 'plays[0].beats[3].on', says: 'Did you mean "two"' },
  { name: 'a read during an unknown beat', edit: (d) => (play(d).reads[0].during = 'five'), code: 'beat-unknown', path: 'plays[0].reads[0].during', says: 'one, two, three, four' },

  // What a play cannot do.
  { name: 'no beat on start', edit: (d) => (beat(d, 0).on = 'catch TR'), code: 'start-missing', path: 'plays[0].beats[0].on', says: /No step starts when the set is up.*TR has the ball already.*Let "one" start then/ },
  { name: 'a first pass to the wrong man', edit: (d) => (beat(d, 0).do = ['TR pass WR']), code: 'beat-never-starts', path: 'plays[0].beats[1].on', says: /throws it to TL \("one" throws to WR\).*cannot start either: "three", "four"/ },
  { name: 'a trigger that names the wrong man', edit: (d) => (beat(d, 1).on = 'catch X'), code: 'beat-never-starts', path: 'plays[0].beats[1].on', says: 'cannot start either: "three", "four"' },
  { name: 'a catch that nobody throws', edit: (d) => (beat(d, 3).on = 'catch WR'), code: 'beat-never-starts', path: 'plays[0].beats[3].on', says: 'throws it to WR' },
  { name: 'a pass that is never thrown', edit: (d) => d.plays[0].beats.push({ id: 'five', on: 'pass X', do: ['WR cut to 5,5'] }), code: 'beat-never-starts', path: 'plays[0].beats[4].on', says: 'X never throws' },
  { name: 'a pass to another man', edit: (d) => (beat(d, 3).on = 'pass WL to TR'), code: 'beat-never-starts', path: 'plays[0].beats[3].on', says: 'WL throws only to C, not to TR' },
  { name: 'an arrival without a run', edit: (d) => (beat(d, 3).on = 'arrive WR'), code: 'beat-never-starts', path: 'plays[0].beats[3].on', says: 'WR is never sent anywhere' },
  { name: 'a beat that calls itself', edit: (d) => (beat(d, 3).on = 'call four + 1'), code: 'beat-never-starts', path: 'plays[0].beats[3].on', says: 'waits for itself' },
  { name: 'two runs of one man', edit: (d) => beat(d, 1).do.push('C pop to 6,9'), code: 'two-places', path: 'plays[0].beats[1].do[2]', says: 'two ways at once in the step "two"' },
  { name: 'a run with the ball in the stick', edit: (d) => beat(d, 0).do.push('TR cut to 3,9'), code: 'two-places', path: 'plays[0].beats[0].do[1]', says: '"on": "pass TR"' },
  { name: 'two beats of one moment that send one man', edit: (d) => d.plays[0].beats.push({ id: 'five', on: 'catch TL', do: ['C pop to 9,11'] }), code: 'two-places', path: 'plays[0].beats[1].do[1]', says: 'in the same moment' },
  { name: 'two passes at once', edit: (d) => beat(d, 0).do.push('TR pass WR'), code: 'two-ball-actions', path: 'plays[0].beats[0].do[1]', says: 'throw or shoot twice' },
  { name: 'a pass and a shot at once', edit: (d) => beat(d, 0).do.push('TR shoot'), code: 'two-ball-actions', path: 'plays[0].beats[0].do[1]', says: 'throw or shoot twice' },
  { name: 'two men to one place', edit: (d) => beat(d, 1).do.push('WR cut to -2,5.5'), code: 'moves-meet', path: 'plays[0].beats[1].do[2]', says: 'C and WR end in the same place' },
  { name: 'a pass by a man without the ball', edit: (d) => beat(d, 1).do.push('X pass C'), code: 'no-ball', path: 'plays[0].beats[1].do[2]', says: 'the ball cannot come to him' },
  { name: 'a shot by the man who has thrown', edit: (d) => beat(d, 1).do.push('TR shoot'), code: 'no-ball', path: 'plays[0].beats[1].do[2]', says: 'TR is told to shoot' },
  { name: 'a run that nobody can make', edit: (d) => { beat(d, 1).do[1] = 'C cut to -20,19'; d.plays[0].beats.push({ id: 'five', on: 'call two + 0.5', do: ['C cut to -2,5'] }); }, code: 'run-too-long', path: 'plays[0].beats[1].do[1]', says: /needs \d\.\d s for it, and he has about 0\.5 s/ },
  { name: 'a run across the field', edit: (d) => beat(d, 2).do.push('WR cut to -20,36'), code: 'long-run', path: 'plays[0].beats[2].do[1]', says: /WR is sent 45 yd, to -20,36: that takes a usual man of the level about 6\.\d s\. Look/ },
  { name: 'a long carry that a beat waits for', edit: (d) => { beat(d, 2).do = ['WL carry to -25,30']; beat(d, 3).on = 'arrive WL'; beat(d, 3).do = ['WL feed C']; }, code: 'long-run', path: 'plays[0].beats[2].do[0]', says: /WL carries 30 yd.* about 5\.\d s, and "four" waits for it/ },
  { name: 'a long run in a beat that only a read leads to', edit: (d) => { beat(d, 2).do = []; beat(d, 3).do.unshift('TR cut to -25,30'); }, code: 'long-run', path: 'plays[0].beats[3].do[0]', says: 'TR is sent 36 yd' },
  { name: 'a long run in the last ten seconds', edit: (d) => (play(d).lastTen = { beats: [{ id: 'late', on: 'start', do: ['WR cut to -20,36'] }] }), code: 'long-run', path: 'plays[0].lastTen.beats[0].do[0]', says: 'WR is sent' },
  { name: 'a call to throw in the middle of a carry', edit: (d) => { beat(d, 2).do = ['WL carry to -11,9']; beat(d, 3).on = 'call three + 0.1'; beat(d, 3).do = ['WL feed C']; }, code: 'call-too-early', path: 'plays[0].beats[3].do[0]', says: /0\.1 s after he started to carry it to -11,9, which takes about \d\.\d s.*"arrive WL"/ },
  { name: 'a pass to a man on his way', edit: (d) => { beat(d, 0).do.push('TL replace to -26,26'); }, code: 'late-for-pass', path: 'plays[0].beats[0].do[1]', says: 'TL is thrown to about' },
  { name: 'a way through the crease', edit: (d) => beat(d, 1).do.push('X sneak to 1,4'), code: 'through-crease', path: 'plays[0].beats[1].do[2]', says: 'via x,y' },
  { name: 'a read of a man who never has the ball', edit: (d) => (play(d).reads[0] = { carrier: 'X', if: ['free'], then: 'shoot' }), code: 'read-never-fires', path: 'plays[0].reads[0]', says: 'never comes to X' },
  { name: 'a read after the ball has gone', edit: (d) => (play(d).reads[0] = { carrier: 'TR', during: 'two', if: ['free'], then: 'shoot' }), code: 'read-never-fires', path: 'plays[0].reads[0]', says: 'once the step "two" has started' },
  { name: 'free and pressed at once', edit: (d) => (play(d).reads[0].if = ['free', 'pressed']), code: 'read-never-fires', path: 'plays[0].reads[0]', says: 'free and pressed' },
  { name: 'a read behind a wider one', edit: (d) => play(d).reads.push({ carrier: 'WL', if: ['free', 'open C'], then: 'shoot' }), code: 'read-never-fires', path: 'plays[0].reads[1]', says: 'stricter read first' },
  { name: 'three cues at once', edit: (d) => (play(d).reads[0].if = ['free', 'open C', 'open X']), code: 'reads-too-many', path: 'plays[0].reads[0]', says: '3 cues' },
  { name: 'five reads of one man', edit: (d) => (play(d).reads = ['TR', 'TL', 'X', 'WR', 'C'].map((to) => ({ carrier: 'WL', if: [`open ${to}`], then: `pass ${to}`, }))), code: 'reads-too-many', path: 'plays[0].reads', says: 'WL has 5 reads' },
  { name: 'a reset to another man', edit: (d) => (play(d).reset.ball = 'X'), code: 'reset-elsewhere', path: 'plays[0].reset.ball', says: 'Reset to TR' },
  { name: 'an empty last ten', edit: (d) => (play(d).lastTen = {}), code: 'last-ten-empty', path: 'plays[0].lastTen', says: 'neither steps ("beats") nor reads' },
  { name: 'a last ten that names a beat of the play', edit: (d) => (play(d).lastTen = { reads: [{ carrier: 'TR', during: 'one', if: ['free'], then: 'shoot' }] }), code: 'beat-unknown', path: 'plays[0].lastTen.reads[0].during', says: 'none' },

  // Own schemes and opponents.
  { name: 'a scheme of two', edit: (d) => (d.schemes[0] = { id: 'ours', name: 'Ours', men: { a: [0, 9], b: [0, 5] }, rows: [{ ball: 'TR', do: ['a ball', 'b man C'] }], }), code: 'scheme-men', path: 'schemes[0].men', says: 'has 2 defenders' },
  { name: 'two defenders in one place', edit: (d) => (d.schemes[0].men.c = [5, 3.5]), code: 'scheme-men', path: 'schemes[0].men.c', says: 'lr and c' },
  { name: 'an unknown defender', edit: (d) => (d.schemes[0].rows[0].do[0] = 'tx ball'), code: 'defender-unknown', path: 'schemes[0].rows[0].do[0]', says: 'Did you mean tr' },
  { name: 'the discipline of a man whom no scheme has', edit: (d) => (d.opponents[0].discipline = { all: 'sharp', pt: 'loose' }), code: 'defender-unknown', path: 'opponents[0].discipline.pt', says: 'their men are tr, tl, lr, ll, c, and "all"' },
  { name: 'an opponent by the name of a scheme', edit: (d) => (d.opponents[0].id = 'shutoff'), code: 'id-twice', path: 'opponents[0].id', says: 'is the name of a scheme' },
  { name: 'an unknown short stick', edit: (d) => (d.schemes[0].shortSticks = ['q']), code: 'defender-unknown', path: 'schemes[0].shortSticks[0]', says: 'no defender "q"' },
  { name: 'a duty in other words', edit: (d) => (d.schemes[0].rows[0].do[0] = 'tr goes to the ball'), code: 'duty-syntax', path: 'schemes[0].rows[0].do[0]', says: 'a duty (ball, man' },
  { name: 'a duty on an unknown spot', edit: (d) => (d.schemes[0].rows[0].do[2] = 'lr man WQ'), code: 'spot-unknown', path: 'schemes[0].rows[0].do[2]', says: '"WQ"' },
  { name: 'two duties of one man', edit: (d) => (d.schemes[0].rows[0].do[4] = 'tr front C'), code: 'duty-twice', path: 'schemes[0].rows[0].do[4]', says: 'tr has two duties' },
  { name: 'a man without a duty', edit: (d) => d.schemes[0].rows[0].do.pop(), code: 'duty-missing', path: 'schemes[0].rows[0].do', says: 'nothing about c' },
  { name: 'nobody for the ball', edit: (d) => (d.schemes[0].rows[0].do[0] = 'tr man TR'), code: 'nobody-on-ball', path: 'schemes[0].rows[0].do', says: 'nobody in "Ours" has the duty "ball"' },
  { name: 'an own scheme by a built-in name', edit: (d) => Object.assign(d.schemes[0], { id: 'shutoff' }) && Object.assign(d.opponents[0], { schemes: {} }), code: 'id-twice', path: 'schemes[0].id', says: 'built in' },
  { name: 'a row for a place that no set has', edit: (d) => (d.schemes[0].rows[0].ball = 'Q'), code: 'spot-unknown', path: 'schemes[0].rows[0].ball', says: 'No set has a spot "Q"' },
  { name: 'two rows for one place', edit: (d) => d.schemes[0].rows.push(d.schemes[0].rows[0]), code: 'row-twice', path: 'schemes[0].rows[1].ball', says: 'two rows for the ball at TR' },
  { name: 'an unknown scheme', edit: (d) => (d.opponents[0].schemes = { 'box-zne': 1 }), code: 'scheme-unknown', path: 'opponents[0].schemes.box-zne', says: 'Did you mean "box-zone"' },

  // Practice plans.
  { name: 'practice of an unknown play', edit: (d) => (d.practices = [practice({ plays: ['swng'] })]), code: 'practice-play', path: 'practices[0].plays[0]', says: 'Did you mean "swing"' },
  { name: 'practice against an unknown scheme', edit: (d) => (d.practices = [practice({ blocks: [{ kind: 'dummy', minutes: 4, scheme: 'box-zne' }] })]), code: 'practice-scheme', path: 'practices[0].blocks[0].scheme', says: 'Did you mean "box-zone"' },
  { name: 'practice with a spot of another set', edit: (d) => (d.practices = [practice({ blocks: [{ kind: 'part', minutes: 4, play: 'swing', spots: ['TR', 'P'] }] })]), code: 'practice-spot', path: 'practices[0].blocks[0].spots[1]', says: 'no spot P' },
  { name: 'practice that takes too long', edit: (d) => (d.practices = [practice({ blocks: [{ kind: 'walk', minutes: 21 }] })]), code: 'practice-time', path: 'practices[0].minutes', says: 'take 21 minutes, and there are 20' },
  { name: 'live practice without a goalkeeper', edit: (d) => (d.practices = [practice({ keeper: false, blocks: [{ kind: 'live', minutes: 4 }] })]), code: 'practice-keeper', path: 'practices[0].blocks[0]', says: 'only a fully equipped goalkeeper' },
  { name: 'practice on no day', edit: (d) => (d.practices = [practice({ date: '2026-02-30' })]), code: 'practice-date', path: 'practices[0].date', says: 'no 2026-02-30' },

  // Quizzes.
  { name: 'quiz with too few answers', edit: (d) => (d.quizzes = [quiz([])]), code: 'quiz-answers', path: 'quizzes[0].results[0].answers', says: '1 answers to the 2 questions' },
  { name: 'quiz with more right than asked', edit: (d) => (d.quizzes = [quiz([{ asked: 1, right: 2 }])]), code: 'quiz-answers', path: 'quizzes[0].results[0].answers[1]', says: 'right 2 times of 1' },

  // Man-ups that were played.
  { name: 'man-up on no day', edit: (d) => (d.chances = [chance({ date: '2026-02-30' })]), code: 'chance-date', path: 'chances[0].date', says: 'no 2026-02-30' },
  { name: 'more shots on goal than shots', edit: (d) => (d.chances = [chance({ shots: 1, onTarget: 2 })]), code: 'chance-counts', path: 'chances[0].onTarget', says: '2 shots on goal, and 1 shot' },
  { name: 'goal without a shot', edit: (d) => (d.chances = [chance({ shots: 0 })]), code: 'chance-counts', path: 'chances[0].shots', says: 'ends in a shot' },
  { name: 'shares of schemes above one', edit: (d) => (d.chances = [chance({ belief: { jump: 0.8, 'box-zone': 0.4 } })]), code: 'chance-counts', path: 'chances[0].belief', says: 'add up to 1.2' },
  { name: 'an expectation outside its interval', edit: (d) => (d.chances = [chance({ expected: { goals: 0.5, low: 0.1, high: 0.4 } })]), code: 'chance-counts', path: 'chances[0].expected', says: 'between' },
  { name: 'mark without a ball', edit: (d) => (d.chances = [chance({ marks: [{ time: 2, defenders: [], by: 'tick' }] })]), code: 'chance-marks', path: 'chances[0].marks[0]', says: 'where the ball is' },
  { name: 'mark with a name too many', edit: (d) => (d.chances = [chance({ marks: [{ time: 2, holder: 'X', defenders: [[0, 5]], names: ['c', 'x'], by: 'film' }] })]), code: 'chance-marks', path: 'chances[0].marks[0].names', says: '2 names for 1 defender' },
  { name: 'two man-ups of one id', edit: (d) => (d.chances = [chance({}), chance({})]), code: 'id-twice', path: 'chances[1].id', says: 'belongs to' },
];

function chance(more: Loose): Loose {
  return { id: 'c1', side: 'ours', result: 'goal', ...more };
}

function quiz(more: readonly Loose[]): Loose {
  const questions = ['X', 'C'].map((carrier) => ({ carrier, scheme: 'jump', right: 'Shoot' }));
  const results = [{ number: 7, round: 1, answers: [{ asked: 1, right: 1 }, ...more] }];
  return { id: 'k7qf', name: 'Reads', play: 'swing', questions, results };
}

function practice(more: Loose): Loose {
  return { id: 'tuesday', name: 'Tuesday', minutes: 20, players: 14, plays: ['swing'], blocks: [], ...more };
}

function ownSet(id: string): Loose {
  const spots = Object.fromEntries(['A', 'B', 'D', 'E', 'F', 'G'].map((spot, i) => [spot, { at: [i * 3, 10] }]));
  return { id, name: 'Mine', spots };
}

describe('a playbook with one fault', () => {
  test.each(cases)('$name: $code', ({ edit, code, path, says }) => {
    const { value, diagnostics } = check(broken(edit));
    const found = diagnostics.filter((diagnostic) => diagnostic.code === code && diagnostic.path === path);
    expect(found.length, diagnostics.map(diagnosticText).join('\n') || 'nothing found').toBeGreaterThan(0);
    expect(
      found.some(({ message }) => (typeof says === 'string' ? message.includes(says) : says.test(message))),
      found[0]!.message,
    ).toBe(true);
    const severity: Severity = diagnosticCodes[code as keyof typeof diagnosticCodes].severity;
    expect(found[0]!.severity).toBe(severity);
    expect(value === undefined).toBe(diagnostics.some((diagnostic) => diagnostic.severity === 'error'));
  });

  test.each(cases.filter(({ code }) => !coded.cascades.has(code)))(
    '$name is told once, without a cascade',
    ({ edit, code }) => {
      const { diagnostics } = check(broken(edit));
      expect(diagnostics.map((diagnostic) => diagnostic.code)).toEqual([code]);
    },
  );
});

/** Faults that rightly bring others with them. */
const coded = { cascades: new Set<string>() };

test('every code has a case, here or among the texts', () => {
  const covered = new Set([...cases.map((each) => each.code), ...textCodes, 'rule-unconfirmed']);
  expect(Object.keys(diagnosticCodes).filter((code) => !covered.has(code))).toEqual([]);
});

/** Codes whose cases stand in json/read-json.spec.ts and below. */
const textCodes = [
  ...Object.keys(diagnosticCodes).filter((code) => code.startsWith('json-')),
  'file-too-large',
  'too-many-problems',
];
