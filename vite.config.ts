import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';

// The workbench: src/app becomes dist/app, a folder of files that needs no network once it is open.
export default defineConfig({
  root: 'src/app',
  base: './',
  plugins: [react()],
  worker: { format: 'es' },
  build: {
    outDir: '../../dist/app',
    emptyOutDir: true,
    target: 'es2022',
    // Larger chunks than this are told by `npm run bench:app`, which counts what the first load really takes.
    chunkSizeWarningLimit: 1000,
  },
});
