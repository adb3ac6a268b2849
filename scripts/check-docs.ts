// Checks every Markdown page: links, anchors, commands, JSON and printed results. `--write` rewrites the results.
import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { build } from 'esbuild';

/** What a page may name. `commands` is undefined while there is no command line to ask. */
export interface KnownNames {
  readonly scripts: ReadonlySet<string>;
  readonly commands: ReadonlySet<string> | undefined;
}

interface Fence {
  /** The words after the opening backticks: `ts run`, `json playbook`, `text`. */
  readonly info: string;
  readonly body: string;
  /** Where the body starts in the page. */
  readonly start: number;
}

/** The faults of one page, each a sentence. With `write`, printed results that differ are corrected instead. */
export async function findPageFaults(path: string, known: KnownNames, write = false): Promise<readonly string[]> {
  const page = readFileSync(path, 'utf8');
  const fences = readFences(page);
  return [
    ...linkFaults(path, page),
    ...commandFaults(page, known),
    ...fences.filter(({ info }) => info === 'json playbook').flatMap(playbookFaults),
    ...(await resultFaults(path, page, fences, write)),
  ].map((fault) => `${path}: ${fault}`);
}

function readFences(page: string): readonly Fence[] {
  return [...page.matchAll(/^```(.*)\n([\s\S]*?)^```$/gm)].map((match) => ({
    info: (match[1] ?? '').trim(),
    body: match[2] ?? '',
    start: match.index + match[0].indexOf('\n') + 1,
  }));
}

function linkFaults(path: string, page: string): readonly string[] {
  const prose = withoutFences(page).replace(/`[^`\n]*`/g, '');
  return [...prose.matchAll(/\]\(([^)\s]+)[^)]*\)/g)].flatMap(([, link = '']) => {
    // Addresses outside are not asked: the check gives the same answer without a network.
    if (/^[a-z]+:/.test(link)) return [];
    const [file = '', anchor] = link.split('#');
    const target = file === '' ? path : join(dirname(path), decodeURI(file));
    if (!existsSync(target)) return [`broken link: ${link}`];
    if (anchor === undefined || !target.endsWith('.md')) return [];
    return anchorsOf(readFileSync(target, 'utf8')).has(anchor) ? [] : [`broken anchor: ${link}`];
  });
}

/** Anchors as GitHub makes them: lower case, punctuation dropped, spaces to dashes, repeats numbered. */
function anchorsOf(page: string): ReadonlySet<string> {
  const anchors = new Set<string>();
  for (const [, heading = ''] of withoutFences(page).matchAll(/^#+ +(.*)$/gm)) {
    const text = heading.replace(/\[([^\]]*)\]\([^)]*\)/g, '$1').trim();
    const slug = text
      .toLowerCase()
      .replace(/[^\p{L}\p{N}\s_-]/gu, '')
      .replace(/\s/g, '-');
    let anchor = slug;
    for (let repeat = 1; anchors.has(anchor); repeat++) anchor = `${slug}-${repeat}`;
    anchors.add(anchor);
  }
  return anchors;
}

function commandFaults(page: string, { scripts, commands }: KnownNames): readonly string[] {
  const fenced = readFences(page).filter(({ info }) => !info.startsWith('ts'));
  const spans = [...withoutFences(page).matchAll(/`([^`\n]+)`/g)].map((match) => match[1]);
  const code = [...fenced.map(({ body }) => body), ...spans].join('\n');
  const named = (pattern: RegExp) => [...code.matchAll(pattern)].map((match) => match[1] ?? '');
  return [
    ...named(/npm run ([\w:-]+)/g)
      .filter((name) => !scripts.has(name))
      .map((name) => `unknown npm script: ${name}`),
    ...named(/(?:^|[\s/])sliderule(?:\.js)? +([a-z][a-z-]*)/gm)
      .filter((name) => commands !== undefined && !commands.has(name))
      .map((name) => `unknown sliderule command: ${name}`),
  ];
}

// The seam for the playbook parser: its diagnostics join the list here.
function playbookFaults({ body }: Fence): readonly string[] {
  try {
    JSON.parse(body);
    return [];
  } catch (error) {
    return [`invalid playbook: ${error instanceof Error ? error.message : error}`];
  }
}

async function resultFaults(path: string, page: string, fences: readonly Fence[], write: boolean) {
  const faults: string[] = [];
  let corrected = page;
  // Backwards, so that a rewritten result leaves the places of the earlier ones as they were.
  for (const [index, fence] of [...fences.entries()].reverse()) {
    if (fence.info !== 'ts run') continue;
    const run = await runCode(path, fence.body, index);
    if (run.status !== 0) {
      faults.unshift(`code fails: ${firstLine(fence.body)}\n${run.stderr}`);
      continue;
    }
    const shown = fences[index + 1];
    if (shown?.info !== 'text' || shown.body.trim() === run.stdout.trim()) continue;
    if (write) {
      corrected = `${corrected.slice(0, shown.start)}${run.stdout.trimEnd()}\n${corrected.slice(shown.start + shown.body.length)}`;
    } else {
      faults.unshift(`prints something else: ${firstLine(fence.body)}\n${run.stdout.trimEnd()}`);
    }
  }
  if (corrected !== page) writeFileSync(path, corrected);
  return faults;
}

/** Runs the code as if it lay beside the page: its imports are relative to the page's folder. */
async function runCode(path: string, code: string, index: number) {
  const outfile = `dist/docs/${path.replaceAll(/[\\/]/g, '-')}-${index}.mjs`;
  mkdirSync(dirname(outfile), { recursive: true });
  try {
    await build({
      stdin: { contents: code, resolveDir: resolve(dirname(path)), sourcefile: path, loader: 'ts' },
      outfile,
      bundle: true,
      platform: 'node',
      format: 'esm',
      packages: 'external',
      logLevel: 'silent',
    });
  } catch (error) {
    return { status: 1, stdout: '', stderr: String(error) };
  }
  return spawnSync(process.execPath, [outfile], { encoding: 'utf8' });
}

function withoutFences(page: string): string {
  return page.replace(/^```.*\n[\s\S]*?^```$/gm, '');
}

function firstLine(text: string): string {
  return text.trim().split('\n')[0] ?? '';
}

function findPages(folder: string): readonly string[] {
  return readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    const path = join(folder, entry.name);
    if (entry.isFile()) return entry.name.endsWith('.md') ? [path] : [];
    const skipped = ['node_modules', '.git', 'dist', 'artifacts', 'coverage'].includes(entry.name);
    return skipped || path === join('test', 'guards', 'bad') ? [] : findPages(path);
  });
}

function readKnownNames(): KnownNames {
  const scripts = new Set(Object.keys(JSON.parse(readFileSync('package.json', 'utf8')).scripts));
  if (!existsSync('src/cli/main.ts')) {
    console.log('sliderule commands are not checked: src/cli/main.ts does not exist yet');
    return { scripts, commands: undefined };
  }
  const help = spawnSync(process.execPath, ['dist/sliderule.js', '--help'], { encoding: 'utf8' });
  const list = help.stdout?.split(/^Commands:$/m)[1] ?? '';
  return { scripts, commands: new Set([...list.matchAll(/^ {2}([a-z][a-z-]*)/gm)].map((match) => match[1] ?? '')) };
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) {
  const known = readKnownNames();
  const pages = findPages('.');
  const faults: string[] = [];
  for (const page of pages) faults.push(...(await findPageFaults(page, known, process.argv.includes('--write'))));
  if (pages.length === 0) faults.push('no page found: the check would pass by looking nowhere');
  for (const fault of faults) console.error(fault);
  console.log(`${pages.length} pages, ${faults.length} faults`);
  process.exitCode = faults.length > 0 ? 1 : 0;
}
