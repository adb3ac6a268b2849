import { describe, expect, test } from 'vitest';
import { nodeAt, pathText } from './json-node.ts';
import { createLineColumns } from './line-column.ts';
import { readJson } from './read-json.ts';

describe('readJson', () => {
  // [text, code, what stands at the offset, part of the sentence]
  test.each([
    ['', 'json-empty', '', 'empty'],
    ['  \n ', 'json-empty', '', 'empty'],
    ['{"a": 1,}', 'json-extra-comma', ',}', 'before the closing brace'],
    ['[1, 2, ]', 'json-extra-comma', ', ]', 'before the closing bracket'],
    ['[1,, 2]', 'json-extra-comma', ', 2', 'two commas'],
    ['[,1]', 'json-extra-comma', ',1', 'before the first value'],
    ['[1 2]', 'json-missing-comma', ' 2', 'A comma is missing here, before "2".'],
    ['{"a": 1 "b": 2}', 'json-missing-comma', ' "b"', 'A comma is missing here, before "b".'],
    ['{"a": 1\n  "b c": 2}', 'json-missing-comma', '\n', 'A comma is missing here, before "b c".'],
    ['[1 {"a": 1}]', 'json-missing-comma', ' {', 'A comma is missing here, before "{".'],
    ['// x\n{}', 'json-comment', '// x', '"notes"'],
    ['{} # x', 'json-comment', '# x', 'no comments'],
    ['{/* x */}', 'json-comment', '/*', 'no comments'],
    ['{/* x }', 'json-comment', '/*', 'no end'],
    ["{'a': 1}", 'json-quotes', "'a'", 'straight double quotes'],
    ['{\u201ca\u201d: 1}', 'json-quotes', '\u201ca', 'straight double quotes'],
    ['{a: 1}', 'json-quotes', 'a:', '"a"'],
    ['{"a": right}', 'json-quotes', 'right', '"right"'],
    ['{"a": NaN}', 'json-number', 'NaN', 'NaN is not a number'],
    ['{"a": Infinity}', 'json-number', 'Infinity', 'Infinity is not a number'],
    ['{"a": -Infinity}', 'json-number', '-Inf', 'not a number as JSON'],
    ['{"a": 1e999}', 'json-number', '1e999', 'too large'],
    ['{"a": 01}', 'json-number', '01', 'leading zeros'],
    ['{"a": +1}', 'json-number', '+1', 'plus sign'],
    ['{"a": .5}', 'json-number', '.5', 'both sides'],
    ['{"a": 1.}', 'json-number', '1.', 'both sides'],
    ['{"a": 0x1f}', 'json-number', '0x1f', 'not a number as JSON'],
    ['{"a": "x}', 'json-string', '"x}', 'no closing double quote'],
    ['{"a": "x\ty"}', 'json-string', '\ty', 'control character'],
    ['{"a": "\\q"}', 'json-string', '\\q', 'doubled'],
    ['{"a": "\\u12"}', 'json-string', '\\u12', 'doubled'],
    ['{"a": 1', 'json-unclosed', '{', 'never closed'],
    ['[1, [2, 3]', 'json-unclosed', '[1', 'never closed'],
    ['{"a":', 'json-unclosed', '', 'ends in the middle'],
    ['{"a" 1}', 'json-syntax', '1}', 'colon'],
    ['{"a": }', 'json-syntax', '}', 'value should stand here'],
    ['{1: 2}', 'json-syntax', '1:', 'name in double quotes'],
    ['[1; 2]', 'json-syntax', '; 2', 'comma or a closing bracket'],
    ['[1)', 'json-syntax', ')', 'comma or a closing bracket'],
    ['{"a":\u00a01}', 'json-syntax', '\u00a01', 'invisible'],
    ['{} {}', 'json-extra', '{}', 'after the end'],
    ['{"a": 1, "a": 2}', 'json-name-twice', '"a": 2', 'twice'],
    ['{"__proto__": {"x": 1}}', 'json-forbidden-name', '"__proto__"', 'not allowed'],
    ['{"a": {"constructor": 1}}', 'json-forbidden-name', '"constructor"', 'not allowed'],
    ['{"\\u005f_proto__": 1}', 'json-forbidden-name', '"\\u005f', 'not allowed'],
  ])('%j gives %s', (text, code, stands, says) => {
    const { problems } = readJson(text);
    expect(problems.map((problem) => problem.code)).toEqual([code]);
    expect(problems[0]!.message).toContain(says);
    expect(text.slice(problems[0]!.offset).startsWith(stands)).toBe(true);
  });

  test('finds all small slips in one reading and still gives the value', () => {
    const { value, problems } = readJson(
      '{\n  // the wing\n  hand: \u2018left\u2019,\n  "places": [1, 2,],\n  "n": 01\n}',
    );
    expect(problems.map((problem) => problem.code)).toEqual([
      'json-comment',
      'json-quotes',
      'json-quotes',
      'json-extra-comma',
      'json-number',
    ]);
    expect(value).toEqual({ hand: 'left', places: [1, 2], n: 0 });
  });

  test('sets no prototype and keeps none of the forbidden names', () => {
    const { value } = readJson('{"__proto__": {"admin": true}, "a": {"constructor": 1, "b": 2}}');
    expect(Object.getPrototypeOf(value)).toBe(Object.prototype);
    expect((value as { admin?: boolean }).admin).toBeUndefined();
    expect(value).toEqual({ a: { b: 2 } });
  });

  test('knows where each value stands', () => {
    const text = '{"plays": [{"id": "x"}, {"id": "y"}]}';
    const { root } = readJson(text);
    const node = nodeAt(root!, ['plays', 1, 'id']);
    expect(text.slice(node.start, node.end)).toBe('"y"');
    expect(text.slice(node.nameStart)).toMatch(/^"id": "y"/);
    // A path that leaves the document stops at the last value on the way.
    expect(nodeAt(root!, ['plays', 1, 'set'])).toBe(nodeAt(root!, ['plays', 1]));
  });

  test('a byte order mark and CRLF are no problem', () => {
    expect(readJson('\ufeff{\r\n"a": 1\r\n}\r\n')).toMatchObject({ value: { a: 1 }, problems: [] });
  });

  test.each([
    ['lists', '['.repeat(10_000)],
    ['objects', '{"a":'.repeat(10_000)],
    ['closed lists', `${'['.repeat(10_000)}${']'.repeat(10_000)}`],
    ['a million lists', '['.repeat(1_000_000)],
  ])('refuses %s in one another without overflowing the stack', (_, text) => {
    expect(readJson(text).problems.map((problem) => problem.code)).toEqual(['json-too-deep']);
  });

  test('refuses a million values', () => {
    expect(readJson(`[${'1,'.repeat(1_000_000)}1]`).problems.map((problem) => problem.code)).toEqual([
      'json-too-many-values',
    ]);
  });

  test('stops listing after some hundred slips', () => {
    expect(readJson(`[${'1,,'.repeat(100_000)}1]`).problems.length).toBe(301);
  });
});

describe('pathText', () => {
  test.each([
    [[], '(file)'],
    [['plays', 0, 'beats', 2, 'do', 1], 'plays[0].beats[2].do[1]'],
    [['settings', 'rules', 'penalties.goalReleases'], 'settings.rules["penalties.goalReleases"]'],
    [['schemes', 1, 'men', 'tr'], 'schemes[1].men.tr'],
  ])('%j is %s', (path, text) => {
    expect(pathText(path)).toBe(text);
  });
});

describe('createLineColumns', () => {
  test.each([
    ['abc', 0, 1, 1],
    ['abc', 2, 1, 3],
    ['a\nb', 2, 2, 1],
    ['a\r\nbc', 4, 2, 2],
    ['a\rb', 2, 2, 1],
    ['\n\n\nx', 3, 4, 1],
    ['\ufeffab', 1, 1, 1],
    ['\ufeffa\nb', 3, 2, 1],
  ])('in %j offset %i is line %i column %i', (text, offset, line, column) => {
    expect(createLineColumns(text).at(offset)).toEqual({ line, column });
  });
});
