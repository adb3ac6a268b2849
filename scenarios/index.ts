export { type PlayedScenario, playScenario, scenarioMatchup } from './play-scenario.ts';
export { scenarios } from './registry.ts';
export { type Scenario, usualScenario } from './scenario.ts';
