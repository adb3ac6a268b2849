// Zones: engine <- playbook <- render <- {worker, app, cli}. Each rule has a known-bad file in test/guards/bad/zones.
/** Tests, and what only tests share. */
const tests = '[.](spec|props|fixture)[.]ts$';

/** A pure layer: its code, tests aside, reaches only what is named. No other layer, no package, no node: module. */
const closed = (layer, reachable, comment) => ({
  name: `${layer}-is-closed`,
  comment,
  severity: 'error',
  from: { path: `^src/${layer}/`, pathNot: tests },
  to: { pathNot: reachable },
});

/** Tests of a layer may use packages and node: modules, but look down like the code beside them. */
const looksDown = (layer, below) => ({
  name: `${layer}-looks-down`,
  comment: `src/${layer} and its tests may import ${below.join(', ') || 'no other layer'}; a test of several layers belongs in test/`,
  severity: 'error',
  from: { path: `^src/${layer}/` },
  to: { path: `^(src/(?!(${[layer, ...below].join('|')})/)|(bench|scripts|test)/)` },
});

module.exports = {
  forbidden: [
    closed('engine', ['^src/engine/'], 'the engine needs no package, and runs anywhere because it has none'),
    closed('playbook', ['^src/(playbook|engine)/', 'node_modules/zod/'], 'zod is the one source of the document types'),
    closed('render', ['^src/(render|playbook|engine)/'], 'a scene is data and SVG is text: neither needs a package'),
    looksDown('engine', []),
    looksDown('playbook', ['engine']),
    looksDown('render', ['playbook', 'engine']),
    looksDown('worker', ['playbook', 'engine']),
    looksDown('cli', ['worker', 'render', 'playbook', 'engine']),
    looksDown('app', ['worker', 'render', 'playbook', 'engine']),
    {
      name: 'one-door',
      comment: "a layer is entered through its index.ts; what that does not export is the layer's own affair",
      severity: 'error',
      from: { path: '^src/([^/]+)/' },
      to: { path: '^src/', pathNot: ['^src/$1/', '^src/[^/]+/index[.]ts$'] },
    },
    {
      name: 'one-door-from-outside',
      comment: 'scenarios, benches, scripts and tests use what the command line uses: the index.ts of a layer',
      severity: 'error',
      from: { path: '^(scenarios|bench|scripts|test)/' },
      to: { path: '^src/', pathNot: '^src/[^/]+/index[.]ts$' },
    },
    {
      name: 'no-cycle',
      comment: 'of two files in a cycle neither can be read, tested or moved alone',
      severity: 'error',
      from: {},
      to: { circular: true },
    },
    {
      name: 'no-dev-package-in-src',
      comment: 'what ships may not need what is only installed for development',
      severity: 'error',
      from: { path: '^src/', pathNot: tests },
      to: { dependencyTypes: ['npm-dev'], pathNot: 'node_modules/@types/' },
    },
    {
      name: 'no-test-in-what-ships',
      comment: 'a fixture is made for tests: its numbers stand for nothing that a user asked for',
      severity: 'error',
      from: { path: '^(src|scenarios|bench|scripts)/', pathNot: tests },
      to: { path: tests },
    },
    {
      name: 'resolvable',
      comment: 'an import that resolves to nothing escapes every other rule',
      severity: 'error',
      from: {},
      to: { couldNotResolve: true },
    },
    {
      name: 'telling-name',
      comment: 'a file is named after its main export; these names are a drawer for anything',
      severity: 'error',
      from: {},
      to: { path: '/(util|utils|helper|helpers|manager|common)[.]ts$', pathNot: 'node_modules' },
    },
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    // Type imports count too: a type from the wrong layer is a wrong arrow.
    tsPreCompilationDeps: true,
  },
};
