import { readdirSync } from 'node:fs';
import { dirname, resolve } from 'node:path';
import ts from 'typescript';
import { expect, test } from 'vitest';

const badFiles = readdirSync('test/guards/bad/types').map((name) => resolve('test/guards/bad/types', name));

const layers = [
  'engine',
  'playbook',
  'render',
  'worker',
  'worker/node',
  'worker/browser',
  'teach',
  'press',
  'cli',
  'clip',
  'app',
];
const errorsOf = new Map(layers.map((layer) => [layer, findErrors(layer)]));

/** What the compiler says about each known-bad file, compiled together with the layer and under its own options. */
function findErrors(layer: string): Record<string, readonly number[]> {
  const { fileNames, options } = readProject(`src/${layer}/tsconfig.json`);
  const program = ts.createProgram([...fileNames, ...badFiles], { ...options, composite: false, noEmit: true });
  return Object.fromEntries(
    badFiles.map((file) => {
      const codes = program.getSemanticDiagnostics(program.getSourceFile(file)).map((diagnostic) => diagnostic.code);
      return [file.replace(/^.*[\\/]/, ''), codes];
    }),
  );
}

function readProject(path: string): ts.ParsedCommandLine {
  const { config } = ts.readConfigFile(path, ts.sys.readFile);
  return ts.parseJsonConfigFileContent(config, ts.sys, resolve(dirname(path)));
}

const noSuchGlobal = [2584];
const noNodeTypes = [2591];
const maybeUndefined = [2322];

test.each(['engine', 'playbook', 'render', 'worker', 'teach'])('%s has no DOM and no Node', (layer) => {
  expect(errorsOf.get(layer)).toMatchObject({
    'uses-document.ts': noSuchGlobal,
    'imports-node.ts': noNodeTypes,
    'uses-process.ts': noNodeTypes,
  });
});

test('the threads of Node and the cli have Node and no DOM', () => {
  for (const layer of ['worker/node', 'cli']) {
    expect(errorsOf.get(layer)).toMatchObject({
      'uses-document.ts': noSuchGlobal,
      'imports-node.ts': [],
      'uses-process.ts': [],
    });
  }
});

test.each(['worker/browser', 'clip'])('%s has the DOM and no Node', (layer) => {
  expect(errorsOf.get(layer)).toMatchObject({
    'uses-document.ts': [],
    'imports-node.ts': noNodeTypes,
    'uses-process.ts': noNodeTypes,
  });
});

// That it imports nothing of Node is a rule of the zones: a package's types bring those of Node along.
test.each(['app', 'press'])('%s has the DOM', (layer) => {
  expect(errorsOf.get(layer)).toMatchObject({ 'uses-document.ts': [] });
});

test('an index is checked everywhere but in the engine', () => {
  const errors = (layer: string) => errorsOf.get(layer)?.['uses-unchecked-index.ts'];
  expect(errors('engine')).toEqual([]);
  for (const layer of layers.slice(1)) expect(errors(layer)).toEqual(maybeUndefined);
});

test('every TypeScript file belongs to a project that the check compiles', () => {
  const { projectReferences = [] } = readProject('tsconfig.json');
  const compiled = new Set(
    projectReferences.flatMap(({ path }) =>
      readProject(`${path}/tsconfig.json`).fileNames.map((file) => resolve(file)),
    ),
  );
  const present = ['src', 'scenarios', 'bench', 'scripts', 'test', 'docs'].flatMap((folder) =>
    readdirSync(folder, { recursive: true, encoding: 'utf8' })
      .filter((path) => /[.]tsx?$/.test(path))
      .map((path) => resolve(folder, path)),
  );
  const guardsBad = resolve('test/guards/bad');
  expect(present.filter((file) => !compiled.has(file) && !file.startsWith(guardsBad))).toEqual([]);
});
