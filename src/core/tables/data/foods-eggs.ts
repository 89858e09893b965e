import type { FoodSection } from '../food-section.ts';

/** Columns: see ../foods.ts. Composition and measures: source usda-sr28; names, servings and classes: ours. */
export const foodsEggs: readonly FoodSection[] = [
  {
    group: 'egg',
    aisle: 'eggs',
    rows: `
01123 | egg, whole, raw | eggs, hen | raw | egg-in-shell | 50-300/50 | 143 12.56 9.51 3.126 0.72 0 0.37 142 138 76.15 1.06 | 4.36/9.02/3.68 | 12 | 1 large=50; 1 extra large=56; 1 jumbo=63; 1 cup (4.86 large eggs)=243; 1 medium=44; 1 small=38
01124 | egg white, raw | egg whites | raw | egg-out-of-shell | 33-330 | 52 10.9 0.17 0 0.73 0 0.71 166 163 87.57 0.63 | 4.36/9.02/3.68 | 0 | 1 large=33; 1 cup=243
01125 | egg yolk, raw | egg yolks | raw | egg-out-of-shell | 17-68/17 | 322 15.86 26.54 9.551 3.59 0 0.56 48 109 52.31 1.71 | 4.36/9.02/3.68 | 0 | 1 large=17; 1 cup=243
01172 | egg white, pasteurised, frozen | liquid egg whites, carton | raw | egg-pasteurised | 50-350 | 48 10.2 0 0 1.04 0 0.25 169 169 88.17 0.6 | 4.36/9.02/3.68 | 0 | 1 oz=28
01129 | egg, hard-boiled | eggs, cooked, boiled | cooked | egg-hard-cooked | 50-300/50 | 155 12.58 10.61 3.267 1.12 0 1.12 124 126 74.62 1.08 | 4.36/9.02/3.68 | 12 | 1 cup, chopped=136; 1 tbsp=8.5; 1 large=50
01131 | egg, poached | eggs, cooked | cooked | cooked-dish | 50-200/50 | 143 12.51 9.47 3.113 0.71 0 0.37 297 138 75.85 1.46 | 4.36/9.02/3.68 | 0 | 1 large=50
01128 | egg, fried | eggs, cooked | cooked | cooked-dish | 46-184/46 | 196 13.61 14.84 4.323 0.83 0 0.4 207 152 69.47 1.26 | 4.36/9.02/3.68 | 0 | 1 large=46
01132 | egg, scrambled | eggs, cooked, omelette | cooked | cooked-dish | 60-250 | 149 9.99 10.98 3.331 1.61 0 1.39 145 132 76.4 1.01 | 4.36/9.02/3.68 | 0 | 1 large=61; 1 tbsp=13.7; 1 cup=220
01173 | egg white, dried | egg white powder, albumen | dry | dry | 10-50 | 382 81.1 0 0 7.8 0 5.4 1280 1125 5.8 5.3 | 4.36/9.02/3.68 | 0 | 1 oz=28
`,
  },
];
