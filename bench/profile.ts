import { readFileSync } from 'node:fs';
import { Session } from 'node:inspector/promises';

/** Where CPU time goes: share of all samples by source file. */
export interface ProfileShare {
  readonly file: string;
  readonly share: number;
  /** Its busiest functions, busiest first, with their own shares. */
  readonly functions: readonly { readonly name: string; readonly share: number }[];
}

/** Sample `work` with the runtime's own profiler and add its samples up by source file of this bundle. */
export async function profile(work: () => void, bundle: string): Promise<readonly ProfileShare[]> {
  const session = new Session();
  session.connect();
  await session.post('Profiler.enable');
  await session.post('Profiler.setSamplingInterval', { interval: 200 });
  await session.post('Profiler.start');
  work();
  const { profile: recorded } = await session.post('Profiler.stop');
  session.disconnect();
  const fileOf = sourceFiles(bundle);
  const counts = new Map<string, Map<string, number>>();
  let total = 0;
  for (const { callFrame, hitCount = 0 } of recorded.nodes) {
    const isOurs = callFrame.url.endsWith(bundle);
    const file = isOurs
      ? fileOf(callFrame.lineNumber)
      : `(${callFrame.functionName.replace(/[()]/g, '') || 'runtime'})`;
    const functions = counts.get(file) ?? new Map<string, number>();
    functions.set(callFrame.functionName, (functions.get(callFrame.functionName) ?? 0) + hitCount);
    counts.set(file, functions);
    total += hitCount;
  }
  return [...counts].map(([file, functions]) => shareOf(file, functions, total)).sort((a, b) => b.share - a.share);
}

function shareOf(file: string, functions: ReadonlyMap<string, number>, total: number): ProfileShare {
  const own = [...functions].map(([name, hits]) => ({ name, share: hits / total })).sort((a, b) => b.share - a.share);
  return { file, share: own.reduce((sum, { share }) => sum + share, 0), functions: own };
}

/** The bundler writes each file's path as a comment above its text. */
function sourceFiles(bundle: string): (line: number) => string {
  const lines = readFileSync(bundle, 'utf8').split('\n');
  let file = bundle;
  const files = lines.map((line) => {
    const marked = /^\/\/ ((?:src|bench|scenarios)\/\S+\.ts)$/.exec(line);
    if (marked?.[1] !== undefined) file = marked[1];
    return file;
  });
  return (line) => files[line] ?? bundle;
}
