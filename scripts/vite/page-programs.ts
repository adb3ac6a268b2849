import { readFileSync } from 'node:fs';
import type { Plugin } from 'vite';

/** A program that goes into pages which leave the workbench, built as the command line has it. */
export interface PageProgram {
  readonly entry: string;
  /** Where it is built to, both relative to the repository. */
  readonly outfile: string;
}

type Bundle = (entry: string, outfile: string, kind: { readonly inPage: true }) => Promise<boolean>;

/**
 * Gives the workbench the texts of programs that it puts into pages: each name stands for one, wherever it is used, and only the part of the build that uses it holds
 * it. The same bytes as `dist/` has for the command line, so that page and shell make the same page.
 */
export function pagePrograms(programs: Readonly<Record<string, PageProgram>>): Plugin {
  return {
    name: 'page-programs',
    async config() {
      const root = new URL('../../', import.meta.url);
      const { bundle } = (await import(new URL('scripts/bundle.mjs', root).href)) as { readonly bundle: Bundle };
      const texts = Object.entries(programs).map(async ([name, { entry, outfile }]) => {
        if (!(await bundle(entry, outfile, { inPage: true }))) throw new Error(`missing program of a page: ${entry}`);
        return [name, JSON.stringify(readFileSync(new URL(outfile, root), 'utf8'))] as const;
      });
      return { define: Object.fromEntries(await Promise.all(texts)) };
    },
  };
}
