import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { extname, join, relative, sep } from 'node:path';
import { brotliCompressSync, constants, gzipSync } from 'node:zlib';

/** How a body may be packed for the way. */
export type Packing = 'br' | 'gzip' | 'identity';

export interface AppFile {
  readonly type: string;
  /** A name with a content hash in it may be kept for ever; anything else is asked for anew each time. */
  readonly cacheControl: string;
  readonly body: (packing: Packing) => Uint8Array<ArrayBuffer>;
  readonly etag: (packing: Packing) => string;
  /** Worth packing; pictures and fonts are packed already. */
  readonly packable: boolean;
}

const TYPES: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.webmanifest': 'application/manifest+json; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.ico': 'image/x-icon',
  '.woff2': 'font/woff2',
  '.wasm': 'application/wasm',
  '.txt': 'text/plain; charset=utf-8',
};

const FOR_EVER = 'public, max-age=31536000, immutable';
const ASK_AGAIN = 'no-cache';

/** Smaller than this, packing gains nothing. */
const WORTH_PACKING_BYTES = 1024;

/**
 * The built app in memory, by address. Only what was in the folder at the start can be asked for, so no address can
 * lead out of it. Answers undefined where there is no built app.
 */
export function loadAppFiles(folder: string): ReadonlyMap<string, AppFile> | undefined {
  const files = new Map<string, AppFile>();
  let names: readonly string[];
  try {
    names = readdirSync(folder, { recursive: true, withFileTypes: true })
      .filter((item) => item.isFile())
      .map((item) => join(item.parentPath, item.name));
  } catch {
    return undefined;
  }
  for (const name of names) {
    const address = `/${relative(folder, name).split(sep).join('/')}`;
    files.set(address, appFile(address, new Uint8Array(readFileSync(name))));
  }
  const page = files.get('/index.html');
  if (!page) return undefined;
  files.set('/', page);
  return files;
}

function appFile(address: string, bytes: Uint8Array<ArrayBuffer>): AppFile {
  const type = TYPES[extname(address)] ?? 'application/octet-stream';
  const hash = createHash('sha256').update(bytes).digest('base64url').slice(0, 22);
  const packed = new Map<Packing, Uint8Array<ArrayBuffer>>([['identity', bytes]]);
  return {
    type,
    cacheControl: address.startsWith('/assets/') ? FOR_EVER : ASK_AGAIN,
    packable: bytes.length >= WORTH_PACKING_BYTES && !/^(image\/png|font|image\/x-icon)/.test(type),
    etag: (packing) => `"${hash}-${packing}"`,
    body(packing) {
      const known = packed.get(packing);
      if (known) return known;
      const made = pack(bytes, packing);
      packed.set(packing, made);
      return made;
    },
  };
}

function pack(bytes: Uint8Array, packing: Packing): Uint8Array<ArrayBuffer> {
  if (packing === 'gzip') return new Uint8Array(gzipSync(bytes, { level: 9 }));
  const params = { [constants.BROTLI_PARAM_QUALITY]: 9, [constants.BROTLI_PARAM_SIZE_HINT]: bytes.length };
  return new Uint8Array(packing === 'br' ? brotliCompressSync(bytes, { params }) : bytes);
}
