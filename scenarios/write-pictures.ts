// Draws the pictures of the README from the real simulator: npm run pictures
import { mkdirSync, writeFileSync } from 'node:fs';
import { ruleCodeOf, toEnginePlay } from '../src/playbook/index.ts';
import { drawnField, playScene, sceneToSvg } from '../src/render/index.ts';
import { playScenario } from './play-scenario.ts';
import { scenarios } from './registry.ts';

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

function write(name: string, svg: string): void {
  writeFileSync(`${folder}/${name}`, svg);
  console.log(`written: ${folder}/${name}`);
}
