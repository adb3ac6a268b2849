export { probe } from '../../bench/past-door.ts';
