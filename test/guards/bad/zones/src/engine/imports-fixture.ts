export { sample } from './sample.fixture.ts';
