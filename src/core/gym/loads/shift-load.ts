import type { SetLoad } from '#core/journal/kinds/gym-load.ts';
import type { Kilograms } from '#core/units/quantities.ts';

/** The figure on the load that a caution's ceiling is held against and that the next step changes. */
export function figureOfLoad(load: SetLoad): Kilograms | undefined {
  switch (load.of) {
    case 'kg':
      return load.kg;
    case 'each':
      return load.kgEach;
    case 'pegs':
      return load.pegs.reduce((sum, { kg }) => sum + kg, 0);
    case 'stack':
      return load.pinKg + (load.addOnKg ?? 0);
    case 'body':
      return (load.beltKg ?? 0) - (load.assistKg ?? 0);
    case 'band':
      return undefined;
  }
}

/**
 * The same load with another figure: plates come off or go on the peg that carries most, help shrinks before a belt is
 * put on. A band has no figure and stays; no figure goes below nought but that of body weight.
 */
export function withFigure(load: SetLoad, figureKg: Kilograms): SetLoad {
  const kg = Math.max(0, figureKg);
  switch (load.of) {
    case 'kg':
      return { ...load, kg };
    case 'each':
      return { ...load, kgEach: kg };
    case 'pegs':
      return { ...load, pegs: withSum(load.pegs, kg) };
    case 'stack': {
      const addOnKg = Math.min(load.addOnKg ?? 0, kg);
      const { addOnKg: _before, ...rest } = load;
      return { ...rest, pinKg: kg - addOnKg, ...(addOnKg > 0 && { addOnKg }) };
    }
    case 'body':
      return figureKg >= 0
        ? { of: 'body', ...(figureKg > 0 && { beltKg: figureKg }) }
        : { of: 'body', assistKg: -figureKg };
    case 'band':
      return load;
  }
}

type Pegs = Extract<SetLoad, { of: 'pegs' }>['pegs'];

function withSum(pegs: Pegs, sumKg: Kilograms): Pegs {
  const fullest = pegs.reduce((most, { kg }, i) => (kg > (pegs[most]?.kg ?? 0) ? i : most), 0);
  let missing = sumKg - pegs.reduce((sum, { kg }) => sum + kg, 0);
  // From the fullest peg first; what it cannot give, the others do.
  const order = [fullest, ...pegs.keys()].filter((place, i, all) => all.indexOf(place) === i);
  const changed = pegs.map((each) => ({ ...each }));
  for (const place of order) {
    const peg = changed[place];
    if (!peg || missing === 0) continue;
    const kg = Math.max(0, peg.kg + missing);
    missing -= kg - peg.kg;
    peg.kg = kg;
  }
  return changed;
}
