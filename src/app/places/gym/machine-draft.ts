import * as v from 'valibot';
import { torque } from '#core/gym/machines/torque.ts';
import type { MachineGeometry } from '#core/journal/kinds/gym-equipment.ts';
import { answered, refused, type Outcome } from '#core/problems/problem.ts';
import type { Machine } from '../../views/gym-view.ts';

const n = v.optional(v.number());

export const machineKinds = ['lever', 'sled', 'stack', 'unknown'] as const;
export type MachineKind = (typeof machineKinds)[number];

/**
 * A machine being described. Lengths as read from the tape in centimetres, masses in kilograms, angles as the level reads
 * them with the lever at the start; an angle left open lies in line with the lever.
 */
export const machineDraft = v.strictObject({
  name: v.string(),
  place: v.string(),
  photo: v.optional(v.string()),
  of: v.picklist(machineKinds),
  sides: v.picklist([1, 2]),
  fromDeg: n,
  toDeg: n,
  leverKg: n,
  leverCm: n,
  leverDeg: n,
  padCm: n,
  pegs: v.array(v.strictObject({ name: v.string(), cm: n, deg: n })),
  sledKg: n,
  railsDeg: n,
  firstKg: n,
  stepKg: n,
  lastKg: n,
  halfPinKg: n,
  addOns: v.string(),
});
export type MachineDraft = v.InferOutput<typeof machineDraft>;

export const emptyMachine: MachineDraft = {
  name: '',
  place: '',
  of: 'lever',
  sides: 1,
  pegs: [{ name: '' }],
  addOns: '',
};

/** The newest description as a draft to be changed. */
export function draftOfMachine({ name, place = '', photo, geometry }: Machine): MachineDraft {
  const head = { ...emptyMachine, name, place, ...(photo !== undefined && { photo }), of: geometry.of };
  switch (geometry.of) {
    case 'lever': {
      const { range, lever, pegs, padM, sides } = geometry;
      return {
        ...head,
        sides,
        ...range,
        leverKg: lever.massKg,
        leverCm: centimetres(lever.radiusM),
        leverDeg: range.fromDeg + lever.angleDeg,
        padCm: centimetres(padM),
        pegs: pegs.map((peg) => ({
          name: peg.name,
          cm: centimetres(peg.radiusM),
          deg: range.fromDeg + peg.angleDeg,
        })),
      };
    }
    case 'sled':
      return { ...head, sides: geometry.sides, sledKg: geometry.sledKg, railsDeg: geometry.railsDeg };
    case 'stack': {
      const { of: _of, addOnsKg = [], ...figures } = geometry;
      return { ...head, ...figures, addOns: addOnsKg.join('; ') };
    }
    case 'unknown':
      return { ...head, pegs: geometry.pegs.map((peg) => ({ name: peg })) };
  }
}

function centimetres(metres: number): number {
  return Math.round(metres * 1e4) / 100;
}

/** The geometry the measures make (GYM-101); the first one missing is answered by name. */
export function readGeometry(typed: MachineDraft): Outcome<MachineGeometry> {
  switch (typed.of) {
    case 'lever':
      return readLever(typed);
    case 'sled':
      return readSled(typed);
    case 'stack':
      return readStack(typed);
    case 'unknown':
      return readUnknown(typed);
  }
}

function missing(path: string, what: string, remedy: string): Outcome<never> {
  return refused('gym/measure-missing', path, `${what} is missing.`, remedy);
}

function readLever(typed: MachineDraft): Outcome<MachineGeometry> {
  const { fromDeg, toDeg, leverKg, leverCm, leverDeg, padCm, sides } = typed;
  if (fromDeg === undefined)
    return missing(
      'fromDeg',
      'The angle at the start',
      'Lay the phone on the lever at the start and read its level.',
    );
  if (toDeg === undefined)
    return missing(
      'toDeg',
      'The angle at the end',
      'Lay the phone on the lever at the end and read its level.',
    );
  if (padCm === undefined || padCm <= 0)
    return missing(
      'padCm',
      'The distance of the pad',
      'Measure from the pivot to the middle of the pad or handle.',
    );
  const pegs = namedPegs(typed);
  if (!pegs.ok) return pegs;
  const placed: { name: string; radiusM: number; angleDeg: number }[] = [];
  for (const [place, { name, cm, deg }] of pegs.value.entries()) {
    if (cm === undefined)
      return missing(
        `pegs.${place}.cm`,
        `The distance of peg "${name}"`,
        'Measure from the pivot to the middle of the peg.',
      );
    placed.push({ name, radiusM: cm / 100, angleDeg: (deg ?? fromDeg) - fromDeg });
  }
  const geometry = {
    of: 'lever',
    range: { fromDeg, toDeg },
    lever: { massKg: leverKg ?? 0, radiusM: (leverCm ?? 0) / 100, angleDeg: (leverDeg ?? fromDeg) - fromDeg },
    pegs: placed,
    padM: padCm / 100,
    sides,
  } as const satisfies MachineGeometry;
  return provenLever(geometry);
}

/** The same refusals as the torque of the machine itself: a range that runs backwards, more than a turn, nothing that resists. */
function provenLever(geometry: Extract<MachineGeometry, { of: 'lever' }>): Outcome<MachineGeometry> {
  const { range, lever, pegs, padM } = geometry;
  const tried = torque({
    range: { ...range, stepDeg: 5 },
    lever,
    pegs: pegs.map((peg) => ({ ...peg, massKg: 10 })),
    padM,
  });
  if (tried.ok) return answered(geometry);
  const { problem } = tried;
  return { ok: false, problem: problem.path.startsWith('range') ? { ...problem, path: 'toDeg' } : problem };
}

function namedPegs({ pegs }: MachineDraft): Outcome<MachineDraft['pegs']> {
  const names = pegs.map(({ name }) => name.trim());
  const nameless = names.indexOf('');
  if (pegs.length === 0 || nameless !== -1)
    return missing(
      `pegs.${Math.max(0, nameless)}.name`,
      'The name of a peg',
      'Call it by its place: low, middle, far.',
    );
  const twice = names.findIndex((name, i) => names.indexOf(name) !== i);
  if (twice !== -1)
    return refused(
      'gym/peg-twice',
      `pegs.${twice}.name`,
      `Two pegs are called "${names[twice] ?? ''}".`,
      'Give each a name of its own.',
    );
  return answered(pegs.map((peg, i) => ({ ...peg, name: names[i] ?? peg.name })));
}

function readSled({ sledKg, railsDeg, sides }: MachineDraft): Outcome<MachineGeometry> {
  if (sledKg === undefined)
    return missing(
      'sledKg',
      'The weight of the empty sled',
      'Read it from the machine, or hang a scale under it.',
    );
  if (railsDeg === undefined)
    return missing('railsDeg', 'The angle of the rails', 'Lay the phone on a rail and read its level.');
  return answered({ of: 'sled', sledKg, railsDeg, sides });
}

function readStack({ firstKg, stepKg, lastKg, halfPinKg, addOns }: MachineDraft): Outcome<MachineGeometry> {
  if (firstKg === undefined)
    return missing('firstKg', 'The first plate of the stack', 'Enter what stands on it.');
  if (stepKg === undefined)
    return missing('stepKg', 'The step of the stack', 'Enter how much each plate adds.');
  if (lastKg === undefined)
    return missing('lastKg', 'The last plate of the stack', 'Enter what stands on it.');
  if (lastKg < firstKg)
    return refused(
      'gym/stack-backwards',
      'lastKg',
      'The stack ends lighter than it begins.',
      'Exchange the two.',
    );
  const masses = addOns
    .split(/[;\s]+/)
    .filter((text) => text !== '')
    .map((text) => Number(text.replace(',', '.')));
  if (masses.some((mass) => !Number.isFinite(mass) || mass <= 0))
    return refused(
      'gym/add-ons-unread',
      'addOns',
      'The add-on weights cannot be read.',
      'Enter kilograms with blanks between them: 1.25 2.5',
    );
  return answered({
    of: 'stack',
    firstKg,
    stepKg,
    lastKg,
    ...(halfPinKg !== undefined && { halfPinKg }),
    ...(masses.length > 0 && { addOnsKg: masses }),
  });
}

function readUnknown(typed: MachineDraft): Outcome<MachineGeometry> {
  const pegs = namedPegs(typed);
  return pegs.ok ? answered({ of: 'unknown', pegs: pegs.value.map(({ name }) => name) }) : pegs;
}

/** The whole description under its id. */
export function readMachine(typed: MachineDraft, machine: string): Outcome<Machine> {
  const name = typed.name.trim();
  if (name === '')
    return refused('gym/no-name', 'name', 'The machine has no name.', 'Enter what you call it.');
  const geometry = readGeometry(typed);
  if (!geometry.ok) return geometry;
  const place = typed.place.trim();
  return answered({
    machine,
    name,
    ...(place !== '' && { place }),
    ...(typed.photo !== undefined && { photo: typed.photo }),
    geometry: geometry.value,
  });
}
