// Zones: engine <- playbook <- {render, worker}; render <- {clip, press}; {render, worker} <- teach; all of them <- {app, cli}. Each rule has a known-bad file in test/guards/bad/zones.
/** Tests, and what only tests share. */
const tests = '[.](spec|props|fixture|browser)[.]tsx?$';

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

/**
 * How a layer is entered. What runs in a page and what runs in Node begin trials on two kinds of threads, so worker has two more; each kind of film brings
 * a package of its own, which nobody who makes another should load, so press has two more.
 */
const doors = ['^src/[^/]+/index[.]ts$', '^src/worker/(node|browser)[.]ts$', '^src/press/film-to-(gif|video)[.]ts$'];
const workerNode = '^src/worker/node([.]ts$|/)';
const workerBrowser = '^src/worker/browser([.]ts$|/)';

module.exports = {
  forbidden: [
    closed('engine', ['^src/engine/'], 'the engine needs no package, and runs anywhere because it has none'),
    closed('playbook', ['^src/(playbook|engine)/', 'node_modules/zod/'], 'zod is the one source of the document types'),
    closed('render', ['^src/(render|playbook|engine)/'], 'a scene is data and SVG is text: neither needs a package'),
    closed(
      'teach',
      ['^src/(teach/|worker/(?!(node|browser)([.]ts$|/))|(render|playbook|engine)/)'],
      'what is handed out is data and text here: the same from the page and from the shell',
    ),
    looksDown('engine', []),
    looksDown('playbook', ['engine']),
    looksDown('render', ['playbook', 'engine']),
    looksDown('worker', ['playbook', 'engine']),
    looksDown('teach', ['worker', 'render', 'playbook', 'engine']),
    looksDown('press', ['render', 'playbook', 'engine']),
    looksDown('cli', ['teach', 'press', 'worker', 'render', 'playbook', 'engine']),
    looksDown('app', ['teach', 'press', 'worker', 'render', 'playbook', 'engine']),
    looksDown('clip', ['render', 'playbook', 'engine']),
    {
      name: 'clip-stands-alone',
      comment:
        "the program of a clip's page is sent to phones inside every page: of other layers it takes types, which weigh nothing, and no code",
      severity: 'error',
      from: { path: '^src/clip/', pathNot: tests },
      to: { pathNot: '^src/clip/', dependencyTypesNot: ['type-only'] },
    },
    {
      name: 'one-door',
      comment:
        "a layer is entered through its index.ts (worker: node.ts and browser.ts too); what that does not export is the layer's own affair",
      severity: 'error',
      from: { path: '^src/([^/]+)/' },
      // A fixture is for tests, of other layers too; that code does not import one is a rule of its own.
      to: { path: '^src/', pathNot: ['^src/$1/', ...doors, '[.]fixture[.]ts$'] },
    },
    {
      name: 'one-door-from-outside',
      comment: 'scenarios, benches, scripts and tests use what the command line uses: the doors of a layer',
      severity: 'error',
      from: { path: '^(scenarios|bench|scripts|test)/' },
      to: { path: '^src/', pathNot: doors },
    },
    {
      name: 'worker-shared-is-closed',
      comment:
        'what crosses between threads is the same in a page and in Node: it needs no package and neither kind of thread',
      severity: 'error',
      from: { path: '^src/worker/', pathNot: [tests, workerNode, workerBrowser] },
      to: { pathNot: '^src/(worker/(?!(node|browser)([.]ts$|/))|playbook/|engine/)' },
    },
    {
      name: 'no-node-in-a-page',
      comment: 'threads of Node do not run in a browser: src/app and its threads enter by worker/browser.ts',
      severity: 'error',
      from: { path: ['^src/app/', workerBrowser], pathNot: tests },
      to: { path: workerNode },
    },
    {
      name: 'no-page-in-node',
      comment: 'threads of a page do not run in Node: the command line, benches and scripts enter by worker/node.ts',
      severity: 'error',
      from: { path: ['^src/cli/', workerNode, '^(scenarios|bench|scripts)/'], pathNot: tests },
      to: { path: workerBrowser },
    },
    {
      name: 'app-runs-in-a-page',
      comment:
        'a page has no node: modules; the compiler cannot say so, because the types of papaparse and pdfkit bring those of Node along',
      severity: 'error',
      from: { path: '^src/(app|press)/', pathNot: tests },
      to: { dependencyTypes: ['core'] },
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
      to: { path: '/(util|utils|helper|helpers|manager|common)[.]tsx?$', pathNot: 'node_modules' },
    },
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    // Type imports count too: a type from the wrong layer is a wrong arrow.
    tsPreCompilationDeps: true,
    // Some packages can be imported only, and have no entry for `require`.
    enhancedResolveOptions: {
      exportsFields: ['exports'],
      conditionNames: ['import', 'node', 'types', 'default', 'require'],
    },
  },
};
