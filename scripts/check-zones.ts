// Zones by dependency-cruiser, plus the proof that it read every file: it reports "no violations" just as
// calmly when it could parse nothing (seen with TypeScript 7: 0 modules cruised, exit 0).
import { existsSync, readdirSync } from 'node:fs';
import { createRequire } from 'node:module';
import { resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { cruise } from 'dependency-cruiser';

const folders = ['src', 'scenarios', 'bench', 'scripts', 'test'];

export interface ZoneFaults {
  /** Broken rules, as `rule: from -> to`. */
  readonly violations: readonly string[];
  /** TypeScript files that dependency-cruiser did not read, so that no rule was tried on them. */
  readonly unread: readonly string[];
  readonly moduleCount: number;
}

/** Tries the rules of .dependency-cruiser.cjs on everything below `baseDir`. */
export async function findZoneFaults(baseDir: string): Promise<ZoneFaults> {
  const present = folders.filter((folder) => existsSync(`${baseDir}/${folder}`));
  const { forbidden, options } = createRequire(import.meta.url)(resolve('.dependency-cruiser.cjs'));
  const { output } = await cruise(present, {
    ...options,
    baseDir,
    exclude: { path: '^test/guards/bad/' },
    ruleSet: { forbidden },
    validate: true,
  });
  if (typeof output === 'string') throw new TypeError(`invalid cruise result: ${output}`);
  return {
    violations: output.summary.violations.map(({ rule, from, to }) => `${rule.name}: ${from} -> ${to}`),
    unread: unreadFiles(
      output.modules.map((module) => module.source),
      present.flatMap((folder) => typescriptFiles(baseDir, folder)),
    ),
    moduleCount: output.modules.length,
  };
}

/** The files that the cruise missed: all of them when it cruised nothing, and a complaint when there are no files. */
export function unreadFiles(cruised: readonly string[], files: readonly string[]): readonly string[] {
  if (files.length === 0) return ['(no TypeScript file found at all)'];
  const seen = new Set(cruised);
  return files.filter((file) => !seen.has(file));
}

function typescriptFiles(baseDir: string, folder: string): readonly string[] {
  return readdirSync(`${baseDir}/${folder}`, { recursive: true, encoding: 'utf8' })
    .map((path) => `${folder}/${path}`.replaceAll('\\', '/'))
    .filter((path) => /[.]tsx?$/.test(path) && !path.startsWith('test/guards/bad/'));
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) {
  const { violations, unread, moduleCount } = await findZoneFaults(resolve('.'));
  for (const violation of violations) console.error(violation);
  for (const file of unread) console.error(`not read by dependency-cruiser: ${file}`);
  console.log(`${moduleCount} modules cruised, ${violations.length} violations, ${unread.length} files unread`);
  process.exitCode = violations.length + unread.length > 0 ? 1 : 0;
}
