import type { TestProject } from 'vitest/node';
import { launchBrowser } from './launch-browser.ts';
import { startApp } from './start-app.ts';

declare module 'vitest' {
  interface ProvidedContext {
    /** Where the workbench is served, with a slash at the end. */
    readonly appAddress: string;
    /** How the tests reach the one browser. */
    readonly browserEndpoint: string;
  }
}

/** One server and one browser for all browser tests. Vitest calls it only when there is such a test to run. */
export default async function setUp(project: TestProject): Promise<() => Promise<void>> {
  const app = await startApp();
  const browser = await launchBrowser().catch(async (error) => {
    await app.close();
    throw error;
  });
  console.log(`The browser that is tested in: ${browser.origin}.`);
  project.provide('appAddress', app.address);
  project.provide('browserEndpoint', browser.endpoint);
  return async () => {
    await browser.close();
    await app.close();
  };
}
