import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { drawPng, drawSvg } from './make-icons.ts';
import { workerSource } from './service-worker-plugin.ts';

const page = { path: '/index.html', content: '<!doctype html>' };
const script = { path: '/assets/index-abc.js', content: 'x' };
const map = { path: '/assets/index-abc.js.map', content: '{}' };
const publicFile = (name: string): Buffer => readFileSync(new URL(`../public/${name}`, import.meta.url));

describe('[LOOK-12] the service worker', () => {
  it('[LOOK-12] keeps every built file, the page as "/", no source maps', async () => {
    const source = await workerSource([script, map, page]);
    expect(source).toContain('"/"');
    expect(source).toContain('"/assets/index-abc.js"');
    expect(source).not.toContain('.map"');
    expect(source).not.toContain('PRECACHED_FILES');
    expect(source).not.toContain('CONTENT_HASH');
  });

  it('[LOOK-12] is another worker when a byte changes, and the same for the same files in any order', async () => {
    const first = await workerSource([page, script]);
    expect(await workerSource([script, page])).toBe(first);
    expect(await workerSource([page, { ...script, content: 'y' }])).not.toBe(first);
  });

  it('[LOOK-12] is a plain script: no imports or exports, so that any browser takes it', async () => {
    expect(await workerSource([page])).not.toMatch(/^\s*(import|export)\b/m);
  });

  it('[LOOK-12] takes over only when asked', async () => {
    const source = await workerSource([page]);
    expect(source.match(/skipWaiting/g)).toHaveLength(1);
    expect(source).toContain('take-over');
  });
});

describe('[LOOK-12] the manifest', () => {
  it('[LOOK-12] names the app, its start and icons that exist in the sizes it says', () => {
    const manifest: unknown = JSON.parse(publicFile('manifest.webmanifest').toString());
    expect(manifest).toMatchObject({ name: 'Stagewright', start_url: '/', display: 'standalone' });
    for (const [name, size] of [
      ['icon-192.png', 192],
      ['icon-512.png', 512],
      ['icon-maskable-512.png', 512],
    ] as const) {
      expect(publicFile('manifest.webmanifest').toString()).toContain(`"/${name}"`);
      // PNG specification: width and height are the first two numbers of the first chunk.
      expect(publicFile(name).readUInt32BE(16)).toBe(size);
      expect(publicFile(name).readUInt32BE(20)).toBe(size);
    }
  });

  it('[LOOK-12] icons are what the script draws', () => {
    expect(publicFile('icon.svg').toString()).toBe(drawSvg());
    const drawn = drawPng(192, 1);
    expect(drawn.subarray(0, 33)).toEqual(publicFile('icon-192.png').subarray(0, 33));
  });
});
