import { dirname, join } from 'node:path';
import type { Plugin } from 'vite';

/** `new URL('./some-thread.ts', import.meta.url)`, as a thread's file is named where it is begun. */
const threadFile = /new URL\(\s*'(\.\/[\w-]+\.ts)',\s*import\.meta\.url\s*\)/g;

/**
 * Builds a page's threads together with the page, so that what both need (the playbook's language, its schema, half of the engine) is one
 * file that is loaded once. Vite by itself builds each thread apart, with a copy of all that it needs.
 */
export function threadsInOneBuild(): Plugin {
  return {
    name: 'threads-in-one-build',
    apply: 'build',
    // Before Vite's own treatment of threads sees them.
    enforce: 'pre',
    transform(code, id) {
      if (!code.includes('new Worker(') || !id.endsWith('.ts')) return null;
      return code.replaceAll(threadFile, (_, file: string) => {
        const chunk = this.emitFile({ type: 'chunk', id: join(dirname(id), file) });
        return `import.meta.ROLLUP_FILE_URL_${chunk}`;
      });
    },
  };
}
