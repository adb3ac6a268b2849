import { fileURLToPath } from 'node:url';
import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';
import { VitePWA } from 'vite-plugin-pwa';
import { firstOfThePage } from './scripts/vite/first-of-the-page.ts';
import { pagePrograms } from './scripts/vite/page-programs.ts';
import { threadsInOneBuild } from './scripts/vite/threads-in-one-build.ts';

/** Layers whose files do nothing when they are loaded but define what they export; a thread's own file is an entry, which always runs. */
const withoutSideEffects = /\/src\/(engine|playbook|render|worker|teach|press)\//;

// The workbench: src/app becomes dist/app, a folder of files that needs no network once it is open.
export default defineConfig({
  root: 'src/app',
  base: './',
  plugins: [
    react(),
    threadsInOneBuild(),
    firstOfThePage({
      program: fileURLToPath(new URL('./src/app/threads.ts', import.meta.url)),
      font: 'inter-latin-wght-normal.woff2',
    }),
    pagePrograms({
      CLIP_PAGE_PROGRAM: { entry: 'src/clip/main.ts', outfile: 'dist/clip-page.js' },
      QUIZ_PAGE_PROGRAM: { entry: 'src/clip/quiz-main.ts', outfile: 'dist/quiz-page.js' },
    }),
    keepOffline(),
  ],
  worker: { format: 'es' },
  build: {
    outDir: '../../dist/app',
    emptyOutDir: true,
    target: 'es2022',
    modulePreload: {
      // Every browser that knows the target preloads modules by itself.
      polyfill: false,
      // What a thread loads later has no page in which it could be announced.
      resolveDependencies: (file, needed) => (file.includes('answer-study') ? [] : needed),
    },
    // What the first load really takes is counted, and bounded, by a test: test/browser/first-load.browser.ts.
    chunkSizeWarningLimit: 1000,
    // What the page takes from a layer's door is all that it loads: not the simulation, which only the threads run.
    rolldownOptions: { treeshake: { moduleSideEffects: [{ test: withoutSideEffects, sideEffects: false }] } },
  },
  server: {
    // As the real server isolates the page (src/cli/serving/answer.ts), so that nothing works here that would not work there.
    headers: { 'Cross-Origin-Opener-Policy': 'same-origin', 'Cross-Origin-Embedder-Policy': 'require-corp' },
  },
});

/** Everything of the workbench kept in the browser at the first visit. A new version waits until the coach asks for it: src/app/offline. */
function keepOffline() {
  return VitePWA({
    registerType: 'prompt',
    // The page registers the worker itself, so that nothing needs a script inside the page.
    injectRegister: false,
    workbox: {
      globPatterns: ['**/*.{js,css,html,svg,png,woff2,ttf}'],
      navigateFallback: 'index.html',
      cleanupOutdatedCaches: true,
      inlineWorkboxRuntime: true,
      sourcemap: false,
    },
    manifest: {
      name: 'Sliderule',
      short_name: 'Sliderule',
      description: 'Write a man-up play and watch it against every man-down scheme at once.',
      lang: 'en',
      id: './',
      start_url: './',
      scope: './',
      display: 'standalone',
      // The ground of paper and the mark's blue: src/app/look/tokens.css.
      background_color: '#f1f0ea',
      theme_color: '#f1f0ea',
      icons: [
        { src: 'icon.svg', type: 'image/svg+xml', sizes: 'any' },
        { src: 'icon-192.png', type: 'image/png', sizes: '192x192' },
        { src: 'icon-512.png', type: 'image/png', sizes: '512x512' },
        { src: 'icon-512-maskable.png', type: 'image/png', sizes: '512x512', purpose: 'maskable' },
      ],
    },
  });
}
