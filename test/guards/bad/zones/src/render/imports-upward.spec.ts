export { pool } from '../worker/index.ts';
