import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vite';
import packageFile from './package.json' with { type: 'json' };
import { serviceWorker } from './src/app/offline/service-worker-plugin.ts';

/** `--mode gallery` serves or builds the page of examples alone, for the browser tests and for eyes; it is never shipped. */
export default defineConfig(({ mode }) => {
  const gallery = mode === 'gallery';
  return {
    root: gallery ? 'src/app/gallery' : 'src/app',
    base: '/',
    publicDir: fileURLToPath(new URL('src/app/public', import.meta.url)),
    oxc: { jsx: { runtime: 'automatic', importSource: 'preact' } },
    define: { 'import.meta.env.APP_VERSION': JSON.stringify(packageFile.version) },
    plugins: gallery ? [] : [serviceWorker()],
    // The week's solver asks for this module in Node alone; in the browser that line is never reached.
    worker: { format: 'es', rolldownOptions: { external: ['node:module'] } },
    server: { host: '127.0.0.1' },
    preview: { host: '127.0.0.1' },
    build: {
      outDir: fileURLToPath(new URL(gallery ? '.cache/gallery' : 'dist/app', import.meta.url)),
      emptyOutDir: true,
      target: 'es2023',
      // Nothing is inlined: the content security policy allows this origin's files only, no data: addresses.
      assetsInlineLimit: 0,
      modulePreload: { polyfill: false },
    },
  };
});
