// Every scenario as the code draws it now, in a browser, drawn anew with every change: npm run gallery
import { ensureInstalled, root } from './ensure-installed.mjs';

ensureInstalled();
const { createServer } = await import('vite');
const server = await createServer({ configFile: false, root: `${root}/scenarios`, server: { open: '/gallery.html' } });
await server.listen();
server.printUrls();
