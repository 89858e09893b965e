import type { FoodSection } from '../food-section.ts';

/** Columns: see ../foods.ts. Composition and measures: source usda-sr28; names, servings and classes: ours. */
export const foodsPowders: readonly FoodSection[] = [
  {
    group: 'protein-powder',
    aisle: 'powders',
    rows: `
14058 | whey protein isolate powder (generic, 58 g protein) | shake, supplement | dry | dry | 15-60 | 359 58.14 1.16 0.581 29.07 0 1.16 372 872 0.86 10.77 | - | 0 | 3 scoop=86
14066 | whey-based protein powder (generic, 78 g protein) | shake, supplement | dry | dry | 15-60 | 352 78.13 1.56 0.781 6.25 3.1 0 156 500 3.44 10.55 | - | 0 | 0.33 cup=32
14067 | soya-based protein powder (generic, 56 g protein) | soy, shake, supplement | dry | dry | 15-60 | 388 55.56 5.56 1.111 28.89 6.7 22.22 733 933 4.13 5.87 | - | 0 | 1 scoop=45
16122 | soya protein isolate | soy protein | dry | dry | 15-60 | 335 88.32 3.39 0.422 0 0 0 1005 81 4.98 3.58 | 3.47/8.37/4.07 | 0 | 1 oz=28.35
19177 | gelatine powder, unsweetened | gelatin, collagen | dry | dry | 3-20 | 335 85.6 0.1 0.07 0 0 0 196 16 13 1.3 | 3.9/9.02/- | 0 | 1 envelope (1 tbsp)=7; 1 package (1 oz)=28
01115 | sweet whey, dried | whey powder | dry | dry | 15-60 | 353 12.93 1.07 0.684 74.46 0 74.46 1079 2080 3.19 8.35 | 4.27/8.79/3.87 | 0 | 1 cup=145; 1 tbsp=7.5
`,
  },
];
