export { threads } from '../worker/browser.ts';
