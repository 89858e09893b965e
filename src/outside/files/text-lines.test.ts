import { describe, expect, test } from 'vitest';
import { linesOfBytes } from './text-lines.ts';

const bytes = (...parts: readonly (string | number[])[]) =>
  new Uint8Array(
    Buffer.concat(parts.map((part) => (typeof part === 'string' ? Buffer.from(part) : Buffer.from(part)))),
  );

describe('bytes as lines', () => {
  test('[JRN-16] lines that are no UTF-8 come back undefined, the others as they are', () => {
    expect(linesOfBytes(bytes('a ü\n', [0xc3, 0x0a], 'b\n', [0xed, 0xa0, 0x80]))).toEqual([
      'a ü',
      undefined,
      'b',
      undefined,
    ]);
  });

  test('[JRN-15] whole text is cut at its line feeds, a byte order mark and carriage returns stay for the reader', () => {
    expect(linesOfBytes(bytes('\uFEFFa\r\nb'))).toEqual(['\uFEFFa\r', 'b']);
    expect(linesOfBytes(new Uint8Array())).toEqual(['']);
    expect(linesOfBytes(bytes([0xff]))).toEqual([undefined]);
    expect(linesOfBytes(bytes([0xff, 0x0a]))).toEqual([undefined, '']);
  });
});
