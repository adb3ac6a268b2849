import { describe, expect, test } from 'vitest';
import { broken, check, small } from './small-playbook.fixture.ts';

describe('hostile files', () => {
  test.each([
    ['50 MB', () => ' '.repeat(50_000_000), 'file-too-large'],
    ['just over the cap', () => `"${'x'.repeat(5_000_000)}"`, 'file-too-large'],
    ['under the cap in characters, over it in bytes', () => `"${'\u20ac'.repeat(1_700_000)}"`, 'file-too-large'],
    ['depth 10,000', () => '{"plays":'.repeat(10_000), 'json-too-deep'],
    [
      'a million beats',
      () => broken((doc) => (doc.plays[0].beats = [])).replace('"beats": []', `"beats": [${'{},'.repeat(999_999)}{}]`),
      'json-too-many-values',
    ],
    [
      'fifty thousand beats',
      () => broken((doc) => (doc.plays[0].beats = Array.from({ length: 50_000 }, () => ({})))),
      'field-length',
    ],
    [
      'ten thousand players',
      () => broken((doc) => (doc.team.roster = Array.from({ length: 10_000 }, () => doc.team.roster[0]))),
      'field-length',
    ],
    ['NaN', () => '{"version": NaN}', 'json-number'],
    ['1e999', () => '{"version": 1e999}', 'json-number'],
    ['__proto__', () => '{"__proto__": {"format": "sliderule-playbook"}}', 'json-forbidden-name'],
    [
      'a prototype in a record',
      () => broken((doc) => (doc.plays[0].spots = {})).replace('"spots": {}', '"spots": {"constructor": [0, 1]}'),
      'json-forbidden-name',
    ],
    [
      'names of object methods',
      () => broken((doc) => (doc.opponents[0].schemes = { tostring: 1, valueof: 1 })),
      'scheme-unknown',
    ],
    ['a list', () => '[]', 'format-wrong'],
    ['a number', () => '7', 'format-wrong'],
    ['null', () => 'null', 'format-wrong'],
    [
      'a phrase of 100,000 letters',
      () => broken((doc) => (doc.plays[0].beats[0].do[0] = `TR pass ${'TL '.repeat(30_000)}`)),
      'field-length',
    ],
    [
      'a phrase of control characters',
      () => broken((doc) => (doc.plays[0].beats[0].do[0] = '\u0000\u0007\u202e')),
      'action-syntax',
    ],
  ])('%s: refused in words', (_, text, code) => {
    const { value, diagnostics } = check(text());
    expect(value).toBeUndefined();
    expect(diagnostics.map((each) => each.code)).toContain(code);
    expect(diagnostics.length).toBeLessThanOrEqual(301);
    for (const each of diagnostics) expect(each.message.length).toBeLessThan(1500);
  });

  test('more problems than can be listed are counted', () => {
    const text = broken((doc) => {
      doc.team.roster = Array.from({ length: 60 }, (_, i) => ({
        number: i,
        name: 'x',
        hand: 'up',
        a: 1,
        b: 2,
        c: 3,
        d: 4,
        e: 5,
        f: 6,
      }));
    });
    const { diagnostics } = check(text);
    expect(diagnostics.length).toBe(301);
    expect(diagnostics.at(-1)).toMatchObject({ code: 'too-many-problems', severity: 'error' });
    expect(diagnostics.at(-1)!.message).toMatch(/^At least \d+ more problems/);
  });

  test('more slips in the text than can be listed are counted too', () => {
    const { diagnostics } = check(`[${'1,,'.repeat(1000)}1]`);
    expect(diagnostics.length).toBe(301);
    expect(diagnostics.at(-1)!.code).toBe('too-many-problems');
  });

  test('a byte order mark and CRLF are read', () => {
    const text = `\ufeff${JSON.stringify(small(), null, 2).replaceAll('\n', '\r\n')}`;
    expect(check(text).value).toEqual(small());
  });
});
