/**
 * How labels print the nutrients of `upper-limits.ts`. Names are compared without case and punctuation. A name may
 * carry the form with it: "folic acid", "beta-carotene", "nicotinamide".
 */
export interface NutrientName {
  readonly nutrient: string;
  readonly form?: string;
}

const plain: Readonly<Record<string, readonly string[]>> = {
  vitaminA: ['vitamin A', 'vitamin A, preformed'],
  vitaminC: ['vitamin C', 'ascorbic acid', 'ascorbate', 'sodium ascorbate'],
  vitaminD: ['vitamin D', 'vitamin D3', 'vitamin D2', 'cholecalciferol', 'ergocalciferol', 'D3'],
  vitaminE: ['vitamin E', 'alpha-tocopherol', 'tocopherol'],
  vitaminK: ['vitamin K', 'vitamin K1', 'vitamin K2', 'MK-7', 'MK-4', 'menaquinone-7', 'phylloquinone', 'K2'],
  thiamin: ['thiamin', 'thiamine', 'vitamin B1', 'thiamin (B1)'],
  riboflavin: ['riboflavin', 'vitamin B2', 'riboflavin (B2)'],
  niacin: ['niacin', 'vitamin B3', 'niacin (B3)'],
  pantothenicAcid: ['pantothenic acid', 'pantothenate', 'vitamin B5', 'pantothenic acid (B5)'],
  vitaminB6: ['vitamin B6', 'pyridoxine', 'pyridoxal-5-phosphate', 'P-5-P'],
  biotin: ['biotin', 'vitamin B7', 'vitamin H'],
  folate: ['folate', 'vitamin B9'],
  vitaminB12: ['vitamin B12', 'cobalamin', 'methylcobalamin', 'cyanocobalamin'],
  choline: ['choline', 'choline bitartrate'],
  calcium: ['calcium', 'calcium carbonate', 'calcium citrate'],
  phosphorus: ['phosphorus', 'phosphate'],
  magnesium: [
    'magnesium',
    'magnesium citrate',
    'magnesium glycinate',
    'magnesium bisglycinate',
    'magnesium oxide',
  ],
  iron: ['iron', 'ferrous sulfate', 'ferrous bisglycinate', 'iron bisglycinate'],
  zinc: ['zinc', 'zinc picolinate', 'zinc gluconate', 'zinc citrate'],
  copper: ['copper'],
  iodine: ['iodine', 'iodide', 'potassium iodide'],
  selenium: ['selenium', 'selenomethionine'],
  chromium: ['chromium', 'chromium (III)', 'chromium picolinate'],
  manganese: ['manganese'],
  molybdenum: ['molybdenum'],
  boron: ['boron'],
  fluoride: ['fluoride'],
  nickel: ['nickel'],
  vanadium: ['vanadium', 'vanadyl sulfate'],
  sodium: ['sodium'],
  potassium: ['potassium', 'potassium citrate', 'potassium chloride'],
  caffeine: ['caffeine', 'caffeine anhydrous'],
  egcg: ['EGCG', 'epigallocatechin gallate', 'green-tea catechins (EGCG)'],
};

const withForm: Readonly<Record<string, NutrientName>> = {
  retinol: { nutrient: 'vitaminA', form: 'retinol' },
  'retinyl palmitate': { nutrient: 'vitaminA', form: 'retinol' },
  'retinyl acetate': { nutrient: 'vitaminA', form: 'retinol' },
  'beta-carotene': { nutrient: 'betaCarotene' },
  'nicotinic acid': { nutrient: 'niacin', form: 'nicotinic acid' },
  nicotinamide: { nutrient: 'niacin', form: 'nicotinamide' },
  niacinamide: { nutrient: 'niacin', form: 'nicotinamide' },
  'folic acid': { nutrient: 'folate', form: 'folic acid' },
  '5-MTHF': { nutrient: 'folate', form: '5-MTHF' },
  methylfolate: { nutrient: 'folate', form: '5-MTHF' },
  'd-alpha-tocopherol': { nutrient: 'vitaminE', form: 'natural' },
  'dl-alpha-tocopherol': { nutrient: 'vitaminE', form: 'synthetic' },
};

export const nutrientNames: ReadonlyMap<string, NutrientName> = new Map<string, NutrientName>([
  ...Object.entries(plain).flatMap(([nutrient, names]) =>
    [nutrient, ...names].map((name) => [name, { nutrient }] as const),
  ),
  ...Object.entries(withForm),
]);

/**
 * International units of a label, in the nutrient's unit. Vitamin D 40 IU are 1 ug; vitamin A 1 IU is 0.3 ug of
 * retinol; vitamin E as its upper level counts it: 1 IU is 0.67 mg natural or 0.9 mg of all synthetic forms, and an
 * undeclared form counts as the larger (NASEM; the carotene and tocopherol factors from memory).
 */
export const internationalUnits: Readonly<
  Record<string, Readonly<Record<string, number>> & { readonly any: number }>
> = {
  vitaminD: { any: 0.025 },
  vitaminA: { any: 0.3 },
  betaCarotene: { any: 0.0006 },
  vitaminE: { any: 0.9, natural: 0.67, synthetic: 0.9 },
};
