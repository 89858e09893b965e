import type { CardioEnergy } from '#core/cycle/cardio-energy.ts';
import type { DataOf } from '#core/journal/kinds/registry.ts';
import type { Kilograms } from '#core/units/quantities.ts';
import { roundTo } from '#core/units/rounding.ts';
import type { Why } from '../../parts/why.ts';
import { massUnit } from '../../views/mass-units.ts';
import { sourceWords } from '../../views/source-words.ts';

/** Why a session counts as so much energy, and how sure that is. */
export function cardioWhy(done: DataOf<'cardio-done'>, energy: CardioEnergy, massKg: Kilograms): Why {
  const { unit, shown } = massUnit.value;
  const settings = [
    ['Pace', done.speedKmh, 'km/h'],
    ['Grade', done.gradePercent, '%'],
    ['Steps', done.stepsPerMinute, 'a minute'],
    ['Height of a step', done.stepHeightM, 'm'],
    ['Power', done.watts, 'W'],
  ] as const;
  return {
    title: `Energy of ${done.activity}`,
    sentences: [
      `Worked out by ${energy.by}, less what the same minutes cost at rest.`,
      'Rest is taken off because the day’s maintenance holds it already.',
    ],
    formula: 'net = (oxygen used − oxygen at rest) × mass × minutes × energy of a litre of oxygen',
    inputs: [
      { name: 'Body mass', value: `${roundTo(shown(massKg), 1)} ${unit}`, from: 'newest weigh-in' },
      { name: 'Minutes', value: String(done.minutes), from: 'as kept' },
      ...settings.flatMap(([name, value, of]) =>
        value === undefined ? [] : [{ name, value: `${value} ${of}`, from: 'as kept' }],
      ),
    ],
    source: sourceWords(energy.source),
    uncertainty: `${energy.spread} 9 times of 10 it is within ${energy.within} kcal of this.`,
  };
}
