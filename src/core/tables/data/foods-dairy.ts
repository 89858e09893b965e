import type { FoodSection } from '../food-section.ts';

/** Columns: see ../foods.ts. Composition and measures: source usda-sr28; names, servings and classes: ours. */
export const foodsDairy: readonly FoodSection[] = [
  {
    group: 'dairy',
    aisle: 'dairy',
    rows: `
01077 | milk, whole, 3.25 % fat | cow's milk, full fat | as-is | fresh-dairy | 30-500 | 61 3.15 3.25 1.865 4.8 0 5.05 43 132 88.13 0.67 | 4.27/8.79/3.87 | 0 | 1 cup=244; 1 fl oz=30.5; 1 tbsp=15; 1 quart=976
01079 | milk, 2 % fat | cow's milk, semi-skimmed, reduced fat | as-is | fresh-dairy | 30-500 | 50 3.3 1.98 1.257 4.8 0 5.06 47 140 89.21 0.71 | 4.27/8.79/3.87 | 0 | 1 cup=244; 1 fl oz=30.5; 1 quart=976
01082 | milk, 1 % fat | cow's milk, low fat | as-is | fresh-dairy | 30-500 | 42 3.37 0.97 0.633 4.99 0 5.2 44 150 89.92 0.75 | 4.27/8.79/3.87 | 0 | 1 cup=244; 1 fl oz=30.5; 1 quart=976
01085 | milk, skimmed | cow's milk, nonfat, fat free | as-is | fresh-dairy | 30-500 | 34 3.37 0.08 0.056 4.96 0 5.09 42 156 90.84 0.75 | 4.27/8.79/3.87 | 0 | 1 cup=245; 1 fl oz=30.6; 1 quart=980
01256 | Greek yoghurt, plain, fat free | yogurt, nonfat, 0 %, strained | as-is | fresh-dairy | 100-400 | 59 10.19 0.39 0.117 3.6 0 3.24 36 141 85.1 0.72 | - | 0 | 1 container=170
01287 | Greek yoghurt, plain, low fat | yogurt, 2 %, strained | as-is | fresh-dairy | 100-400 | 73 9.95 1.92 1.23 3.94 0 3.56 34 141 83.56 0.63 | - | 0 | 1 container (7 oz)=200
01293 | Greek yoghurt, plain, whole milk | yogurt, full fat, strained | as-is | fresh-dairy | 100-400 | 97 9 5 2.395 3.98 0 4 35 141 81.3 0.72 | - | 0 | -
01117 | yoghurt, plain, low fat | yogurt, natural | as-is | fresh-dairy | 100-400 | 63 5.25 1.55 1 7.04 0 7.04 70 234 85.07 1.09 | 4.27/8.79/3.87 | 0 | 1 container (6 oz)=170; 1 container (8 oz)=227; 0.5 container (4 oz)=113; 1 cup (8 fl oz)=245
01118 | yoghurt, plain, skimmed milk | yogurt, nonfat, natural | as-is | fresh-dairy | 100-400 | 56 5.73 0.18 0.116 7.68 0 7.68 77 255 85.23 1.18 | 4.27/8.79/3.87 | 0 | 1 container (6 oz)=170; 1 container (8 oz)=227; 1 cup (8 fl oz)=245
01012 | cottage cheese, creamed | curd | as-is | fresh-dairy | 50-300 | 98 11.12 4.3 1.718 3.38 0 2.67 364 104 79.79 1.41 | 4.27/8.79/3.87 | 0 | 1 cup, large curd (not packed)=210; 1 cup, small curd (not packed)=225
01014 | cottage cheese, fat free, dry curd | curd, nonfat | as-is | fresh-dairy | 50-300 | 72 10.34 0.29 0.169 6.66 0 1.85 372 137 81.01 1.71 | 4.27/8.79/3.87 | 0 | 1 cup (not packed)=145
01015 | cottage cheese, 2 % fat | curd, low fat | as-is | fresh-dairy | 50-300 | 81 10.45 2.27 1.235 4.76 0 4 308 125 81.24 1.27 | - | 0 | 1 cup (not packed)=226
01016 | cottage cheese, 1 % fat | curd, low fat | as-is | fresh-dairy | 50-300 | 72 12.39 1.02 0.645 2.72 0 2.72 406 86 82.48 1.39 | 4.27/8.79/3.87 | 0 | 1 cup (not packed)=226
01009 | cheddar cheese | hard cheese | as-is | hard-cheese | 15-60 | 404 22.87 33.31 18.867 3.09 0 0.48 653 76 37.02 3.71 | - | 0 | 1 cup, diced=132; 1 cup, melted=244; 1 cup, shredded=113; 1 cubic inch=17; 1 slice (1 oz)=28
01028 | mozzarella, part skimmed | cheese | as-is | hard-cheese | 15-80 | 254 24.26 15.92 10.114 2.77 0 1.13 619 84 53.78 3.27 | 4.27/8.79/3.87 | 0 | 1 oz=28.35
01017 | cream cheese | soft cheese | as-is | fresh-dairy | 10-50 | 350 6.15 34.44 20.213 5.52 0 3.76 314 132 52.62 1.27 | 4.27/8.79/3.87 | 0 | 1 tbsp=14.5; 1 cup=232; 1 tbsp, whipped=10; 1 cubic inch=16; 1 package, small (3 oz)=85
01260 | cheddar cheese, reduced fat | hard cheese, light | as-is | hard-cheese | 15-60 | 309 27.35 20.41 12.602 4.06 0 0.26 628 63 44.29 3.89 | - | 0 | 1 slice=21
`,
  },
];
