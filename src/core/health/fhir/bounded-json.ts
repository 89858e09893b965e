import { answered, refused, type Outcome } from '#core/problems/problem.ts';

/** A file of a stranger: what it may be at most, so that it cannot stop the tool. */
export interface JsonBounds {
  readonly characters: number;
  readonly depth: number;
  readonly parts: number;
}

export const jsonBounds: JsonBounds = { characters: 30_000_000, depth: 60, parts: 3_000_000 };

/** Parses JSON after counting its depth and parts, so that no file can exhaust the stack or the memory. */
export function parseBoundedJson(text: string, bounds: JsonBounds = jsonBounds): Outcome<unknown> {
  if (text.length > bounds.characters) return tooBig(`it has ${text.length} characters`);
  const { depth, parts } = measure(text);
  if (depth > bounds.depth) {
    return refused(
      'health/fhir-too-deep',
      'file',
      `The file nests ${depth} levels deep; a patient record needs far fewer than ${bounds.depth}.`,
      'Export it again from the portal, or export the laboratory results alone.',
    );
  }
  if (parts > bounds.parts) return tooBig(`it has ${parts} parts`);
  try {
    return answered(JSON.parse(text));
  } catch {
    return refused(
      'health/fhir-not-json',
      'file',
      'The file is not JSON, or it is cut off.',
      'Export the record again as FHIR JSON (not XML or PDF).',
    );
  }
}

function tooBig(found: string): Outcome<never> {
  return refused(
    'health/fhir-too-big',
    'file',
    `The file is too big to be read here: ${found}.`,
    'Export the laboratory results alone, or a shorter span of time.',
  );
}

/** Deepest nesting and number of parts, without building anything; brackets inside texts do not count. */
function measure(text: string): { depth: number; parts: number } {
  let [depth, deepest, parts] = [0, 0, 1];
  let inText = false;
  for (let at = 0; at < text.length; at++) {
    const sign = text.charCodeAt(at);
    if (inText) {
      if (sign === BACKSLASH) at += 1;
      else if (sign === QUOTE) inText = false;
    } else if (sign === QUOTE) inText = true;
    else if (sign === OPEN_LIST || sign === OPEN_OBJECT) {
      depth += 1;
      parts += 1;
      if (depth > deepest) deepest = depth;
    } else if (sign === CLOSE_LIST || sign === CLOSE_OBJECT) depth -= 1;
    else if (sign === COMMA) parts += 1;
  }
  return { depth: deepest, parts };
}

const [QUOTE, BACKSLASH, COMMA] = [0x22, 0x5c, 0x2c];
const [OPEN_LIST, CLOSE_LIST, OPEN_OBJECT, CLOSE_OBJECT] = [0x5b, 0x5d, 0x7b, 0x7d];
