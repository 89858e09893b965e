import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import { transformWithOxc } from 'vite';
import type { Plugin } from 'vite';

const WORKER_SOURCE = fileURLToPath(new URL('./service-worker.ts', import.meta.url));

interface Kept {
  readonly path: string;
  readonly content: string | Uint8Array;
}

/**
 * Writes "sw.js": the service worker's source with the list of all built files and the hash of their contents.
 * A changed byte anywhere makes another worker, which is how browsers notice a new version.
 */
export function serviceWorker(): Plugin {
  let publicDir = '';
  return {
    name: 'stagewright-service-worker',
    apply: 'build',
    configResolved(config) {
      publicDir = config.publicDir;
    },
    generateBundle: {
      order: 'post',
      async handler(_options, bundle) {
        const built = Object.values(bundle).map(
          (file): Kept => ({
            path: `/${file.fileName}`,
            content: file.type === 'chunk' ? file.code : file.source,
          }),
        );
        const source = await workerSource([...built, ...publicFiles(publicDir)]);
        this.emitFile({ type: 'asset', fileName: 'sw.js', source });
      },
    },
  };
}

/** The worker's script for these files. */
export async function workerSource(files: readonly Kept[]): Promise<string> {
  const sorted = files
    .filter((file) => !file.path.endsWith('.map'))
    .map((file) => ({ ...file, path: file.path === '/index.html' ? '/' : file.path }))
    .sort((a, b) => (a.path < b.path ? -1 : 1));
  const hash = createHash('sha256');
  for (const file of sorted) hash.update(file.path).update('\0').update(file.content).update('\0');
  const source = readFileSync(WORKER_SOURCE, 'utf8');
  const { code } = await transformWithOxc(source, WORKER_SOURCE, {
    define: {
      PRECACHED_FILES: JSON.stringify(sorted.map((file) => file.path)),
      CONTENT_HASH: JSON.stringify(hash.digest('hex').slice(0, 16)),
    },
  });
  return code;
}

function publicFiles(directory: string): Kept[] {
  if (directory === '') return [];
  return readdirSync(directory, { recursive: true, withFileTypes: true })
    .filter((found) => found.isFile())
    .map((found) => {
      const path = join(found.parentPath, found.name);
      return { path: `/${relative(directory, path).split(sep).join('/')}`, content: readFileSync(path) };
    });
}
