import { describe, expect, test } from 'vitest';
import { demoPlaybook, demoText } from './demo.ts';
import { hasErrors } from './diagnostic.ts';
import { parseUnfinished } from './parse-unfinished.ts';
import { serializePlaybook } from './serialize.ts';
import { broken, type Loose } from './small-playbook.fixture.ts';

describe('parseUnfinished', () => {
  test('gives a sound playbook as it is', () => {
    const { value, diagnostics } = parseUnfinished(demoText);
    expect(hasErrors(diagnostics)).toBe(false);
    expect(serializePlaybook(value!)).toBe(serializePlaybook(demoPlaybook));
  });

  test.each<[string, (doc: Loose) => unknown]>([
    ['an empty name', (d) => (d.plays[0].name = '')],
    ['half an action', (d) => (d.plays[0].beats[0].do = ['TR pass'])],
    ['a trigger that names nobody', (d) => (d.plays[0].beats[1].on = 'catch')],
    ['no beats yet', (d) => (d.plays[0].beats = [])],
    ['an id with a space', (d) => (d.plays[0].id = 'my play')],
    ['a spot in small letters', (d) => (d.plays[0].start.ball = 'tr')],
    ['a number twice', (d) => (d.team.roster[1].number = 2)],
    ['half a player more', (d) => (d.team.roster[0].number = 2.5)],
    ['a place far away', (d) => (d.plays[0].start.restart = [900, 0])],
    ['a grade of 9', (d) => (d.team.roster[0].grades = { speed: 9 })],
    ['a field that nobody knows', (d) => (d.plays[0].colour = 'red')],
    ['more tags than may be', (d) => (d.plays[0].tags = Array(13).fill('tag'))],
    ['a set that is not there', (d) => (d.plays[0].set = 'nowhere')],
  ])('an unfinished one, with %s, comes as it is and with what is wrong', (_, edit) => {
    const text = broken(edit);
    const { value, diagnostics } = parseUnfinished(text);
    expect(hasErrors(diagnostics)).toBe(true);
    expect(value).toEqual(JSON.parse(text));
  });

  test.each<[string, string]>([
    ['nothing', ''],
    ['half a file', demoText.slice(0, 500)],
    ['another file', '{"a": 1}'],
    ['a list', '[]'],
    ['a name twice', demoText.replace('"version"', '"format": "sliderule-playbook", "version"')],
    ['a name that tricks programs', demoText.replace('"version"', '"__proto__": {}, "version"')],
    ['a newer version', demoText.replace(/"version": 1/, '"version": 9')],
    ['no plays', broken((d) => delete d.plays)],
    ['a player without a number', broken((d) => delete d.team.roster[0].number)],
    ['a number that is a text', broken((d) => (d.team.roster[0].number = '4'))],
    ['an unknown hand', broken((d) => (d.team.roster[0].hand = 'third'))],
    ['a place of one number', broken((d) => (d.plays[0].start.restart = [3]))],
    ['a place of three numbers', broken((d) => (d.plays[0].start.restart = [3, 4, 5]))],
    ['too many tags, one of them a number', broken((d) => (d.plays[0].tags = [...Array(13).fill('tag'), 7]))],
    [
      'too many players, one of them a list',
      broken((d) => (d.team.roster = [...Array(70).fill(d.team.roster[0]), []])),
    ],
    ['a man-up that says nothing', broken((d) => (d.chances = [{}]))],
  ])('%s is none', (_, text) => {
    const { value, diagnostics } = parseUnfinished(text);
    expect(value).toBeUndefined();
    expect(hasErrors(diagnostics)).toBe(true);
  });
});
