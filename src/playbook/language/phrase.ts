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

/** What reading a phrase gave. */
export interface PhraseReading<T> {
  /** Absent when anything is wrong. */
  readonly value?: T;
  /**
   * What was most likely meant, when the phrase has the right build but wrong names or numbers: so that the rest of the play can be
   * checked as if it was written. A name that is like no other stands in it as `unknownName`.
   */
  readonly guess?: T;
  readonly faults: readonly PhraseFault[];
}

/** Stands for a name that cannot even be guessed. No spot and no beat can be called so. */
export const unknownName = '?';

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

  word(word: string, question?: string): void {
    if (!this.maybeWord(word)) this.stop(`"${word}"`, question);
  }

  /** A word, whatever it is. `what` says what was expected when there is none, `question` asks for it when the phrase ends. */
  anyWord(what: string, question?: string): Token {
    const token = this.peek();
    if (token?.kind !== 'word') return this.stop(what, question);
    this.next++;
    return token;
  }

  symbol(kind: 'comma' | 'plus'): void {
    if (this.peek()?.kind !== kind) this.stop(kind === 'comma' ? 'a comma' : '"+"');
    this.next++;
  }

  number(what: string, question?: string): { readonly value: number; readonly offset: number } {
    const token = this.peek();
    if (token?.kind !== 'number') return this.stop(what, question);
    this.next++;
    const value = Number(token.text);
    // "-0" and "0" are the same place.
    return { value: value === 0 ? 0 : value, offset: token.offset };
  }

  end(): void {
    const token = this.peek();
    if (token === undefined) return;
    const rest = this.text.slice(token.offset).trimEnd();
    this.fault(
      this.syntaxCode,
      token.offset,
      `In "${this.text}", "${rest}" is too much. Write it like ${this.example}.`,
    );
    throw new PhraseStop();
  }

  fault(code: DiagnosticCode, offset: number, message: string): void {
    this.faults.push({ code, offset, message });
  }

  /** Say what should stand here and give the phrase up. `question` asks for it in the trade's words when the phrase just ends. */
  stop(expected: string, question?: string): never {
    const token = this.peek();
    this.fault(
      this.syntaxCode,
      token?.offset ?? this.text.length,
      `${this.whatIsWrong(token, expected, question)} Write it like ${this.example}.`,
    );
    throw new PhraseStop();
  }

  /** Say what should stand here, and go on as if it did. */
  slip(expected: string): void {
    const token = this.peek();
    const message = `${this.whatIsWrong(token, expected, undefined)} Write it like ${this.example}.`;
    this.fault(this.syntaxCode, token?.offset ?? this.text.length, message);
  }

  private whatIsWrong(token: Token | undefined, expected: string, question: string | undefined): string {
    if (token !== undefined) return `In "${this.text}", ${expected} should stand where "${token.text}" stands.`;
    if (this.text.trim() === '') return `Nothing is written here; ${expected} should come first.`;
    return question === undefined
      ? `"${this.text}" ends too soon: ${expected} should follow.`
      : `"${this.text}": ${question}`;
  }
}

/** Runs a reading; the value is absent when the phrase had any fault. */
export function readPhrase<T>(reader: PhraseReader, read: () => T): PhraseReading<T> {
  try {
    const value = read();
    reader.end();
    return reader.faults.length === 0 ? { value, faults: [] } : { guess: value, faults: reader.faults };
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
