import { createBrowserPool } from '../worker/browser.ts';

/**
 * The threads that answer what the coach asks: one a core but one, which the page has for itself (docs/models/live-answers.md). A program of its own, which runs before
 * the rest of the page is there: so they make themselves ready meanwhile.
 */
export const threads = createBrowserPool({ threads: Math.max(1, Math.min(8, navigator.hardwareConcurrency - 1)) });
