/**
 * Seeded chance. A stream is named by its purpose, so that adding a draw in one place never shifts another.
 * Generator: xoshiro128** (Blackman and Vigna 2018), seeded by a 32-bit FNV-1a hash run through splitmix32.
 */
export interface RandomStream {
  /** Uniform in [0, 1), 32 bits. */
  uniform(): number;
  /** Standard normal (Marsaglia polar method). */
  normal(): number;
  /** Whole number in [0, below). */
  integer(below: number): number;
}

export function randomStream(seed: number, purpose: string): RandomStream {
  let mix = hash(`${seed}/${purpose}`);
  const nextSeed = () => {
    mix = (mix + 0x9e3779b9) | 0;
    let t = mix ^ (mix >>> 16);
    t = Math.imul(t, 0x21f0aaad);
    t ^= t >>> 15;
    t = Math.imul(t, 0x735a2d97);
    return (t ^ (t >>> 15)) >>> 0;
  };
  let [a, b, c, d] = [nextSeed(), nextSeed(), nextSeed(), nextSeed()];
  const rotl = (x: number, k: number) => (x << k) | (x >>> (32 - k));
  const next = () => {
    const result = Math.imul(rotl(Math.imul(b, 5), 7), 9) >>> 0;
    const t = b << 9;
    c ^= a;
    d ^= b;
    b ^= c;
    a ^= d;
    c ^= t;
    d = rotl(d, 11);
    return result;
  };
  const uniform = () => next() / 4294967296;
  let spare: number | undefined;
  const normal = () => {
    if (spare !== undefined) {
      const value = spare;
      spare = undefined;
      return value;
    }
    for (;;) {
      const x = 2 * uniform() - 1;
      const y = 2 * uniform() - 1;
      const s = x * x + y * y;
      if (s > 0 && s < 1) {
        const factor = Math.sqrt((-2 * Math.log(s)) / s);
        spare = y * factor;
        return x * factor;
      }
    }
  };
  return { uniform, normal, integer: (below) => Math.floor(uniform() * below) };
}

function hash(text: string): number {
  let h = 0x811c9dc5;
  for (let i = 0; i < text.length; i++) h = Math.imul(h ^ text.charCodeAt(i), 0x01000193);
  return h | 0;
}
