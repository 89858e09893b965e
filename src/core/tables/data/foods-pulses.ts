import type { FoodSection } from '../food-section.ts';

/** Columns: see ../foods.ts. Composition and measures: source usda-sr28; names, servings and classes: ours. */
export const foodsPulses: readonly FoodSection[] = [
  {
    group: 'legume',
    aisle: 'tins and pulses',
    rows: `
16014 | black beans, dry | pulses, uncooked | raw | dry-pulse | 30-120 | 341 21.6 1.42 0.366 62.36 15.5 2.12 5 1483 11.02 3.6 | 3.47/8.37/4.07 | 0 | 1 cup=194; 1 tbsp=12.1
16069 | lentils, dry | pulses, uncooked | raw | dry-pulse | 30-120 | 352 24.63 1.06 0.154 63.35 10.7 2.03 6 677 8.26 2.71 | 3.47/8.37/4.07 | 0 | 1 cup=192; 1 tbsp=12
16056 | chickpeas, dry | garbanzo beans, pulses, uncooked | raw | dry-pulse | 30-120 | 378 20.47 6.04 0.603 62.95 12.2 10.7 24 718 7.68 2.85 | 3.47/8.37/4.07 | 0 | 1 cup=200; 1 tbsp=12.5
16015 | black beans, boiled | pulses, cooked | cooked | cooked-dish | 60-300 | 132 8.86 0.54 0.139 23.71 8.7 0.32 1 355 65.74 1.15 | 3.47/8.37/4.07 | 0 | 1 cup=172
16070 | lentils, boiled | pulses, cooked | cooked | cooked-dish | 60-300 | 116 9.02 0.38 0.053 20.13 7.9 1.8 2 369 69.64 0.83 | 3.47/8.37/4.07 | 0 | 1 cup=198; 1 tbsp=12.3
16057 | chickpeas, boiled | garbanzo beans, pulses, cooked | cooked | cooked-dish | 60-300 | 164 8.86 2.59 0.269 27.42 7.6 4.8 7 291 60.21 0.92 | 3.47/8.37/4.07 | 0 | 1 cup=164
16126 | tofu, firm | bean curd, soya | as-is | fresh-soya | 80-300 | 78 9.04 4.17 0.793 2.85 0.9 0.6 12 148 82.93 1.01 | 3.47/8.37/4.07 | 0 | 0.5 cup=126; 0.25 block=81; 0.2 block=91
16159 | tofu, extra firm | bean curd, soya | as-is | fresh-soya | 80-300 | 83 9.98 5.26 0.919 1.18 1 0.71 4 130 82.31 1.28 | 3.47/8.37/4.07 | 0 | 0.2 block=91
16114 | tempeh | soya, fermented | as-is | fresh-soya | 60-200 | 192 20.29 10.8 2.539 7.64 - - 9 412 59.65 1.62 | 3.47/8.37/4.07 | 0 | 1 cup=166
11212 | edamame, frozen, cooked | soya beans, green soybeans | as-is | cooked-dish | 50-200 | 121 11.91 5.2 0.62 8.91 5.2 2.18 6 436 72.77 1.21 | 3.47/8.37/4.07 | 0 | 1 cup=155
`,
  },
];
