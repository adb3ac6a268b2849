// The workbench with every change shown at once: npm run dev. Tests and figures are those of the build, `npm start`.
import { ensureInstalled, root } from './ensure-installed.mjs';

ensureInstalled();
const { createServer } = await import('vite');
const server = await createServer({ configFile: `${root}/vite.config.ts` });
await server.listen();
server.printUrls();
