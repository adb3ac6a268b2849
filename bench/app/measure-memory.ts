import type { Page } from 'playwright-core';
import { keepPlaying } from './measure-playback.ts';

/** Bytes of the page's own heap after a collection, at the start and after each minute of looped playback. */
export async function measureMemory(page: Page, minutes: number): Promise<readonly number[]> {
  await keepPlaying(page);
  const session = await page.context().newCDPSession(page);
  const heap = async () => {
    await session.send('HeapProfiler.collectGarbage');
    return (await session.send('Runtime.getHeapUsage')).usedSize;
  };
  const bytes_byMinute = [await heap()];
  for (let minute = 0; minute < minutes; minute++) {
    await page.waitForTimeout(60_000);
    bytes_byMinute.push(await heap());
  }
  await session.detach();
  return bytes_byMinute;
}
