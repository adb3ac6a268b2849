export { screen } from '../app/index.ts';
