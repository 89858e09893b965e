import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

/**
 * Contrast by WCAG 2.2, "relative luminance" and "contrast ratio" (W3C Recommendation, 2023):
 * L = 0.2126 R + 0.7152 G + 0.0722 B of linear sRGB; (L1 + 0.05) / (L2 + 0.05).
 */
function luminance(colour: string): number {
  const [red = 0, green = 0, blue = 0] = [1, 3, 5].map((at) => {
    const share = Number.parseInt(colour.slice(at, at + 2), 16) / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

function contrast(one: string, other: string): number {
  const [light = 0, dark = 0] = [luminance(one), luminance(other)].sort((a, b) => b - a);
  return (light + 0.05) / (dark + 0.05);
}

const css = readFileSync(new URL('./tokens.css', import.meta.url), 'utf8');

/** The colours of the rule whose selector holds this text, by name. */
function colours(selector: string): Record<string, string> {
  const from = css.indexOf('{', css.indexOf(selector));
  const body = css.slice(from, css.indexOf('}', from));
  return Object.fromEntries([...body.matchAll(/--([\w-]+): (#[0-9a-f]{6});/g)].map((m) => [m[1], m[2]]));
}

const LIGHTS = {
  day: colours(':root[data-light="day"]'),
  night: colours(':root[data-light="night"]'),
};

/** Text and figures on their grounds. */
const TEXT = [
  ['ink', 'sheet'],
  ['ink', 'ground'],
  ['ink', 'steel'],
  ['ink', 'caution-wash'],
  ['ink-soft', 'sheet'],
  ['ink-soft', 'ground'],
  ['ink-soft', 'caution-wash'],
  ['next', 'sheet'],
  ['on-next', 'next'],
  ['caution', 'sheet'],
  ['caution', 'caution-wash'],
  ['on-caution', 'caution'],
] as const;

/** Frames of controls and strokes of gauges. */
const STROKES = [
  ['edge', 'sheet'],
  ['edge', 'ground'],
  ['ink', 'vial'],
] as const;

describe('[LOOK-07] contrast', () => {
  it('[LOOK-07] is 21 for black on white, by the definition', () => {
    expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 6);
    // From the definition's own arithmetic: mid grey #777777 on white is 4.48 (widely quoted; from memory).
    expect(contrast('#777777', '#ffffff')).toBeCloseTo(4.48, 2);
  });

  for (const [light, tokens] of Object.entries(LIGHTS)) {
    it.each(TEXT)(`[LOOK-07] by ${light}, %s on %s is at least 7 to 1`, (ink, ground) => {
      expect(contrast(tokens[ink] ?? '', tokens[ground] ?? '')).toBeGreaterThanOrEqual(7);
    });

    it.each(STROKES)(`[LOOK-07] by ${light}, strokes of %s on %s are at least 3 to 1`, (ink, ground) => {
      expect(contrast(tokens[ink] ?? '', tokens[ground] ?? '')).toBeGreaterThanOrEqual(3);
    });
  }

  it('[LOOK-07] night chosen by hand is the same night as the device’s', () => {
    expect(colours(':root:not([data-light="day"])')).toEqual(LIGHTS.night);
  });
});
