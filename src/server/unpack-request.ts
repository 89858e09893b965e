import { promisify } from 'node:util';
import { gunzip } from 'node:zlib';

const unpack = promisify(gunzip);

/**
 * Sealed entries hardly shrink: base64 by a quarter, names and stamps by some more. A body that would grow beyond this
 * is no request but a bomb.
 */
const MOST_GROWTH = 10;

export type Unreadable = 'other encoding' | 'too large' | 'damaged';

/** A body as text, or why there is none. */
export type Unpacked = { readonly text: string } | { readonly refused: Unreadable };

/**
 * Reads a request's body, plain or packed by gzip (SYN-30, SYN-31). Unpacking stops at the first piece beyond the
 * limit, so that a small body that stands for a huge one costs little to refuse.
 */
export async function unpackRequest(request: Request, mostBytes: number): Promise<Unpacked> {
  const encoding = (request.headers.get('content-encoding') ?? 'identity').trim().toLowerCase();
  if (encoding !== 'identity' && encoding !== 'gzip') return { refused: 'other encoding' };
  try {
    if (encoding === 'identity') return { text: await request.text() };
    const packed = await request.arrayBuffer();
    const maxOutputLength = Math.max(1, Math.min(mostBytes, packed.byteLength * MOST_GROWTH));
    return { text: (await unpack(packed, { maxOutputLength })).toString('utf8') };
  } catch (fault) {
    // Anything else is a body that broke off or is no gzip.
    const tooLarge = fault instanceof Error && 'code' in fault && fault.code === 'ERR_BUFFER_TOO_LARGE';
    return { refused: tooLarge ? 'too large' : 'damaged' };
  }
}
