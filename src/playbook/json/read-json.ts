import type { DiagnosticCode } from '../diagnostic-codes.ts';
import { limits } from '../limits.ts';
import type { JsonNode } from './json-node.ts';
import { escapes, foreignQuotes } from './text-marks.ts';

/** A problem in the text itself, at an offset. */
export interface JsonProblem {
  readonly code: DiagnosticCode;
  readonly offset: number;
  readonly message: string;
}

export interface JsonReading {
  /** Absent when the text could not be read to its end. */
  readonly value?: unknown;
  /** Places of the values; absent with `value`. */
  readonly root?: JsonNode;
  readonly problems: readonly JsonProblem[];
}

/**
 * Reads JSON, remembers where each value stands, and says in plain words what is wrong.
 *
 * Small slips (a trailing comma, a comment, curly quotes, a missing comma) are reported and read over, so that one
 * reading finds them all; other slips stop it. Never throws, and depth and count are capped while reading, so that
 * a hostile text can neither overflow the stack nor fill the memory. Names like __proto__ are refused, never set.
 */
export function readJson(text: string): JsonReading {
  const reader = new JsonReader(text);
  try {
    const { value, node } = reader.readDocument();
    return { value, root: node, problems: reader.problems };
  } catch (thrown) {
    if (thrown instanceof StopReading) return { problems: reader.problems };
    throw thrown;
  }
}

/** Thrown inside the reader after a problem that cannot be read over; never leaves this file. */
class StopReading extends Error {}

interface Read {
  readonly value: unknown;
  readonly node: JsonNode;
}

/** Names that mean something else to JavaScript: an object with one of them could be used to trick code that reads it. */
const forbiddenNames = new Set(['__proto__', 'constructor', 'prototype']);

/** The state of one reading: where it is and what it found. */
class JsonReader {
  readonly problems: JsonProblem[] = [];
  private at = 0;
  private depth = 0;
  private count = 0;

  constructor(private readonly text: string) {}

  readDocument(): Read {
    if (this.text.charCodeAt(0) === 0xfeff) this.at = 1;
    this.skipSpace();
    if (this.at >= this.text.length) this.stop('json-empty', this.at, 'The file is empty.');
    const read = this.readValue();
    this.skipSpace();
    if (this.at < this.text.length) {
      this.stop(
        'json-extra',
        this.at,
        `There is more text after the end of the document: ${this.show()}. Take it out, or look for a closing brace too many above it.`,
      );
    }
    return read;
  }

  private readValue(nameStart?: number): Read {
    if (++this.count > limits.values) {
      this.stop(
        'json-too-many-values',
        this.at,
        `The file holds more than ${limits.values} values. That is no playbook; split it into several.`,
      );
    }
    const start = this.at;
    const read = this.readBareValue();
    const node: JsonNode = { ...read.node, start, end: this.at, ...(nameStart !== undefined && { nameStart }) };
    return { value: read.value, node };
  }

  private readBareValue(): { value: unknown; node: Omit<JsonNode, 'start' | 'end'> } {
    const char = this.text[this.at];
    if (char === '{') return this.inside(() => this.readObject());
    if (char === '[') return this.inside(() => this.readList());
    if (char === '"' || (char !== undefined && Object.hasOwn(foreignQuotes, char)))
      return { value: this.readString(), node: {} };
    if (char !== undefined && /[-+.\d]/.test(char)) return { value: this.readNumber(), node: {} };
    if (char !== undefined && /[A-Za-z_$]/.test(char)) return { value: this.readWord(), node: {} };
    if (char === undefined) return this.stopAtEnd();
    return this.stop('json-syntax', this.at, `A value should stand here, not ${this.show()}.`);
  }

  private inside<T>(read: () => T): T {
    if (++this.depth > limits.depth) {
      this.stop(
        'json-too-deep',
        this.at,
        `Lists and objects lie more than ${limits.depth} deep in one another. A playbook needs 7.`,
      );
    }
    const result = read();
    this.depth--;
    return result;
  }

  private readObject(): { value: unknown; node: Omit<JsonNode, 'start' | 'end'> } {
    const opened = this.at;
    const value: Record<string, unknown> = {};
    const members = new Map<string, JsonNode>();
    this.at++;
    this.skipSpace();
    while (!this.closes('}', opened, members.size > 0)) {
      const nameStart = this.at;
      const name = this.readName();
      this.skipSpace();
      if (this.text[this.at] === ':') this.at++;
      else this.stop('json-syntax', this.at, `A colon should follow the name "${shorten(name)}", not ${this.show()}.`);
      this.skipSpace();
      const read = this.readValue(nameStart);
      if (this.mayKeep(name, nameStart, members)) {
        value[name] = read.value;
        members.set(name, read.node);
      }
      this.skipComma('}', opened);
    }
    return { value, node: { members } };
  }

  private mayKeep(name: string, nameStart: number, members: ReadonlyMap<string, JsonNode>): boolean {
    if (forbiddenNames.has(name)) {
      this.report(
        'json-forbidden-name',
        nameStart,
        `The name "${name}" is not allowed anywhere in a playbook. Take it out.`,
      );
      return false;
    }
    if (members.has(name)) {
      this.report(
        'json-name-twice',
        nameStart,
        `The name "${shorten(name)}" stands twice in the same object. Keep one of the two.`,
      );
      return false;
    }
    return true;
  }

  private readName(): string {
    const char = this.text[this.at];
    if (char === '"' || (char !== undefined && Object.hasOwn(foreignQuotes, char))) return this.readString();
    const word = /[A-Za-z_$][\w$-]*/y;
    word.lastIndex = this.at;
    const found = word.exec(this.text)?.[0];
    if (found === undefined)
      return this.stop('json-syntax', this.at, `A name in double quotes should stand here, not ${this.show()}.`);
    this.report('json-quotes', this.at, `Put the name ${shorten(found)} in double quotes: "${shorten(found)}".`);
    this.at += found.length;
    return found;
  }

  private readList(): { value: unknown; node: Omit<JsonNode, 'start' | 'end'> } {
    const opened = this.at;
    const value: unknown[] = [];
    const items: JsonNode[] = [];
    this.at++;
    this.skipSpace();
    while (!this.closes(']', opened, items.length > 0)) {
      const read = this.readValue();
      value.push(read.value);
      items.push(read.node);
      this.skipComma(']', opened);
    }
    return { value, node: { items } };
  }

  /** Whether the list or object ends here; steps over its end. */
  private closes(closer: string, opened: number, begun: boolean): boolean {
    const char = this.text[this.at];
    if (char === closer) {
      this.at++;
      return true;
    }
    if (char === ',') {
      // A comma before the first value or after another comma: one too many.
      this.report(
        'json-extra-comma',
        this.at,
        begun ? 'There are two commas in a row. Take one out.' : 'A comma stands before the first value. Take it out.',
      );
      this.at++;
      this.skipSpace();
      return this.closes(closer, opened, begun);
    }
    if (char === undefined) return this.stopUnclosed(opened);
    return false;
  }

  private skipComma(closer: string, opened: number): void {
    const before = this.at;
    this.skipSpace();
    const char = this.text[this.at];
    if (char === ',') {
      const comma = this.at++;
      this.skipSpace();
      if (this.text[this.at] === closer) {
        this.report(
          'json-extra-comma',
          comma,
          `Take out the comma before the closing ${closer === '}' ? 'brace' : 'bracket'}.`,
        );
      }
      return;
    }
    if (char === closer) return;
    if (char === undefined) this.stopUnclosed(opened);
    if (/["'\u201c\u201d{[\w-]/.test(char!)) {
      // The slip is where the comma belongs, which is mostly a line above what shows that it is missing.
      this.report('json-missing-comma', before, `A comma is missing here, before ${this.showValue()}.`);
      return;
    }
    this.stop(
      'json-syntax',
      this.at,
      `A comma or a closing ${closer === '}' ? 'brace }' : 'bracket ]'} should stand here, not ${this.show()}.`,
    );
  }

  private readString(): string {
    const start = this.at;
    const opener = this.text[this.at]!;
    const closer = opener === '"' ? '"' : foreignQuotes[opener]!;
    if (opener !== '"') {
      this.report(
        'json-quotes',
        start,
        `Use straight double quotes (") around text, not ${opener}. Word processors change them; a plain text editor does not.`,
      );
    }
    this.at++;
    let result = '';
    for (;;) {
      const char = this.text[this.at];
      if (char === undefined || char === '\n' || char === '\r') {
        return this.stop('json-string', start, 'This text has no closing double quote on its line.');
      }
      this.at++;
      if (char === closer) return result;
      if (char === '\\') result += this.readEscape();
      else {
        if (char < ' ')
          this.report(
            'json-string',
            this.at - 1,
            'A tab or another control character stands inside a text. Replace it by a space.',
          );
        result += char;
      }
    }
  }

  private readEscape(): string {
    const char = this.text[this.at];
    if (char !== undefined && Object.hasOwn(escapes, char)) {
      this.at++;
      return escapes[char]!;
    }
    const hex = /u([0-9a-fA-F]{4})/y;
    hex.lastIndex = this.at;
    const code = hex.exec(this.text)?.[1];
    if (code !== undefined) {
      this.at += 5;
      return String.fromCharCode(Number.parseInt(code, 16));
    }
    this.report('json-string', this.at - 1, 'A backslash in a text must be doubled: \\\\.');
    return '\\';
  }

  private readNumber(): number {
    const start = this.at;
    const token = /[-+.\w]+/y;
    token.lastIndex = start;
    const written = token.exec(this.text)![0];
    this.at += written.length;
    if (/^-?(0|[1-9]\d*)(\.\d+)?([eE][-+]?\d+)?$/.test(written)) {
      const value = Number(written);
      if (Number.isFinite(value)) return value === 0 ? 0 : value;
      this.report('json-number', start, `The number ${shorten(written)} is too large.`);
      return 0;
    }
    this.report(
      'json-number',
      start,
      `${shorten(written)} is not a number as JSON writes it. Write it like 7, -2.5 or 0.5: no plus sign, no leading zeros, a digit on both sides of the point.`,
    );
    return 0;
  }

  private readWord(): unknown {
    const start = this.at;
    const token = /[A-Za-z_$][\w$]*/y;
    token.lastIndex = start;
    const word = token.exec(this.text)![0];
    this.at += word.length;
    if (word === 'true') return true;
    if (word === 'false') return false;
    if (word === 'null') return null;
    if (word === 'NaN' || word === 'Infinity') {
      this.report('json-number', start, `${word} is not a number that a playbook can hold. Write the number itself.`);
      return 0;
    }
    this.report('json-quotes', start, `Put the text ${shorten(word)} in double quotes: "${shorten(word)}".`);
    return word;
  }

  private skipSpace(): void {
    for (;;) {
      const char = this.text[this.at];
      if (char === ' ' || char === '\n' || char === '\r' || char === '\t') this.at++;
      else if (char === '\u00a0' || char === '\ufeff') {
        this.report(
          'json-syntax',
          this.at,
          'An invisible character that is not a plain space stands here. Replace it by a space.',
        );
        this.at++;
      } else if (char === '#' || (char === '/' && /[/*]/.test(this.text[this.at + 1] ?? ''))) this.skipComment();
      else return;
    }
  }

  private skipComment(): void {
    const start = this.at;
    const isBlock = this.text[start + 1] === '*';
    const close = isBlock ? this.text.indexOf('*/', start + 2) : -1;
    if (isBlock && close < 0) this.stop('json-comment', start, 'This comment has no end, and JSON has no comments.');
    this.report('json-comment', start, 'JSON has no comments. Put remarks in "notes", or take them out.');
    if (isBlock) {
      this.at = close + 2;
      return;
    }
    while (this.at < this.text.length && this.text[this.at] !== '\n' && this.text[this.at] !== '\r') this.at++;
  }

  private report(code: DiagnosticCode, offset: number, message: string): void {
    this.problems.push({ code, offset, message });
    // Ten thousand trailing commas are one problem, and the list of them would be an attack of its own.
    // One over the cap tells the report that there were more.
    if (this.problems.length > limits.problems) throw new StopReading();
  }

  private stop(code: DiagnosticCode, offset: number, message: string): never {
    this.problems.push({ code, offset, message });
    throw new StopReading();
  }

  private stopUnclosed(opened: number): never {
    const what = this.text[opened] === '{' ? 'brace {' : 'bracket [';
    return this.stop('json-unclosed', opened, `The ${what} that opens here is never closed.`);
  }

  private stopAtEnd(): never {
    return this.stop('json-unclosed', this.text.length, 'The file ends in the middle: a value is missing.');
  }

  /** The text, list, object or word that begins here, for a message. */
  private showValue(): string {
    const word = /["'\u201c\u201d]?[\w$ -]*["'\u201c\u201d]?/y;
    word.lastIndex = this.at;
    const found = word.exec(this.text)?.[0] ?? '';
    if (/^["']/.test(found)) return shorten(found);
    return found === '' ? this.show() : `"${shorten(found.trim())}"`;
  }

  /** What stands here, for a message. */
  private show(): string {
    const char = this.text[this.at];
    if (char === undefined) return 'the end of the file';
    const word = /[\w$]+/y;
    word.lastIndex = this.at;
    return `"${shorten(word.exec(this.text)?.[0] ?? String.fromCodePoint(this.text.codePointAt(this.at)!))}"`;
  }
}

const shown = 30;

function shorten(text: string): string {
  return text.length <= shown ? text : `${text.slice(0, shown)}...`;
}
