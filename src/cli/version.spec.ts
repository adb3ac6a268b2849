import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { version } from './version.ts';

it('is the one of the package', () => {
  const manifest = JSON.parse(readFileSync(new URL('../../package.json', import.meta.url), 'utf8')) as {
    version: string;
  };
  expect(version).toBe(manifest.version);
});
