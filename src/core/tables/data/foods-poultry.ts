import type { FoodSection } from '../food-section.ts';

/** Columns: see ../foods.ts. Composition and measures: source usda-sr28; names, servings and classes: ours. */
export const foodsPoultry: readonly FoodSection[] = [
  {
    group: 'chicken',
    aisle: 'meat',
    rows: `
05062 | chicken breast, skinless, raw | poultry, fillet | raw | raw-poultry | 100-300 | 120 22.5 2.62 0.563 0 0 0 45 334 73.9 1.13 | 4.27/9.02/3.87 | 0 | 1 piece=272; 1 package=926
05314 | chicken breast, skinless, with added solution, raw | poultry, enhanced, brined, fillet | raw | raw-poultry | 100-300 | 108 20.32 3 0.545 0 0 0 173 332 75.59 1.36 | - | 0 | 1 piece=263; 0.5 breast=118
05332 | minced chicken, raw | ground chicken, poultry | raw | raw-poultry-mince | 100-300 | 143 17.44 8.1 2.301 0.04 0 0 60 522 73.24 1.17 | - | 0 | 4 oz crumbled=112
05096 | chicken thigh, skinless, raw | poultry, dark meat | raw | raw-poultry | 100-300 | 121 19.66 4.12 1.097 0 0 0 95 242 76.22 0.95 | 4.27/9.02/3.87 | 25 | 1 thigh without skin=149
05064 | chicken breast, skinless, roasted | poultry, cooked, baked | cooked | cooked-meat | 80-250 | 165 31.02 3.57 1.01 0 0 0 74 256 65.26 1.06 | 4.27/9.02/3.87 | 28 | 1 cup, chopped or diced=140; 1 unit (yield from 1 lb ready-to-cook chicken)=52; 0.5 breast, bone and skin removed=86
05065 | chicken breast, skinless, stewed | poultry, cooked, boiled, simmered, poached | cooked | cooked-meat | 80-250 | 151 28.98 3.03 0.85 0 0 0 63 187 68.27 0.91 | 4.27/9.02/3.87 | 30 | 1 cup, chopped or diced=140; 1 unit (yield from 1 lb ready-to-cook chicken)=57; 0.5 breast, bone and skin removed=95
05747 | chicken breast, skinless, grilled | poultry, cooked | cooked | cooked-meat | 80-250 | 151 30.54 3.17 0.992 0 0 0 52 391 66.14 1.33 | - | 0 | 1 piece=196
05746 | chicken breast, skinless, braised | poultry, cooked, slow cooker | cooked | cooked-meat | 80-250 | 157 32.06 3.24 1.01 0 0 0 47 343 65.32 1.19 | - | 0 | 1 piece=181
05333 | minced chicken, crumbled and browned | ground chicken, poultry, cooked, crumbles | cooked | cooked-meat | 80-250 | 189 23.28 10.92 3.11 0 0 0 75 677 64.92 1.57 | 3.87/9.04/4.27 | 0 | 3 oz crumbled=85
05098 | chicken thigh, skinless, roasted | poultry, cooked, dark meat, baked | cooked | cooked-meat | 80-250 | 179 24.76 8.15 2.311 0 0 0 106 269 67 1.04 | 4.27/9.02/3.87 | 48 | 1 thigh without skin=116; 1 thigh with skin=137
05311 | chicken, canned, drained | poultry, tinned | cooked | canned | 80-250 | 185 25.3 8.1 2.25 0.9 0 0 482 153 64.9 0.8 | 4.27/9.02/3.87 | 0 | 1 cup=205; 1 can (5 oz) yields=125
`,
  },
  {
    group: 'turkey',
    aisle: 'meat',
    rows: `
05219 | turkey breast, from a whole bird, skinless, raw | poultry | raw | raw-poultry | 100-300 | 114 23.66 1.48 0.289 0.14 0 0.05 113 242 74.89 1.04 | 4.27/9.02/3.87 | 22 | 1 breast=1769
05710 | turkey breast, retail cut, skinless, raw | poultry, fillet | raw | raw-poultry | 100-300 | 114 23.34 2.33 0.344 0 0 0 74 267 74.66 1.06 | - | 25 | 1 breast=1150
05305 | minced turkey, raw | ground turkey, poultry | raw | raw-poultry-mince | 100-300 | 148 19.66 7.66 2.024 0 0 0 58 237 72.36 1 | - | 0 | 1 patty, 4 oz=114
05662 | minced turkey, fat free, raw | ground turkey breast, poultry, 99/1, extra lean | raw | raw-poultry-mince | 100-300 | 112 23.57 1.95 0.487 0 0 0 51 295 74.66 1.15 | - | 0 | 1 patty (cooked from 4 oz raw)=85
05665 | minced turkey 93/7, raw | ground turkey, poultry, lean | raw | raw-poultry-mince | 100-300 | 150 18.73 8.34 2.17 0 0 0 69 213 72.63 0.92 | - | 0 | 1 serving (cooked from 4 oz)=85
05668 | minced turkey 85/15, raw | ground turkey, poultry | raw | raw-poultry-mince | 100-300 | 180 16.9 12.54 3.414 0 0 0 54 202 69.74 0.96 | - | 0 | 1 patty (cooked from 4 oz raw)=85
05220 | turkey breast, from a whole bird, skinless, roasted | poultry, cooked | cooked | cooked-meat | 80-250 | 147 30.13 2.08 0.593 0 0 0 99 249 67.88 1.22 | 4.27/9.02/3.87 | 19 | 1 breast=1413
05711 | turkey breast, retail cut, skinless, roasted | poultry, cooked | cooked | cooked-meat | 80-250 | 136 29.51 1.97 0.66 0 0 0 114 297 67.53 1.25 | - | 20 | 1 breast=863
05306 | minced turkey, cooked | ground turkey, poultry | cooked | cooked-meat | 80-250 | 203 27.37 10.4 2.669 0 0 0 78 294 62.07 1.26 | - | 0 | 1 patty (4 oz, raw) (yield after cooking)=82; 1 unit, yield from 1 lb raw=330
05663 | minced turkey, fat free, crumbled and pan-broiled | ground turkey breast, poultry, cooked, crumbles | cooked | cooked-meat | 80-250 | 151 31.69 2.71 0.717 0 0 0 61 357 65.76 1.42 | - | 0 | 3 oz=85
05666 | minced turkey 93/7, crumbled and pan-broiled | ground turkey, poultry, cooked, crumbles | cooked | cooked-meat | 80-250 | 213 27.1 11.6 2.966 0 0 0 90 304 61.05 1.27 | - | 0 | 3 oz=85
05669 | minced turkey 85/15, crumbled and pan-broiled | ground turkey, poultry, cooked, crumbles | cooked | cooked-meat | 80-250 | 258 25.11 17.45 4.572 0 0 0 85 276 56.66 1.32 | - | 0 | 3 oz=85
07081 | turkey breast, sliced, packaged | deli turkey, cold cuts, luncheon meat | as-is | deli-meat | 30-120 | 100 16.33 2.37 0.318 2.34 0 3.28 922 401 75.83 3.13 | 4.27/9.02/3.87 | 0 | 1 slice=15
`,
  },
];
