import { mkdtemp, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { build } from 'vite';

const PAGES = join(import.meta.dirname, 'pages');

/** Builds a page around one module of test/browser/pages, for rules that must be held in a real browser. Answers its folder. */
export async function buildPage(module: string): Promise<string> {
  const root = await mkdtemp(join(tmpdir(), 'stagewright-page-'));
  const outDir = join(root, 'dist');
  const page = `<!doctype html><html lang="en"><head><title>Test page</title><link rel="icon" href="data:," /></head>
<body><script type="module" src="${join(PAGES, module)}"></script></body></html>`;
  await writeFile(join(root, 'index.html'), page);
  await build({
    root,
    configFile: false,
    logLevel: 'error',
    build: {
      outDir,
      target: 'es2023',
      modulePreload: { polyfill: false },
      rolldownOptions: { input: join(root, 'index.html') },
    },
  });
  return outDir;
}
