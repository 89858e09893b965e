import type { FoodSection } from '../food-section.ts';

/** Columns: see ../foods.ts. Composition and measures: source usda-sr28; names, servings and classes: ours. */
export const foodsBeefMinced: readonly FoodSection[] = [
  {
    group: 'beef-minced',
    aisle: 'meat',
    rows: `
13498 | minced beef 70/30, raw | ground beef, hamburger, 30 % fat | raw | raw-mince | 100-300 | 332 14.35 30 11.754 0 0 0 66 218 54.3 0.7 | 4.27/9.02/3.87 | 0 | 4 oz=113; 1 oz=28.35
23577 | minced beef 75/25, raw | ground beef, hamburger, 25 % fat | raw | raw-mince | 100-300 | 293 15.76 25 9.568 0 0 0 66 244 58.09 0.77 | 4.27/9.02/3.87 | 0 | 1 serving (3 oz)=85
23572 | minced beef 80/20, raw | ground beef, hamburger, ground chuck, 20 % fat | raw | raw-mince | 100-300 | 254 17.17 20 7.581 0 0 0 66 270 61.87 0.84 | 4.27/9.02/3.87 | 0 | 4 oz=113
23567 | minced beef 85/15, raw | ground beef, hamburger, 15 % fat | raw | raw-mince | 100-300 | 215 18.59 15 5.715 0 0 0 66 295 65.66 0.91 | 4.27/9.02/3.87 | 0 | 3 oz=85
23562 | minced beef 90/10, raw | ground beef, lean hamburger, 10 % fat | raw | raw-mince | 100-300 | 176 20 10 3.927 0 0 0 66 321 69.45 0.98 | 4.27/9.02/3.87 | 0 | 4 oz=113
23472 | minced beef 93/7, raw | ground beef, lean hamburger, 7 % fat | raw | raw-mince | 100-300 | 152 20.85 7 2.878 0 0 0 66 336 71.72 1.02 | 4.27/9.02/3.87 | 0 | 4 oz=113
23557 | minced beef 95/5, raw | ground beef, extra lean, 5 % fat | raw | raw-mince | 100-300 | 137 21.41 5 2.182 0 0 0 66 346 73.24 1.05 | 4.27/9.02/3.87 | 0 | 4 oz=113
23477 | minced beef 97/3, raw | ground beef, extra lean, 3 % fat | raw | raw-mince | 100-300 | 121 21.98 3 1.48 0 0 0 66 357 74.75 1.07 | 4.27/9.02/3.87 | 0 | 4 oz=113
13494 | minced beef 70/30, crumbled and browned | ground beef, cooked, crumbles, 30 % fat | cooked | cooked-meat | 80-250 | 270 25.56 17.86 6.942 0 0 0 96 328 55.78 1.04 | 4.27/9.02/3.87 | 0 | 1 portion (yield from 1/2 lb raw meat)=139
23580 | minced beef 75/25, crumbled and browned | ground beef, cooked, crumbles, 25 % fat | cooked | cooked-meat | 80-250 | 277 26.28 18.21 6.926 0 0 0 93 354 54.5 1.1 | 4.27/9.02/3.87 | 0 | 3 oz=85
23575 | minced beef 80/20, crumbled and browned | ground beef, cooked, crumbles, 20 % fat | cooked | cooked-meat | 80-250 | 272 27 17.36 6.546 0 0 0 91 380 54.54 1.16 | 4.27/9.02/3.87 | 0 | 3 oz=85
23574 | minced beef 80/20, patty, pan-broiled | ground beef, cooked, burger, hamburger patty, fried | cooked | cooked-meat | 80-250 | 246 24.04 15.94 6.029 0 0 0 83 335 59.11 1.06 | 4.27/9.02/3.87 | 0 | 3 oz=85
23573 | minced beef 80/20, patty, grilled | ground beef, cooked, burger, hamburger patty, broiled | cooked | cooked-meat | 80-250 | 270 25.75 17.78 6.764 0 0 0 75 304 55.99 1 | 4.27/9.02/3.87 | 0 | -
23570 | minced beef 85/15, crumbled and browned | ground beef, cooked, crumbles, 15 % fat | cooked | cooked-meat | 80-250 | 256 27.73 15.3 5.806 0 0 0 89 407 55.9 1.22 | 4.27/9.02/3.87 | 0 | 3 oz=85
23565 | minced beef 90/10, crumbled and browned | ground beef, cooked, crumbles, 10 % fat | cooked | cooked-meat | 80-250 | 230 28.45 12.04 4.712 0 0 0 87 433 58.58 1.28 | 4.27/9.02/3.87 | 0 | 1 portion (yield from 1/2 lb raw meat)=154
23564 | minced beef 90/10, patty, pan-broiled | ground beef, cooked, burger, hamburger patty, fried | cooked | cooked-meat | 80-250 | 204 25.21 10.68 4.189 0 0 0 75 363 63.21 1.08 | 4.27/9.02/3.87 | 0 | 3 oz=85
23563 | minced beef 90/10, patty, grilled | ground beef, cooked, burger, hamburger patty, broiled | cooked | cooked-meat | 80-250 | 217 26.11 11.75 4.628 0 0 0 68 333 61.24 1.04 | 4.27/9.02/3.87 | 0 | 3 oz=85
23476 | minced beef 93/7, crumbled and browned | ground beef, cooked, crumbles, 7 % fat | cooked | cooked-meat | 80-250 | 209 28.88 9.51 3.897 0 0 0 86 449 60.82 1.32 | 4.27/9.02/3.87 | 0 | 3 oz=85
23560 | minced beef 95/5, crumbled and browned | ground beef, cooked, crumbles, 5 % fat | cooked | cooked-meat | 80-250 | 193 29.17 7.58 3.298 0 0 0 85 459 62.58 1.34 | 4.27/9.02/3.87 | 0 | 3 oz=85
23481 | minced beef 97/3, crumbled and browned | ground beef, cooked, crumbles, 3 % fat | cooked | cooked-meat | 80-250 | 175 29.46 5.46 2.686 0 0 0 84 470 64.55 1.36 | 4.27/9.02/3.87 | 0 | 3 oz=85
`,
  },
];
