import type { FoodSection } from '../food-section.ts';

/** Columns: see ../foods.ts. Composition and measures: source usda-sr28; names, servings and classes: ours. */
export const foodsMeat: readonly FoodSection[] = [
  {
    group: 'beef-cuts',
    aisle: 'meat',
    rows: `
23354 | beef top round steak, lean only, raw | rump, topside, london broil | raw | raw-meat | 100-300 | 121 23.59 2.94 1.12 0 0 0 54 313 72.96 1.12 | - | 1 | 1 steak=344
23656 | beef flank steak, lean only, raw | bavette | raw | raw-meat | 100-300 | 141 21.57 5.47 2.058 0 0 0 55 340 72.08 1.02 | 4.27/9.02/3.87 | 3 | 1 steak=188
23261 | beef top sirloin, petite roast or fillet, lean only, raw | sirloin, rump | raw | raw-meat | 100-300 | 128 23.04 3.98 1.285 0 0 0 65 395 72.67 1.06 | - | 7 | 1 fillet=180; 1 roast=970
23611 | beef top sirloin steak, lean only, raw | sirloin steak, rump steak | raw | raw-meat | 100-300 | 131 22.09 4.08 1.508 0 0 0 56 349 72.91 1.14 | 4.27/9.02/3.87 | 16 | 1 oz=28.35; 1 lb=453.6
13491 | beef top round steak, lean only, grilled | rump, topside, cooked | cooked | cooked-meat | 80-250 | 162 30.09 3.77 1.556 0 0 0 75 435 64.28 1.29 | 4.27/9.02/3.87 | 0 | 1 steak=277
23654 | beef flank steak, lean only, grilled | bavette, cooked, broiled | cooked | cooked-meat | 80-250 | 186 27.89 7.4 3.07 0 0 0 57 350 64.79 1.1 | 4.27/9.02/3.87 | 1 | 1 steak=383
23259 | beef top sirloin, petite roast, lean only, roasted | sirloin, rump, cooked | cooked | cooked-meat | 80-250 | 170 29.12 5.92 1.742 0 0 0 57 377 63.93 1.12 | - | 6 | 1 roast=768
23610 | beef top sirloin steak, lean only, grilled | sirloin steak, rump steak, cooked, broiled | cooked | cooked-meat | 80-250 | 178 29.42 5.84 2.224 0 0 0 61 376 64.29 1.2 | 4.27/9.02/3.87 | 17 | 1 oz=28.35; 1 lb=453.6
`,
  },
  {
    group: 'game',
    aisle: 'meat',
    rows: `
17343 | minced venison, raw | ground deer, game | raw | raw-mince | 100-300 | 157 21.78 7.13 3.361 0 0 0 75 330 71.15 0.88 | 4.27/9.02/3.87 | 0 | 1 patty (cooked from 4 oz raw)=85
17331 | minced bison, pan-broiled | ground buffalo, cooked, game | cooked | cooked-meat | 80-250 | 238 23.77 15.13 6.461 0 0 0 73 341 59.53 1.02 | 4.27/9.02/3.87 | 0 | 1 patty (yield from 112.7 g raw meat)=87; 1 serving (3 oz)=85
17344 | minced venison, pan-broiled | ground deer, cooked, game | cooked | cooked-meat | 80-250 | 187 26.45 8.22 3.993 0 0 0 78 364 64.23 1.07 | 4.27/9.02/3.87 | 0 | 1 patty=93; 1 serving (3 oz)=85
`,
  },
  {
    group: 'pork',
    aisle: 'meat',
    rows: `
10060 | pork tenderloin, lean only, raw | pork fillet | raw | raw-meat | 100-300 | 109 20.95 2.17 0.698 0 0 0 53 399 76 1.03 | 4.27/9.02/3.87 | 5 | 1 roast=505
10219 | minced pork, raw | ground pork | raw | raw-mince | 100-300 | 263 16.88 21.19 7.87 0 0 - 56 287 61.06 0.87 | 4.27/9.02/3.87 | 0 | 1 oz=28.35; 4 oz=113
10061 | pork tenderloin, lean only, roasted | pork fillet, cooked | cooked | cooked-meat | 80-250 | 143 26.17 3.51 1.198 0 0 0 57 421 69.45 1.21 | 4.27/9.02/3.87 | 4 | 1 piece, cooked, excluding refuse (yield from 1 lb raw meat with refuse)=333; 1 roast=402
10220 | minced pork, cooked | ground pork | cooked | cooked-meat | 80-250 | 297 25.69 20.77 7.72 0 0 0 73 362 52.75 1.29 | 4.27/9.02/3.87 | 0 | 3 oz=85
`,
  },
];
