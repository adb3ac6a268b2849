import type { DiagnosticCode } from '../diagnostic-codes.ts';

/** Something wrong in a phrase, at an offset counted from 0 inside it. */
export interface PhraseFault {
  readonly code: DiagnosticCode;
  readonly offset: number;
  readonly message: string;
}

export interface Token {
  readonly kind: 'word' | 'number' | 'comma' | 'plus' | 'other';
  readonly text: string;
  readonly offset: number;
}

/** Thrown by a `PhraseReader` when the phrase cannot be read on; caught by `readPhrase`. */
class PhraseStop extends Error {}

/**
 * Reads one phrase of the play language word by word and collects what is wrong with it.
 * Structure faults stop the reading (what follows would be guesswork); a wrong name does not.
 */
export class PhraseReader {
  readonly faults: PhraseFault[] = [];
  private readonly tokens: readonly Token[];
  private next = 0;

  constructor(
    private readonly text: string,
    private readonly syntaxCode: DiagnosticCode,
    /** How such a phrase is written, shown with every structure fault. */
    private readonly example: string,
  ) {
    this.tokens = tokenize(text);
  }

  peek(): Token | undefined {
    return this.tokens[this.next];
  }

  /** Step over the next token when it is this word. */
  maybeWord(word: string): boolean {
    const token = this.peek();
    if (token?.kind !== 'word' || token.text !== word) return false;
    this.next++;
    return true;
  }

  word(word: string): void {
    if (!this.maybeWord(word)) this.stop(`"${word}"`);
  }

  /** A word, whatever it is. `what` says what was expected when there is none. */
  anyWord(what: string): Token {
    const token = this.peek();
    if (token?.kind !== 'word') return this.stop(what);
    this.next++;
    return token;
  }

  symbol(kind: 'comma' | 'plus'): void {
    if (this.peek()?.kind !== kind) this.stop(kind === 'comma' ? 'a comma' : '"+"');
    this.next++;
  }

  number(what: string): { readonly value: number; readonly offset: number } {
    const token = this.peek();
    if (token?.kind !== 'number') return this.stop(what);
    this.next++;
    const value = Number(token.text);
    // "-0" and "0" are the same place.
    return { value: value === 0 ? 0 : value, offset: token.offset };
  }

  end(): void {
    if (this.peek() !== undefined) this.stop('nothing more');
  }

  fault(code: DiagnosticCode, offset: number, message: string): void {
    this.faults.push({ code, offset, message });
  }

  /** Say what should stand here and give the phrase up. */
  stop(expected: string): never {
    const token = this.peek();
    const found = token === undefined ? 'the phrase ends' : `"${token.text}" stands there`;
    const offset = token?.offset ?? this.text.length;
    this.fault(
      this.syntaxCode,
      offset,
      `In "${this.text}", ${expected} should stand at column ${offset + 1}, but ${found}. Write it like ${this.example}.`,
    );
    throw new PhraseStop();
  }
}

/** Runs a reading; the value is absent when the phrase had any fault. */
export function readPhrase<T>(
  reader: PhraseReader,
  read: () => T,
): { readonly value?: T; readonly faults: readonly PhraseFault[] } {
  try {
    const value = read();
    reader.end();
    return reader.faults.length === 0 ? { value, faults: [] } : { faults: reader.faults };
  } catch (thrown) {
    if (thrown instanceof PhraseStop) return { faults: reader.faults };
    throw thrown;
  }
}

function tokenize(text: string): readonly Token[] {
  const tokens: Token[] = [];
  const pattern = /([A-Za-z][A-Za-z0-9-]*)|(-?\d+(?:\.\d+)?(?![A-Za-z0-9.]))|(,)|(\+)|(\S[^\s,+]*)/g;
  for (const match of text.matchAll(pattern)) {
    const kind =
      match[1] !== undefined
        ? 'word'
        : match[2] !== undefined
          ? 'number'
          : match[3] !== undefined
            ? 'comma'
            : match[4] !== undefined
              ? 'plus'
              : 'other';
    tokens.push({ kind, text: match[0], offset: match.index });
  }
  return tokens;
}
