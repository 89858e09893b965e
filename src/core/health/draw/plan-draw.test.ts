import { describe, expect, it } from 'vitest';
import type { Product } from '../supplements/read-label.ts';
import type { Regimen } from '../supplements/regimens.ts';
import type { DrawPlan, DrawPlanRequest } from './draw-plan.ts';
import { planDraw } from './plan-draw.ts';

const product = (supplement: string, of: string, amount: number, unit: 'mg' | 'ug'): Product => ({
  supplement,
  name: supplement,
  unit: 'capsule',
  perUnits: 1,
  contents: [{ of, amount, unit }],
});
const regimen = (supplement: string): Regimen => ({
  regimen: `${supplement} daily`,
  supplement,
  units: 1,
  tie: { to: 'first meal' },
  cadence: { of: 'every day' },
  from: '2027-01-01',
});
const products = new Map(
  [
    product('hair', 'biotin', 5, 'mg'),
    product('multi', 'biotin', 50, 'ug'),
    product('iron', 'iron', 14, 'mg'),
    product('creatine', 'creatine', 5000, 'mg'),
  ].map((known) => [known.supplement, known]),
);
const base: DrawPlanRequest = {
  today: '2027-03-01',
  draw: {
    draw: 'd',
    date: '2027-03-15',
    at: '07:30',
    analytes: [],
    fasting: true,
    laboratory: 'Harbour Laboratory',
  },
  products,
  regimens: [...products.keys()].map(regimen),
  medicines: [],
};

function plan(more: Partial<DrawPlanRequest> = {}): DrawPlan {
  const outcome = planDraw({ ...base, ...more });
  if (!outcome.ok) throw new Error(outcome.problem.message);
  return outcome.value;
}
const of = (found: DrawPlan, kind: string) => found.items.filter((item) => item.kind === kind);

describe('the days before a draw', () => {
  it('[HLT-50] no hard legs for a week, easy for three days, nothing the day before', () => {
    expect(of(plan(), 'training').map(({ day }) => day)).toEqual(['2027-03-08', '2027-03-12', '2027-03-14']);
    expect(plan().items[0]?.words).toContain('no hard leg session');
  });

  it('[HLT-50] twelve hours of fast before the draw, water as usual, no water cut', () => {
    const food = of(plan(), 'food').find(({ at }) => at !== undefined);
    expect(food).toMatchObject({ day: '2027-03-14', at: '19:30' });
    expect(of(plan(), 'drink')[0]?.words).toContain('Drink as on every day');
    expect(of(plan(), 'morning')[0]?.words).toContain('water as usual');
  });

  it('[HLT-51] milligrams of biotin pause for 72 hours, the micrograms of a multivitamin do not', () => {
    const { pauses, items } = plan();
    expect(pauses).toContainEqual({
      regimen: 'hair daily',
      from: '2027-03-12',
      until: '2027-03-15',
      reason: 'before the blood draw: biotin',
    });
    expect(pauses.map((pause) => pause.regimen)).toEqual(['hair daily', 'iron daily']);
    expect(items.find(({ kind }) => kind === 'pause')?.words).toContain('none are guaranteed');
  });

  it('[HLT-51] creatine goes on, and cystatin C is asked for', () => {
    expect(of(plan(), 'tell')[0]?.words).toContain('cystatin C');
  });

  it('[HLT-51] no prescribed medicine is stopped', () => {
    const found = plan({ medicines: [{ name: 'Levothyroxine', at: '06:30' }] });
    expect(
      of(found, 'tell')
        .map(({ words }) => words)
        .join(),
    ).toContain('nothing is stopped');
    expect(found.pauses.map(({ regimen: name }) => name)).not.toContain('Levothyroxine');
  });

  it('[HLT-50] guards what will be measured, and everything where that is not known', () => {
    const iron = plan({ draw: { ...base.draw, analytes: ['ferritin', 'serum iron'] } });
    expect(iron.pauses.map(({ regimen: name }) => name)).toEqual(['hair daily', 'iron daily']);
    expect(iron.items.map(({ words }) => words).join()).not.toContain('hard leg session');
    const sodium = plan({ draw: { ...base.draw, fasting: false, analytes: ['sodium'] } });
    expect(sodium.pauses).toEqual([]);
    expect(of(sodium, 'food')).toEqual([]);
  });

  it('[HLT-52] what should have begun already is said, not hidden', () => {
    const late = plan({ today: '2027-03-14' });
    expect(late.items.every(({ day }) => day >= '2027-03-14')).toBe(true);
    expect(late.cautions.map(({ words }) => words).join()).toContain('should have begun on 2027-03-08');
    expect(late.cautions.map(({ words }) => words).join()).toContain('hair');
  });

  it('[HLT-52] an afternoon draw, another laboratory and another hour get a word', () => {
    const found = plan({
      draw: { ...base.draw, at: '14:00', laboratory: 'Mill Laboratory' },
      previous: { date: '2027-01-10', time: '07:30', laboratory: 'Harbour Laboratory' },
    });
    const said = found.cautions.map(({ words }) => words).join(' ');
    expect(said).toContain('before 10:00');
    expect(said).toContain('the trend breaks');
    expect(said).toContain('same hour');
    expect(of(found, 'food').find(({ at }) => at !== undefined)).toMatchObject({
      day: '2027-03-15',
      at: '02:00',
    });
  });

  it('[HLT-52] lines come in order, and a draw gone by is refused', () => {
    const moments = plan().items.map(({ day, at }) => `${day} ${at ?? '00:00'}`);
    expect(moments).toEqual([...moments].sort((a, b) => (a < b ? -1 : 1)));
    const past = planDraw({ ...base, today: '2027-03-16' });
    expect(past.ok ? undefined : past.problem.code).toBe('health/draw-past');
  });
});
