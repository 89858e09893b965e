import type { FoodSection } from '../food-section.ts';

/** Columns: see ../foods.ts. Composition and measures: source usda-sr28; names, servings and classes: ours. */
export const foodsVegetables: readonly FoodSection[] = [
  {
    group: 'vegetable',
    aisle: 'vegetables',
    rows: `
11282 | onion, raw | onions | raw | fresh-produce | 20-150 | 40 1.1 0.1 0.042 9.34 1.7 4.24 4 146 89.11 0.35 | 2.78/8.37/3.84 | 10 | 1 cup, chopped=160; 1 cup, sliced=115; 1 tbsp chopped=10; 1 large=150; 1 slice, large (1/4 in thick)=38; 1 medium (2-1/2 in across)=110; 1 slice, medium (1/8 in thick)=14; 1 small=70; 1 slice, thin=9; 10 rings=60
11457 | spinach, raw | leaf spinach, greens | raw | fresh-produce | 20-150 | 23 2.86 0.39 0.063 3.63 2.2 0.42 79 558 91.4 1.72 | 2.44/8.37/3.57 | 28 | 1 cup=30; 1 bunch=340; 1 leaf=10; 1 package (10 oz)=284
11090 | broccoli, raw | - | raw | fresh-produce | 50-300 | 34 2.82 0.37 0.039 6.64 2.6 1.7 33 316 89.3 0.87 | 2.44/8.37/3.57 | 39 | 1 cup chopped=91; 1 bunch=608; 1 spear (about 5 in long)=31; 1 stalk=151; 0.5 cup, chopped or diced=44; 1 label serving=148
11011 | asparagus, raw | spears | raw | fresh-produce | 50-300 | 20 2.2 0.12 0.04 3.88 2.1 1.88 2 202 93.22 0.58 | 2.44/8.37/3.57 | 47 | 1 cup=134; 1 spear, small (5 in long or less)=12; 1 spear, medium (5-1/4 to 7 in long)=16; 1 spear, large (7-1/4 to 8-1/2 in)=20; 1 spear, extra large (8-3/4 to 10 in long)=24; 1 spear tip (2 in long or less)=3.5
11052 | green beans, raw | snap beans, string beans, French beans | raw | fresh-produce | 50-300 | 31 1.83 0.22 0.05 6.97 2.7 3.26 6 211 90.32 0.66 | 2.44/8.37/3.57 | 12 | 1 cup 1/2 in pieces=100; 10 beans (4 in long)=55
11124 | carrot, raw | carrots | raw | fresh-produce | 50-300 | 41 0.93 0.24 0.037 9.58 2.8 4.74 69 320 88.29 0.97 | 2.78/8.37/3.84 | 11 | 1 cup chopped=128; 1 cup grated=110; 1 cup strips or slices=122; 1 large (7-1/4 to 8-1/2 in long)=72; 1 medium=61; 1 small (5-1/2 in long)=50; 1 slice=3; 1 strip large (3 in long)=7; 1 strip medium=4
11135 | cauliflower, raw | - | raw | fresh-produce | 50-300 | 25 1.92 0.28 0.13 4.97 2 1.91 30 299 92.07 0.76 | 2.44/8.37/3.57 | 61 | 1 cup chopped (1/2 in pieces)=107; 1 floret=13; 1 head large (6-7 in across)=840; 1 head medium (5-6 in across)=588; 1 head small (4 in across)=265
11333 | green pepper, raw | bell pepper, capsicum, sweet pepper | raw | fresh-produce | 50-300 | 20 0.86 0.17 0.058 4.64 1.7 2.4 3 175 93.89 0.43 | 2.44/8.37/3.57 | 18 | 1 cup, chopped=149; 1 cup, sliced=92; 1 tbsp=9.3; 1 large (2-1/4 per lb, approx 3-3/4 in long, 3 in across)=164; 1 medium (approx 2-3/4 in long, 2-1/2 in across)=119; 1 ring (3 in across, 1/4 in thick)=10; 1 small=74; 10 strips=27
11821 | red pepper, raw | bell pepper, capsicum, sweet pepper | raw | fresh-produce | 50-300 | 31 0.99 0.3 0.027 6.03 2.1 4.2 4 211 92.21 0.47 | - | 18 | 1 cup, chopped=149; 1 cup, sliced=92; 1 tbsp=9.3; 1 large (2-1/4 per lb, approx 3-3/4 in long, 3 in across)=164; 1 medium (approx 2-3/4 in long, 2-1/2 across)=119; 1 small=74; 1 ring (3 in across, 1/4 in thick)=10
11260 | white mushrooms, raw | champignons, button mushrooms | raw | fresh-produce | 30-250 | 22 3.09 0.34 0.05 3.26 1 1.98 5 318 92.45 0.85 | 2.62/8.37/3.48 | 3 | 1 cup, pieces or slices=70; 1 cup, whole=96; 1 large=23; 1 medium=18; 1 slice=6; 1 small=10; 0.5 cup pieces=35
11477 | courgette with skin, raw | zucchini, summer squash | raw | fresh-produce | 50-300 | 17 1.21 0.32 0.084 3.11 1 2.5 8 261 94.79 0.58 | 2.44/8.37/3.57 | 5 | 1 cup, chopped=124; 1 cup, sliced=113; 1 large=323; 1 medium=196; 1 slice=9.9; 1 small=118
11251 | cos lettuce, raw | romaine lettuce, salad | raw | fresh-produce | 30-200 | 17 1.23 0.3 0.039 3.29 2.1 1.19 8 247 94.61 0.58 | 2.44/8.37/3.57 | 6 | 1 cup shredded=47; 1 leaf inner=6; 1 leaf outer=28; 1 head=626; 1 label serving=85
11205 | cucumber with peel, raw | salad | raw | fresh-produce | 50-300 | 15 0.65 0.11 0.037 3.63 0.5 1.67 2 147 95.23 0.38 | 2.44/8.37/3.57 | 3 | 0.5 cup slices=52; 1 cucumber (8-1/4 in)=301
11143 | celery, raw | stalks | raw | fresh-produce | 50-300 | 16 0.69 0.17 0.042 2.97 1.6 1.34 80 260 95.43 0.75 | - | 11 | 1 cup chopped=101; 1 label serving=110; 1 tbsp=7.5; 1 stalk, large (11 - 12 in long)=64; 1 stalk, medium (7-1/2 - 8 in long)=40; 1 stalk, small (5 in long)=17; 1 strip (4 in long)=4
11215 | garlic, raw | cloves | raw | fresh-produce | 3-15 | 149 6.36 0.5 0.089 33.06 2.1 1 17 401 58.58 1.5 | 2.78/8.37/3.84 | 13 | 1 cup=136; 1 tsp=2.8; 1 clove=3; 3 cloves=9
11529 | tomato, raw | tomatoes | raw | fresh-produce | 50-300 | 18 0.88 0.2 0.028 3.89 1.2 2.63 5 237 94.52 0.5 | 2.44/8.37/3.57 | 9 | 1 cup cherry tomatoes=149; 1 cup, chopped or sliced=180; 1 Italian tomato=62; 1 cherry=17; 1 large whole (3 in across)=182; 1 medium whole (2-3/5 in across)=123; 1 slice, medium (1/4 in thick)=20; 1 plum tomato=62; 1 small whole (2-2/5 in across)=91; 1 slice, thick/large (1/2 in thick)=27; 1 wedge (1/4 of medium tomato)=31; 1 slice, thin/small=15; 1 label serving=148
11291 | spring onion, raw | scallions, green onions | raw | fresh-produce | 5-60 | 32 1.83 0.19 0.032 7.34 2.6 2.33 16 276 89.83 0.81 | 2.44/8.37/3.57 | 4 | 1 cup, chopped=100; 1 tbsp chopped=6; 1 large=25; 1 medium (4-1/8 in long)=15; 1 small (3 in long)=5
11286 | onion, sauteed in fat | onions, fried, cooked | cooked | cooked-dish | 20-150 | 132 0.95 10.8 1.477 7.86 1.7 - 12 133 80.01 0.38 | - | 0 | 1 cup chopped=87
11283 | onion, boiled, drained | onions, cooked | cooked | cooked-dish | 20-150 | 44 1.36 0.19 0.031 10.15 1.4 4.73 3 166 87.86 0.44 | 2.78/8.37/3.84 | 0 | 1 cup=210; 1 tbsp chopped=15; 1 large=128; 1 slice, large (1/4 in thick)=32; 1 medium=94; 1 slice, medium (1/8 in thick)=12; 1 small=60; 1 slice, thin=8
11458 | spinach, boiled, drained | cooked greens | cooked | cooked-dish | 50-300 | 23 2.97 0.26 0.043 3.75 2.4 0.43 70 466 91.21 1.81 | 2.44/8.37/3.57 | 0 | 1 cup=180
11464 | spinach, from frozen, boiled, drained | cooked greens | cooked | cooked-dish | 50-300 | 34 4.01 0.87 0.157 4.8 3.7 0.51 97 302 88.94 1.39 | 2.44/8.37/3.57 | 0 | 0.5 cup=95; 1 package (10 oz) yields=220
11091 | broccoli, boiled, drained | cooked, steamed | cooked | cooked-dish | 50-300 | 35 2.38 0.41 0.079 7.18 3.3 1.39 41 293 89.25 0.77 | 2.44/8.37/3.57 | 0 | 0.5 cup, chopped=78; 1 stalk, large (11 - 12 in long)=280; 1 stalk, medium (7-1/2 - 8 in long)=180; 1 stalk, small (5 in long)=140; 1 spear (about 5 in long)=37
11093 | broccoli, from frozen, boiled, drained | cooked, steamed | cooked | cooked-dish | 50-300 | 28 3.1 0.12 0.018 5.35 3 1.47 11 142 90.72 0.71 | 2.44/8.37/3.57 | 0 | 1 cup=184
11012 | asparagus, boiled, drained | cooked spears, steamed | cooked | cooked-dish | 50-300 | 22 2.4 0.22 0.048 4.11 2 1.3 14 224 92.63 0.63 | 2.44/8.37/3.57 | 0 | 0.5 cup=90; 4 spears (1/2 in base)=60
11053 | green beans, boiled, drained | cooked snap beans, string beans, French beans | cooked | cooked-dish | 50-300 | 35 1.89 0.28 0.064 7.88 3.2 3.63 1 146 89.22 0.73 | 2.44/8.37/3.57 | 0 | 1 cup=125
11125 | carrot, boiled, drained | carrots, cooked | cooked | cooked-dish | 50-300 | 35 0.76 0.18 0.03 8.22 3 3.45 58 235 90.17 0.67 | 2.78/8.37/3.84 | 0 | 1 tbsp=9.7; 0.5 cup slices=78; 1 carrot=46
11136 | cauliflower, boiled, drained | cooked, steamed | cooked | cooked-dish | 50-300 | 23 1.84 0.45 0.07 4.11 2.3 2.08 15 142 93 0.6 | 2.44/8.37/3.57 | 0 | 0.5 cup (1 in pieces)=62; 3 florets=54
11261 | white mushrooms, boiled, drained | champignons, button mushrooms, cooked | cooked | cooked-dish | 30-250 | 28 2.17 0.47 0.061 5.29 2.2 2.34 2 356 91.08 0.99 | 2.62/8.37/3.48 | 0 | 1 cup pieces=156; 1 tbsp=9.8; 1 mushroom=12
11263 | white mushrooms, stir-fried | champignons, button mushrooms, cooked | cooked | cooked-dish | 30-250 | 26 3.58 0.33 0.04 4.04 1.8 0 12 396 91.1 0.94 | 2.62/8.37/3.48 | 0 | 1 cup sliced=108
11478 | courgette with skin, boiled, drained | zucchini, summer squash, cooked | cooked | cooked-dish | 50-300 | 15 1.14 0.36 0.072 2.69 1 1.71 3 264 95.22 0.59 | 2.44/8.37/3.57 | 0 | 1 cup, sliced=180; 0.5 cup, mashed=120
11313 | green peas, from frozen, boiled, drained | garden peas, cooked | cooked | cooked-dish | 50-300 | 78 5.15 0.27 0.049 14.26 4.5 4.4 72 110 79.52 0.8 | 3.47/8.37/4.07 | 0 | 0.5 cup=80; 1 package (10 oz) yields=253
11092 | broccoli, frozen | - | frozen | frozen-produce | 50-300 | 26 2.81 0.29 0.044 4.78 3 1.35 24 212 91.46 0.66 | 2.44/8.37/3.57 | 0 | 1 cup=156; 1 package (10 oz)=284
11463 | spinach, frozen | leaf spinach | frozen | frozen-produce | 50-300 | 29 3.63 0.57 0.041 4.21 2.9 0.65 74 346 90.17 1.43 | 2.44/8.37/3.57 | 0 | 1 cup=156; 1 package (10 oz)=284
11060 | green beans, frozen | snap beans, string beans | frozen | frozen-produce | 50-300 | 39 1.79 0.21 0.047 7.54 2.6 2.21 3 186 89.93 0.53 | - | 0 | 1 cup=121; 1 package (10 oz)=284
11546 | tomato paste, canned, without salt | tomato puree, tomato concentrate | as-is | canned | 5-60 | 82 4.32 0.47 0.1 18.91 4.1 12.18 59 1014 73.5 2.8 | 2.44/8.37/3.57 | 0 | 0.25 cup=66; 1 cup=262; 1 tbsp=16; 1 can (6 oz)=170
11549 | tomato sauce, canned | passata, sieved tomatoes | as-is | canned | 30-250 | 24 1.2 0.3 0.041 5.31 1.5 3.56 474 297 91.28 1.92 | 2.44/8.37/3.57 | 0 | 1 cup=245
`,
  },
];
