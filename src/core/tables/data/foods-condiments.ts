import type { FoodSection } from '../food-section.ts';

/** Columns: see ../foods.ts. Composition and measures: source usda-sr28; names, servings and classes: ours. */
export const foodsCondiments: readonly FoodSection[] = [
  {
    group: 'condiment',
    aisle: 'sauces, spices and sugar',
    rows: `
11935 | tomato ketchup | catsup, sauce | as-is | condiment | 5-40 | 101 1.04 0.1 0.014 27.4 0.3 21.27 907 281 68.51 2.94 | 2.44/8.37/3.57 | 0 | 1 tbsp=17; 1 packet=9; 1 cup=240
11949 | tomato ketchup, low sodium | catsup, sauce | as-is | condiment | 5-40 | 101 1.04 0.1 0.014 27.4 0.3 21.27 20 281 68.51 2.94 | 2.44/8.37/3.57 | 0 | 1 tbsp=17; 1 packet=9; 1 cup=240
06168 | hot pepper sauce | chilli sauce | as-is | condiment | 1-20 | 11 0.51 0.37 0.052 1.75 0.3 1.26 2643 144 89.98 7.39 | 2.44/8.37/3.57 | 0 | 1 tsp=4.7; 0.25 tsp=1.2
06631 | hot chilli sauce, thick | chili sauce | as-is | condiment | 3-30 | 93 1.93 0.93 - 19.16 2.2 15.11 2124 321 71.84 6.14 | - | 0 | 1 tsp=6.5
06164 | salsa, ready to serve | tomato dip | as-is | condiment | 15-150 | 29 1.52 0.17 0.021 6.64 1.9 4.01 711 275 89.28 2.39 | 2.44/8.87/3.57 | 0 | 2 tbsp=36; 0.5 cup=130; 1 cup=259
06971 | fermented anchovy and spice sauce | worcester sauce, savoury sauce | as-is | condiment | 2-20 | 78 0 0 0 19.46 0 10.03 980 800 78.54 2 | 4/9/4 | 0 | 1 tbsp=17; 1 cup=275
02046 | mustard, yellow | sauce | as-is | condiment | 3-25 | 60 3.74 3.34 0.214 5.83 4 0.92 1104 152 83.72 3.37 | 3.47/8.37/3.34 | 0 | 1 tsp or 1 packet=5; 1 cup=249
19296 | honey | - | as-is | condiment | 5-50 | 304 0.3 0 0 82.4 0.2 82.12 4 52 17.1 0.2 | 3.36/8.37/3.68 | 0 | 1 cup=339; 1 tbsp=21; 1 packet (0.5 oz)=14
19353 | maple syrup | - | as-is | condiment | 5-50 | 260 0.04 0.06 0.007 67.04 0 60.46 12 212 32.39 0.47 | 3.36/8.37/3.87 | 0 | 1 tbsp=20; 1 serving 1/4 cup=83; 1 cup=315
19297 | jam | preserves, jelly, marmalade | as-is | condiment | 5-50 | 278 0.37 0.07 0.01 68.86 1.1 48.5 32 77 30.47 0.23 | 4/9/4 | 0 | 1 tbsp=20; 1 packet (0.5 oz)=14
19335 | sugar, granulated | white sugar, sucrose | as-is | dry | 2-50 | 387 0 0 0 99.98 0 99.8 1 2 0.02 0.01 | - | 0 | 1 serving packet=2.8; 1 tsp=4.2; 1 cup=200; 1 serving 1 cube=2.3
02047 | table salt | sodium chloride | as-is | dry | 1-6 | 0 0 0 0 0 0 0 38758 8 0.2 99.8 | - | 0 | 1 tsp=6; 1 tbsp=18; 1 cup=292; 1 dash=0.4
02048 | cider vinegar | - | as-is | condiment | 2-30 | 21 0 0 0 0.93 0 0.4 5 73 93.81 0.17 | - | 0 | 1 tbsp=14.9; 1 cup=239; 1 tsp=5
16123 | soy sauce | shoyu | as-is | condiment | 2-25 | 53 8.14 0.57 0.073 4.93 0.8 0.4 5493 435 71.15 15.21 | 3.5/8.4/4 | 0 | 1 tbsp=16; 1 tsp=5.3; 1 cup=255; 1 individual packet=8.9
16424 | soy sauce, reduced sodium | shoyu, light | as-is | condiment | 2-25 | 57 9.05 0.3 0.035 5.59 0.7 0.5 3598 352 75.14 9.92 | 3.5/8.4/4 | 0 | 1 tbsp=14.2; 1 tsp=4.5; 1 cup=255
02030 | black pepper | spice | as-is | dry | 1-3 | 251 10.39 3.26 1.392 63.95 25.3 0.64 20 1329 12.46 4.49 | 1.83/8.37/3.2 | 0 | 1 tsp, ground=2.3; 1 tbsp, ground=6.9; 1 tsp, whole=2.9; 1 dash=0.1
02010 | cinnamon, ground | spice | as-is | dry | 1-5 | 247 3.99 1.24 0.345 80.59 53.1 2.17 10 431 10.58 3.6 | 1.82/8.37/2.85 | 0 | 1 tsp=2.6; 1 tbsp=7.8
02020 | garlic powder | spice | as-is | dry | 1-6 | 331 16.55 0.73 0.249 72.73 9 2.43 60 1193 6.45 3.54 | 2.78/8.37/3.84 | 0 | 1 tsp=3.1; 1 tbsp=9.7
02026 | onion powder | spice | as-is | dry | 1-6 | 341 10.41 1.04 0.219 79.12 15.2 6.63 73 985 5.39 4.04 | 2.78/8.37/3.84 | 0 | 1 tsp=2.4; 1 tbsp=6.9
04641 | mayonnaise-style dressing, light | light mayo, salad dressing | as-is | condiment | 5-40 | 238 0.37 22.22 3.446 9.23 0 3.56 827 31 66.13 2.05 | - | 0 | 1 tbsp=15
06931 | tomato sauce for pasta, ready to serve | marinara, spaghetti sauce | as-is | canned | 30-250 | 50 1.39 1.61 0.218 7.43 1.8 4.91 437 320 87.87 1.7 | - | 0 | 1 serving 1/2 cup=132
19165 | cocoa powder, unsweetened | - | as-is | dry | 3-20 | 228 19.6 13.7 8.07 57.9 37 1.75 21 1524 3 5.8 | 1.83/8.37/1.33 | 0 | 1 cup=86; 1 tbsp=5.4
`,
  },
];
