// Draws the pictures of the README from the real simulator: npm run pictures
import { mkdirSync, writeFileSync } from 'node:fs';
import { compileChance, createChanceState, traceScript } from '../src/engine/index.ts';
import { groundOf, playTiming, ruleCodeOf, toEnginePlay } from '../src/playbook/index.ts';
import {
  drawnField,
  playScene,
  sceneToSvg,
  tempoAsWritten,
  tempoChart,
  tempoChartScene,
  windowsOfTrial,
} from '../src/render/index.ts';
import { playScenario, scenarioMatchup } from './play-scenario.ts';
import { scenarios } from './registry.ts';
import type { Scenario } from './scenario.ts';

/** From the repository's root, where npm runs its scripts. */
const folder = 'docs/img';
/** The step of the play that is drawn beside its simulation: the skip from behind. */
const drawnStep = 5;

const scenario = scenarios.find((one) => one.id === 'lantern-box-zone');
if (scenario === undefined) throw new RangeError('missing scenario: lantern-box-zone');

const field = drawnField(ruleCodeOf(scenario.playbook).markings);
const play = toEnginePlay(scenario.playbook, scenario.play, scenario.side);
mkdirSync(folder, { recursive: true });
write('play.svg', sceneToSvg(playScene(play, drawnStep, field)));
write('moment.svg', playScenario(scenario).svg);
for (const { id } of scenario.playbook.plays) write(`tempo-${id}.svg`, tempoSvg({ ...scenario, play: id }));

/** A play over time as it is written, with what comes open in one trial against the scenario's scheme. */
function tempoSvg(shown: Scenario): string {
  const entry = shown.playbook.plays.find(({ id }) => id === shown.play);
  if (entry === undefined) throw new RangeError(`missing play: ${shown.play}`);
  const model = compileChance(scenarioMatchup(shown), shown.seed);
  const watched = traceScript(model, createChanceState(model), 0);
  const { play } = model.matchup;
  const spots = play.spots.map(({ id }) => id);
  const windows = watched === undefined ? [] : windowsOfTrial(watched.windows, watched.trial, spots);
  const tempo = tempoAsWritten(play, playTiming(entry, groundOf(shown.playbook)));
  return sceneToSvg(tempoChartScene(tempoChart(play, tempo, windows)));
}

function write(name: string, svg: string): void {
  writeFileSync(`${folder}/${name}`, svg);
  console.log(`written: ${folder}/${name}`);
}
