import type { FoodSection } from '../food-section.ts';

/** Columns: see ../foods.ts. Composition and measures: source usda-sr28; names, servings and classes: ours. */
export const foodsFatsAndNuts: readonly FoodSection[] = [
  {
    group: 'oil-and-fat',
    aisle: 'oils and fats',
    rows: `
04053 | olive oil | fat | as-is | oil | 3-25 | 884 0 100 13.808 0 0 0 2 1 0 0 | - | 0 | 1 tbsp=13.5; 1 cup=216; 1 tsp=4.5
04582 | rapeseed oil | canola oil, fat | as-is | oil | 3-25 | 884 0 100 7.365 0 0 0 0 0 0 0 | - | 0 | 1 tbsp=14; 1 cup=218; 1 tsp=4.5
04581 | avocado oil | fat | as-is | oil | 3-25 | 884 0 100 11.56 0 0 - 0 0 0 0 | - | 0 | 1 tbsp=14; 1 cup=218; 1 tsp=4.5
04047 | coconut oil | fat | as-is | oil | 3-25 | 892 0 99.06 82.475 0 0 0 0 0 0.03 0.03 | - | 0 | 1 tbsp=13.6; 1 cup=218; 1 tsp=4.5
04058 | sesame oil | fat | as-is | oil | 3-25 | 884 0 100 14.2 0 0 0 0 0 0 0 | - | 0 | 1 tbsp=13.6; 1 cup=218; 1 tsp=4.5
01001 | butter, salted | fat | as-is | butter | 5-30 | 717 0.85 81.11 51.368 0.06 0 0.06 643 24 15.87 2.11 | 4.27/8.79/3.87 | 0 | 1 pat (1 in sq, 1/3 in high)=5; 1 tbsp=14.2; 1 cup=227; 1 stick=113
01145 | butter, unsalted | fat | as-is | butter | 5-30 | 717 0.85 81.11 50.489 0.06 0 0.06 11 24 17.94 0.09 | 4.27/8.79/3.87 | 0 | 1 pat (1 in sq, 1/3 in high)=5; 1 tbsp=14.2; 1 cup=227; 1 stick=113
04589 | cod liver oil | fish oil | as-is | oil | 4-14 | 902 0 100 22.608 0 0 - 0 0 0 0 | - | 0 | 1 tsp=4.5; 1 tbsp=13.6; 1 cup=218
`,
  },
  {
    group: 'nut-and-seed',
    aisle: 'nuts and seeds',
    rows: `
12061 | almonds | nuts | as-is | dry | 10-50 | 579 21.15 49.93 3.802 21.55 12.5 4.35 1 733 4.41 2.97 | 3.47/8.37/4.07 | 60 | 1 cup, whole=143; 1 cup, sliced=92; 1 cup, slivered=108; 1 cup, ground=95; 1 oz (23 whole kernels)=28.35; 1 almond=1.2
12155 | walnuts | nuts | as-is | dry | 10-50 | 654 15.23 65.21 6.126 13.71 6.7 2.61 2 441 4.07 1.78 | 3.47/8.37/4.07 | 55 | 1 cup, chopped=117; 1 cup, ground=80; 1 cup, in shell, edible yield (7 nuts)=28; 1 cup shelled (50 halves)=100; 1 cup pieces or chips=120; 1 oz (14 halves)=28.35
12087 | cashews, raw | nuts | as-is | dry | 10-50 | 553 18.22 43.85 7.783 30.19 3.3 5.91 12 660 5.2 2.54 | 3.47/8.37/4.07 | 0 | 1 oz=28.35
12085 | cashews, dry roasted | nuts, roasted | as-is | dry | 10-50 | 574 15.31 46.35 9.157 32.69 3 5.01 16 565 1.7 3.95 | 3.47/8.37/4.07 | 0 | 1 cup, halves and whole=137; 1 tbsp=8.6
12006 | chia seeds | seeds | as-is | dry | 5-40 | 486 16.54 30.74 3.33 42.12 34.4 - 16 407 5.8 4.8 | 3.47/8.37/4.07 | 0 | 1 oz=28.35
16087 | peanuts, raw | groundnuts, nuts | as-is | dry | 10-50 | 567 25.8 49.24 6.279 16.13 8.5 4.72 18 705 6.5 2.33 | 3.47/8.37/4.07 | 0 | 1 cup=146
16098 | peanut butter, smooth, salted | nut butter | as-is | dry | 8-45 | 598 22.21 51.36 10.325 22.31 5 10.49 426 558 1.23 2.89 | 3.47/8.37/4.07 | 0 | 2 tbsp=32; 1 cup=258
12195 | almond butter, unsalted | nut butter | as-is | dry | 8-45 | 614 20.96 55.5 4.152 18.82 10.3 4.43 7 748 1.64 3.09 | 3.47/8.37/4.07 | 0 | 1 tbsp=16; 1 cup=250
16099 | peanut flour, defatted | powdered peanut butter, peanut powder | as-is | dry | 8-40 | 327 52.2 0.55 0.063 34.7 15.8 8.22 180 1290 7.8 4.75 | 3.47/8.37/4.07 | 0 | 1 cup=60
16100 | peanut flour, low fat | powdered peanut butter, peanut powder | as-is | dry | 8-40 | 428 33.8 21.9 3.04 31.27 15.8 - 1 1358 7.8 5.23 | 3.47/8.37/4.07 | 0 | 1 cup=60
`,
  },
];
