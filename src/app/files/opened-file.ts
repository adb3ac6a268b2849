import { type Diagnostic, hasErrors, limits, type ParseResult, type Playbook } from '../../playbook/index.ts';

/** What is wrong with a file, doubtful or worth knowing, and where. */
export type FileProblem = Pick<Diagnostic, 'severity' | 'where' | 'message' | 'line' | 'column' | 'paste'>;

/** What a chosen file turned out to be. Nothing of it is in the playbook yet. */
export type OpenedFile = {
  readonly name: string;
  readonly problems: readonly FileProblem[];
  readonly moreMayShow: boolean;
} & (
  | { readonly kind: 'broken' }
  /** It has errors, and every part is there: it can be opened as something that somebody is still writing. */
  | { readonly kind: 'unfinished'; readonly playbook: Playbook }
  | { readonly kind: 'good'; readonly playbook: Playbook }
);

/** A file as far as it is looked at. */
export type ReadableFile = Pick<File, 'name' | 'size' | 'text'>;

/** Reads a file that a coach chose, with `parse` for its text. Never rejects: what is wrong with it are its problems. */
export async function openFile(file: ReadableFile, parse: (text: string) => Promise<ParseResult>): Promise<OpenedFile> {
  // A film of two gigabytes is refused before it is read.
  if (file.size > limits.bytes) return broken(file.name, tooLarge);
  try {
    return sortFile(file.name, await parse(await file.text()));
  } catch {
    return broken(file.name, unreadable);
  }
}

function sortFile(name: string, { value, diagnostics: problems, moreMayShow }: ParseResult): OpenedFile {
  const seen = { name, problems, moreMayShow };
  if (value === undefined) return { ...seen, kind: 'broken' };
  return { ...seen, kind: hasErrors(problems) ? 'unfinished' : 'good', playbook: value };
}

function broken(name: string, problem: FileProblem): OpenedFile {
  return { kind: 'broken', name, problems: [problem], moreMayShow: false };
}

/** A problem of the whole file, which has no place in it. */
const tooLarge: FileProblem = {
  severity: 'error',
  where: '',
  message: `The file is larger than ${limits.bytes / 1_000_000} MB. No playbook is; look whether it is the right file.`,
};

const unreadable: FileProblem = {
  severity: 'error',
  where: '',
  message: 'The device would not let this page read the file. It may have been moved, or be a folder: choose it again.',
};
