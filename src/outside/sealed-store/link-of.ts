import { createHash } from 'node:crypto';

/** Whoever names a link has heard exactly what led to it. */
export function linkOf(before: string, id: string, body: string): string {
  return createHash('sha256').update(`${before}\n${id}\n${body}`).digest('base64url').slice(0, 22);
}
