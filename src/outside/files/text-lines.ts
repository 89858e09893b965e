const LINE_FEED = 0x0a;

/** A file's bytes as lines. A line that is no UTF-8 comes back undefined; nothing is replaced in silence. */
export function linesOfBytes(bytes: Uint8Array): readonly (string | undefined)[] {
  const whole = decode(bytes);
  if (whole !== undefined) return whole.split('\n');
  const lines: (string | undefined)[] = [];
  for (let start = 0; start <= bytes.length; ) {
    const end = bytes.indexOf(LINE_FEED, start);
    lines.push(decode(bytes.subarray(start, end === -1 ? bytes.length : end)));
    if (end === -1) break;
    start = end + 1;
  }
  return lines;
}

function decode(bytes: Uint8Array): string | undefined {
  try {
    return new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch {
    return undefined;
  }
}
