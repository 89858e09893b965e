import { defineConfig } from 'vite';
import packageFile from './package.json' with { type: 'json' };
import { serviceWorker } from './src/app/offline/service-worker-plugin.ts';

/** `--mode gallery` builds the page of examples alone, for the browser tests and for eyes; it is never shipped. */
export default defineConfig(({ mode }) => ({
  root: 'src/app',
  base: '/',
  publicDir: 'public',
  oxc: { jsx: { runtime: 'automatic', importSource: 'preact' } },
  define: { 'import.meta.env.APP_VERSION': JSON.stringify(packageFile.version) },
  plugins: mode === 'gallery' ? [] : [serviceWorker()],
  worker: { format: 'es' },
  server: { host: '127.0.0.1' },
  preview: { host: '127.0.0.1' },
  build: {
    outDir: mode === 'gallery' ? '../../.cache/gallery' : '../../dist/app',
    emptyOutDir: true,
    target: 'es2023',
    // Nothing is inlined: the content security policy allows this origin's files only, no data: addresses.
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
    ...(mode === 'gallery' ? { rolldownOptions: { input: 'src/app/gallery/index.html' } } : {}),
  },
}));
