import type { DataOf } from '#core/journal/kinds/registry.ts';
import type { Scribe } from './scribe.ts';

type Product = DataOf<'supplement-defined'>;
type Regimen = DataOf<'regimen-set'>;

/** The invented cupboard: own products as their labels say. */
const products: readonly Product[] = [
  {
    supplement: 'multivitamin',
    name: 'Multivitamin',
    unit: 'tablet',
    perUnits: 1,
    packUnits: 90,
    contents: [
      { of: 'vitamin A', form: 'beta-carotene', amount: 600, unit: 'ug' },
      { of: 'vitamin D3', amount: 10, unit: 'ug' },
      { of: 'vitamin B6', amount: 2, unit: 'mg' },
      { of: 'folic acid', amount: 400, unit: 'ug' },
      { of: 'vitamin B12', amount: 10, unit: 'ug' },
      { of: 'biotin', amount: 50, unit: 'ug' },
      { of: 'zinc', amount: 10, unit: 'mg' },
      { of: 'selenium', amount: 55, unit: 'ug' },
      { of: 'iodine', amount: 150, unit: 'ug' },
      { of: 'magnesium', amount: 60, unit: 'mg' },
    ],
  },
  {
    supplement: 'vitamin-d3',
    name: 'Vitamin D3',
    unit: 'softgel',
    perUnits: 1,
    packUnits: 120,
    contents: [{ of: 'vitamin D3', amount: 1000, unit: '[IU]' }],
  },
  {
    supplement: 'fish-oil',
    name: 'Fish oil',
    unit: 'softgel',
    perUnits: 2,
    packUnits: 120,
    contents: [{ of: 'Fish oil', amount: 2, unit: 'g' }],
    batchTested: true,
  },
  {
    supplement: 'creatine',
    name: 'Creatine',
    unit: 'gram',
    perUnits: 5,
    packUnits: 500,
    contents: [{ of: 'Creatine', amount: 5, unit: 'g' }],
    batchTested: true,
  },
  {
    supplement: 'iron',
    name: 'Iron',
    unit: 'capsule',
    perUnits: 1,
    packUnits: 60,
    contents: [
      { of: 'iron bisglycinate', amount: 25, unit: 'mg' },
      { of: 'vitamin C', amount: 60, unit: 'mg' },
    ],
  },
  {
    supplement: 'magnesium',
    name: 'Magnesium',
    unit: 'capsule',
    perUnits: 2,
    packUnits: 120,
    contents: [{ of: 'magnesium citrate', amount: 200, unit: 'mg' }],
  },
  {
    supplement: 'caffeine',
    name: 'Caffeine',
    unit: 'tablet',
    perUnits: 1,
    packUnits: 100,
    contents: [{ of: 'caffeine', amount: 100, unit: 'mg' }],
  },
  {
    supplement: 'gift-powder',
    name: 'Powder before training, a gift',
    unit: 'scoop',
    perUnits: 1,
    packUnits: 30,
    contents: [{ of: 'caffeine', amount: 350, unit: 'mg' }, { of: 'Focus blend' }],
  },
];

const everyDay = { of: 'every day' } as const;

/** In the order of their importance to her. */
export const regimens: readonly Omit<Regimen, 'from'>[] = [
  {
    regimen: 'iron-waking',
    supplement: 'iron',
    units: 1,
    tie: { to: 'waking, empty stomach' },
    cadence: { of: 'every n-th day', days: 2 },
  },
  {
    regimen: 'multi-first',
    supplement: 'multivitamin',
    units: 1,
    tie: { to: 'first meal' },
    cadence: everyDay,
  },
  {
    regimen: 'd3-fat',
    supplement: 'vitamin-d3',
    units: 1,
    tie: { to: 'fat-holding meal' },
    cadence: everyDay,
  },
  {
    regimen: 'oil-fat',
    supplement: 'fish-oil',
    units: 2,
    tie: { to: 'fat-holding meal' },
    cadence: everyDay,
  },
  {
    regimen: 'creatine-carb',
    supplement: 'creatine',
    units: 5,
    tie: { to: 'high-carbohydrate meal' },
    cadence: everyDay,
  },
  {
    regimen: 'caffeine-training',
    supplement: 'caffeine',
    units: 1,
    tie: { to: 'before training', minutes: 45 },
    cadence: { of: 'training days' },
  },
  {
    regimen: 'magnesium-sleep',
    supplement: 'magnesium',
    units: 2,
    tie: { to: 'before sleep', minutes: 45 },
    cadence: everyDay,
  },
];

/** Labels copied and regimens set, once. */
export function writeShelf(scribe: Scribe, day: string): void {
  for (const product of products) scribe.write(day, '06:40', 'supplement-defined', product);
  for (const regimen of regimens) scribe.write(day, '06:45', 'regimen-set', { ...regimen, from: day });
}

/** What was in the cupboard on the evening it was counted; fish oil and caffeine will not last to the show. */
export function writeSupplementCount(scribe: Scribe, day: string): void {
  for (const [supplement, units] of [
    ['multivitamin', 96],
    ['vitamin-d3', 104],
    ['fish-oil', 88],
    ['creatine', 430],
    ['iron', 52],
    ['magnesium', 196],
    ['caffeine', 40],
    ['gift-powder', 29],
  ] as const) {
    scribe.write(day, '21:55', 'supplement-counted', { supplement, units });
  }
}
