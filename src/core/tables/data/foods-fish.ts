import type { FoodSection } from '../food-section.ts';

/** Columns: see ../foods.ts. Composition and measures: source usda-sr28; names, servings and classes: ours. */
export const foodsFish: readonly FoodSection[] = [
  {
    group: 'fish',
    aisle: 'fish',
    rows: `
15015 | cod, Atlantic, raw | white fish | raw | raw-fish | 100-300 | 82 17.81 0.67 0.131 0 0 0 54 413 81.22 1.16 | 4.27/9.02/3.87 | 0 | 1 fillet=231
15019 | cod, Pacific, raw | white fish | raw | raw-fish | 100-300 | 69 15.27 0.41 0.085 0 0 0 303 235 83.95 1.46 | 4.27/9.02/3.87 | 0 | 1 fillet=116
15261 | tilapia, raw | white fish | raw | raw-fish | 100-300 | 96 20.08 1.7 0.585 0 0 0 52 302 78.08 0.93 | - | 0 | 1 fillet=116
15028 | flatfish (flounder, sole), raw | white fish, plaice | raw | raw-fish | 100-300 | 70 12.41 1.93 0.441 0 0 0 296 160 84.63 1.22 | 4.27/9.02/3.87 | 0 | 1 fillet=163
15033 | haddock, raw | white fish | raw | raw-fish | 100-300 | 74 16.32 0.45 0.091 0 0 0 213 286 83.38 1.28 | 4.27/9.02/3.87 | 0 | 1 fillet=193
15036 | halibut, raw | white fish | raw | raw-fish | 100-300 | 91 18.56 1.33 0.292 0 0 0 68 435 80.34 1.29 | 4.27/9.02/3.87 | 0 | 0.5 fillet=204
15066 | pollock, Alaska, raw | white fish | raw | raw-fish | 100-300 | 56 12.19 0.41 0.124 0 0 0 333 160 86.75 1.36 | 4.27/9.02/3.87 | 0 | 1 fillet=77
15236 | salmon, Atlantic, farmed, raw | oily fish | raw | raw-fatty-fish | 100-300 | 208 20.42 13.42 3.05 0 0 0 59 363 64.89 1.13 | 4.27/9.02/3.87 | 0 | 0.5 fillet=198
15085 | salmon, sockeye, raw | oily fish, wild salmon, red salmon | raw | raw-fatty-fish | 100-300 | 131 22.25 4.69 0.814 0 0 0 78 367 72.54 1.26 | - | 0 | 0.5 fillet=198
15127 | tuna, yellowfin, raw | tuna steak, ahi | raw | raw-fish | 100-300 | 109 24.4 0.49 0.172 0 0 0 45 441 74.03 1.64 | 4.27/9.02/3.87 | 0 | 1 cubic inch, boneless=16
15240 | trout, rainbow, farmed, raw | oily fish | raw | raw-fatty-fish | 100-300 | 141 19.94 6.18 1.383 0 0 0 51 377 73.8 1.21 | 4.27/9.02/3.87 | 0 | 1 fillet=79
15149 | prawns (shrimp), raw | shellfish | raw | raw-shellfish | 100-300 | 71 13.61 1.01 0.261 0.91 0 0 566 113 83.01 1.86 | 4.27/9.02/4.11 | 0 | 1 medium=6; 1 small=5; 4 large=28
15016 | cod, Atlantic, cooked by dry heat | white fish, baked, grilled | cooked | cooked-fish | 80-250 | 105 22.83 0.86 0.168 0 0 0 78 244 75.92 1.49 | 4.27/9.02/3.87 | 0 | 1 fillet=180
15192 | cod, Pacific, cooked by dry heat | white fish, baked, grilled | cooked | cooked-fish | 80-250 | 85 18.73 0.5 0.105 0 0 0 372 289 80.31 1.8 | 4.27/9.02/3.87 | 0 | 1 fillet=90
15262 | tilapia, cooked by dry heat | white fish, baked, grilled | cooked | cooked-fish | 80-250 | 128 26.15 2.65 0.94 0 0 0 56 380 71.59 1.14 | - | 0 | 1 fillet=87
15029 | flatfish (flounder, sole), cooked by dry heat | white fish, plaice, baked, grilled | cooked | cooked-fish | 80-250 | 86 15.24 2.37 0.542 0 0 0 363 197 81.11 1.49 | 4.27/9.02/3.87 | 0 | 1 fillet=127
15034 | haddock, cooked by dry heat | white fish, baked, grilled | cooked | cooked-fish | 80-250 | 90 19.99 0.55 0.111 0 0 0 261 351 79.65 1.56 | 4.27/9.02/3.87 | 0 | 1 fillet=150
15037 | halibut, cooked by dry heat | white fish, baked, grilled | cooked | cooked-fish | 80-250 | 111 22.54 1.61 0.354 0 0 0 82 528 76.12 1.57 | 4.27/9.02/3.87 | 0 | 0.5 fillet=159
15067 | pollock, Alaska, cooked by dry heat | white fish, baked, grilled | cooked | cooked-fish | 80-250 | 111 23.48 1.18 0.159 0 0 0 419 430 73.65 1.7 | 4.27/9.02/3.87 | 0 | 1 fillet=60
15237 | salmon, Atlantic, farmed, cooked by dry heat | oily fish, baked, grilled | cooked | cooked-fish | 80-250 | 206 22.1 12.35 2.397 0 0 0 61 384 64.75 1.15 | 4.27/9.02/3.87 | 0 | 0.5 fillet=178
15086 | salmon, sockeye, cooked by dry heat | oily fish, wild salmon, baked, grilled | cooked | cooked-fish | 80-250 | 156 26.48 5.57 0.969 0 0 0 92 436 67.33 1.5 | - | 0 | 0.5 fillet=155
15221 | tuna, yellowfin, cooked by dry heat | tuna steak, ahi, grilled | cooked | cooked-fish | 80-250 | 130 29.15 0.59 0.205 0 0 0 54 527 68.98 1.96 | 4.27/9.02/3.87 | 0 | 3 oz=85
15241 | trout, rainbow, farmed, cooked by dry heat | oily fish, baked, grilled | cooked | cooked-fish | 80-250 | 168 23.8 7.38 1.651 0 0 0 61 450 68.72 1.44 | 4.27/9.02/3.87 | 0 | 1 fillet=71
15151 | prawns (shrimp), cooked by moist heat | shellfish, boiled, steamed | cooked | cooked-fish | 80-250 | 119 22.78 1.7 0.521 1.52 0 0 947 170 71.56 3.11 | 4.27/9.02/4.11 | 0 | 4 large=22
15121 | tuna, light, canned in water, drained | tinned tuna, skipjack | as-is | canned | 40-200 | 86 19.44 0.96 0.211 0 0 0 247 179 78.14 0.95 | - | 0 | 1 can=165; 1 cup, solid or chunks=154; 1 can (12.5 oz), drained=315
15126 | tuna, white, canned in water, drained | tinned tuna, albacore | as-is | canned | 40-200 | 128 23.62 2.97 0.792 0 0 0 377 237 73.19 1.46 | 4.27/9.02/3.87 | 0 | 1 can=172
15087 | salmon, sockeye, canned, drained | tinned salmon | as-is | canned | 40-200 | 167 23.59 7.39 1.44 0 0 0 408 314 68.07 2.47 | 4.27/9.02/3.87 | 0 | 1 can=337
15088 | sardines, canned in oil, drained, with bone | tinned sardines | as-is | canned | 40-150 | 208 24.62 11.45 1.528 0 0 0 307 397 59.61 3.38 | 4.27/9/3.87 | 0 | 1 cup, drained=149; 1 cubic inch=16; 1 can (3.75 oz)=92; 1 small (2-2/3 in x 1/2 in x 1/4 in)=12; 2 sardines=24
`,
  },
];
