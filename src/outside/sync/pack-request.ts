/** Shorter than this, packing gains less than its own head and the time it takes. */
const WORTH_PACKING_CHARACTERS = 4096;

/** A request's body as it goes over the wire, with the headers that say what it is. */
export interface PackedRequest {
  readonly body: string | Blob;
  readonly headers: Readonly<Record<string, string>>;
}

const PLAIN = { 'content-type': 'application/json' } as const;

/**
 * Packs a long request with gzip where this browser can (SYN-30). Sealed bytes do not shrink, but base64 spends eight
 * bits on six: a quarter of a long request is saved.
 */
export async function packRequest(body: object): Promise<PackedRequest> {
  const text = JSON.stringify(body);
  if (text.length < WORTH_PACKING_CHARACTERS || typeof CompressionStream === 'undefined')
    return { body: text, headers: PLAIN };
  const packed = new Blob([text]).stream().pipeThrough(new CompressionStream('gzip'));
  return {
    body: await new Response(packed).blob(),
    headers: { ...PLAIN, 'content-encoding': 'gzip' },
  };
}
