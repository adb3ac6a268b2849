import { existsSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { playScenario } from './play-scenario.ts';
import { scenarios } from './registry.ts';

const folder = fileURLToPath(new URL('.', import.meta.url));
const accept = process.env.SCENARIOS === 'accept';

describe('scenarios', () => {
  it('has each folder in the registry once, under its own name', () => {
    const folders = readdirSync(folder, { withFileTypes: true }).flatMap((one) =>
      one.isDirectory() ? [one.name] : [],
    );
    expect(scenarios.map((one) => one.id).sort()).toEqual(folders.sort());
  });

  it.each(scenarios.map((one) => [one.id, one] as const))('%s looks and goes as before', (id, scenario) => {
    const played = playScenario(scenario);
    const files = {
      svg: played.svg,
      'dark.svg': played.darkSvg,
      'tempo.svg': played.tempoSvg,
      json: `${JSON.stringify(played.summary, null, 2)}\n`,
    };
    const changed = Object.entries(files).filter(([kind, content]) => !isExpected(`${folder}${id}/`, kind, content));
    expect(
      changed.map(([kind]) => `${id}/expected-changed.${kind}`),
      'look at both, then accept: SCENARIOS=accept npm test -- scenarios',
    ).toEqual([]);
  });

  it('plays the same trial the same way again', () => {
    for (const scenario of scenarios.slice(0, 2))
      expect(playScenario(scenario).trace).toEqual(playScenario(scenario).trace);
  });
});

// Leaves what is new beside what was expected, for the eyes; takes it away when they agree again.
function isExpected(place: string, kind: string, content: string): boolean {
  const expected = `${place}expected.${kind}`;
  const changed = `${place}expected-changed.${kind}`;
  if (accept) writeFileSync(expected, content);
  const same = existsSync(expected) && readFileSync(expected, 'utf8') === content;
  if (same) rmSync(changed, { force: true });
  else writeFileSync(changed, content);
  return same;
}
