import { expect, it } from 'vitest';
import { replacePart } from './page-section.ts';

const engine = '# Speed\n\nfast\n\n## The step\n\nquick\n';
const app = '## The workbench\n\nlight\n';

it.each([
  ['', 'engine', engine, engine],
  ['', 'app', app, app],
  [engine, 'app', app, `${engine}\n${app}`],
  [app, 'engine', engine, `${engine}\n${app}`],
  [`${engine}\n${app}`, 'engine', '# Speed\n\nslow\n', `# Speed\n\nslow\n\n${app}`],
  [`${engine}\n${app}`, 'app', '## The workbench\n\nheavy\n', `${engine}\n## The workbench\n\nheavy\n`],
] as const)('%j with a new %s part', (page, part, text, expected) => {
  expect(replacePart(page, part, text)).toBe(expected);
});
