import type { FoodSection } from '../food-section.ts';

/** Columns: see ../foods.ts. Composition and measures: source usda-sr28; names, servings and classes: ours. */
export const foodsPotatoes: readonly FoodSection[] = [
  {
    group: 'tuber',
    aisle: 'vegetables',
    rows: `
11352 | potato with skin, raw | potatoes | raw | fresh-produce | 100-500 | 77 2.05 0.09 0.025 17.49 2.1 0.82 6 425 79.25 1.11 | 2.78/8.37/4.03 | 25 | 0.5 cup, diced=75; 1 potato large (3 to 4-1/4 in across)=369; 1 potato medium (2-1/4 to 3-1/4 in across)=213; 1 potato small (1-3/4 to 2-1/2 in across)=170
11353 | russet potato with skin, raw | potatoes, baking potato | raw | fresh-produce | 100-500 | 79 2.14 0.08 0.026 18.07 1.3 0.62 5 417 78.58 1.13 | 2.78/8.37/4.03 | 25 | 0.5 cup, diced=75; 1 potato large (3 to 4-1/4 in across)=369; 1 potato medium (2-1/4 to 3-1/4 in across)=213; 1 potato small (1-3/4 to 2-1/4 in across)=170
11507 | sweet potato, raw | yam | raw | fresh-produce | 100-500 | 86 1.57 0.05 0.018 20.12 3 4.18 55 337 77.28 0.99 | 2.78/8.37/4.03 | 28 | 1 cup, cubes=133; 1 sweet potato, 5 in long=130
11674 | potato with skin, baked | potatoes, jacket potato, roasted | cooked | cooked-dish | 100-500 | 93 2.5 0.13 0.034 21.15 2.2 1.18 10 535 74.89 1.33 | 2.78/8.37/4.03 | 0 | 1 label serving=148; 1 potato large=299; 1 potato medium=173; 1 potato small=138
11356 | russet potato with skin, baked | potatoes, jacket potato | cooked | cooked-dish | 100-500 | 97 2.63 0.13 0.032 21.44 2.3 1.08 14 550 74.45 1.35 | - | 0 | 1 potato large (3 to 4-1/4 in across)=299; 1 potato medium (2-1/4 to 3-1/4 in across)=173; 1 potato small (1-3/4 to 2-1/2 in across)=138
11365 | potato boiled in its skin, flesh only | potatoes, cooked | cooked | cooked-dish | 100-500 | 87 1.87 0.1 0.026 20.13 1.8 0.91 4 379 76.98 0.92 | 2.78/8.37/4.03 | 9 | 0.5 cup=78; 1 potato (2-1/2 in across, sphere)=136
11367 | potato, boiled without skin | potatoes, cooked, peeled | cooked | cooked-dish | 100-500 | 86 1.71 0.1 0.026 20.01 1.8 0.89 5 328 77.46 0.72 | 2.78/8.37/4.03 | 0 | 0.5 cup=78; 1 large (3 to 4-1/4 in across)=300; 1 medium (2-1/4 to 3-1/4 in across)=167; 1 small (1-3/4 to 2-1/2 in across)=125
11508 | sweet potato baked in its skin, flesh only | yam, roasted, cooked | cooked | cooked-dish | 100-500 | 90 2.01 0.15 0.052 20.71 3.3 6.48 36 475 75.78 1.35 | 2.78/8.37/4.03 | 22 | 1 cup=200; 1 large=180; 1 medium (2 in across, 5 in long, raw)=114; 1 small=60
11510 | sweet potato, boiled without skin | yam, cooked, mashed | cooked | cooked-dish | 100-500 | 76 1.37 0.14 0.031 17.72 2.5 5.74 27 230 80.13 0.63 | 2.78/8.37/4.03 | 0 | 1 cup, mashed=328; 1 medium=151
11378 | potato flakes, dry | instant mashed potato | dry | dry | 20-100 | 354 8.34 0.41 0.169 81.17 6.6 3.36 77 1098 6.58 3.5 | 2.78/8.37/4.03 | 0 | 1 cup=60
`,
  },
];
