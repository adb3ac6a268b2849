export { lost } from './not-there.ts';
