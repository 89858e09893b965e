import { NUTRIENTS, type PlateModel } from './plate-model.ts';
import type { WholePlate } from './whole-plates.ts';

/** Foods and grams of one plate on their way to be mended. */
interface LoosePlate {
  readonly meal: number;
  choices: number[];
  grams: number[];
}

type Make = (meal: number, choices: readonly number[], grams: readonly number[]) => WholePlate;

/** Do the plates keep within stock and carry what was asked for? */
export function keepsLimits(model: PlateModel, plates: readonly WholePlate[]): boolean {
  const { joint } = model;
  for (let row = NUTRIENTS; row < joint.rows; row++) {
    const sum = plates.reduce((total, plate) => total + (plate.sums[row] ?? 0), 0);
    if (joint.rowCost(row, sum) > 1e-6) return false;
  }
  return true;
}

/**
 * Plates that keep every limit, made from plates that do not: what is too much for the stock leaves the last plates first, what is
 * asked for and missing comes on the first plate with room. For a search that was stopped before it found such plates.
 */
export function mendPlates(
  model: PlateModel,
  plates: readonly WholePlate[],
  make: Make,
): readonly WholePlate[] {
  const loose = plates.map(({ choices, grams }, meal) => ({
    meal,
    choices: [...choices],
    grams: [...grams],
  }));
  for (let row = NUTRIENTS; row < model.firstAsked; row++) takeOff(model, loose, row);
  for (let row = model.firstAsked; row < model.joint.rows; row++) putOn(model, loose, row);
  return loose.map(({ meal, choices, grams }) => make(meal, choices, grams));
}

function takeOff(model: PlateModel, plates: readonly LoosePlate[], row: number): void {
  const { joint, choices, perGram } = model;
  const uses = (c: number) => (perGram[c * joint.rows + row] ?? 0) > 0;
  const total = () =>
    plates.reduce(
      (sum, plate) =>
        sum + plate.choices.reduce((own, c, i) => own + (uses(c) ? (plate.grams[i] ?? 0) : 0), 0),
      0,
    );
  for (const plate of plates.toReversed()) {
    const at = plate.choices.findIndex(uses);
    if (at < 0 || total() <= (joint.bend0[row] ?? 0)) continue;
    const ways = (model.held[plate.meal] ?? []).find((list) => list.includes(plate.choices[at] ?? -1));
    const least = ways?.[0];
    if (least === undefined) {
      plate.choices.splice(at, 1);
      plate.grams.splice(at, 1);
    } else {
      plate.choices[at] = least;
      plate.grams[at] = choices[least]?.lowG ?? 0;
    }
  }
}

function putOn(model: PlateModel, plates: readonly LoosePlate[], row: number): void {
  const { joint, choices, perPlate, problem, open } = model;
  const carries = (c: number) => (perPlate[c * joint.rows + row] ?? 0) > 0;
  if (plates.some((plate) => plate.choices.some(carries))) return;
  const wanted = choices.findIndex((_, c) => c < open && carries(c));
  const roomy = plates.find((one) => one.choices.length < problem.maxFoodsPerMeal);
  const plate = roomy ?? plates.find((one) => freePlace(model, plates, one) >= 0);
  if (plate === undefined || wanted < 0) return;
  const place = roomy ? roomy.choices.length : freePlace(model, plates, plate);
  plate.choices[place] = wanted;
  plate.grams[place] = choices[wanted]?.lowG ?? 0;
}

/** Place of a food on the plate that is not held there, and not asked for or on another plate as well. */
function freePlace(model: PlateModel, plates: readonly LoosePlate[], plate: LoosePlate): number {
  const held = new Set((model.held[plate.meal] ?? []).flat());
  const kinOf = (c: number) => model.choices[c]?.kin;
  return plate.choices.findIndex((c) => {
    if (held.has(c)) return false;
    const asked = model.problem.foods[model.choices[c]?.food ?? 0]?.asked === true;
    return (
      !asked || plates.filter((one) => one.choices.some((other) => kinOf(other) === kinOf(c))).length > 1
    );
  });
}
