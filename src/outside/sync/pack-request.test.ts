import { gunzipSync } from 'node:zlib';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { oneEntry } from '../../../test/journal/one-entry.ts';
import { journalKeys } from '../seal/journal-keys.ts';
import { sealEntry } from '../seal/seal-entry.ts';
import { packRequest } from './pack-request.ts';

const keys = journalKeys(new Uint8Array(32).fill(3));
const request = (count: number) => ({
  journal: keys.journal,
  entries: Array.from({ length: count }, (_, i) =>
    sealEntry(keys, oneEntry({ id: `e${i}`, stamp: `2027-${i}` })),
  ),
});

afterEach(() => vi.unstubAllGlobals());

describe('a request on its way', () => {
  it('[SYN-30] a short one goes as it is', async () => {
    const body = request(5);
    expect(await packRequest(body)).toEqual({
      body: JSON.stringify(body),
      headers: { 'content-type': 'application/json' },
    });
  });

  it('[SYN-30] a long one goes packed, by more than a quarter smaller, and is the same unpacked', async () => {
    const body = request(500);
    const packed = await packRequest(body);
    if (typeof packed.body === 'string') throw new Error('it was not packed');
    expect(packed.headers).toEqual({ 'content-type': 'application/json', 'content-encoding': 'gzip' });
    const text = JSON.stringify(body);
    expect(packed.body.size / text.length).toBeLessThan(0.75);
    expect(gunzipSync(Buffer.from(await packed.body.arrayBuffer())).toString()).toBe(text);
  });

  it('[SYN-30] a device that cannot pack sends it as it is', async () => {
    vi.stubGlobal('CompressionStream', undefined);
    expect((await packRequest(request(500))).headers).toEqual({ 'content-type': 'application/json' });
  });
});
