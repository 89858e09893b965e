import type { FoodSection } from '../food-section.ts';

/** Columns: see ../foods.ts. Composition and measures: source usda-sr28; names, servings and classes: ours. */
export const foodsGrains: readonly FoodSection[] = [
  {
    group: 'grain',
    aisle: 'grains and bread',
    rows: `
20444 | white rice, long grain, unenriched, dry | rice, uncooked, basmati, jasmine | dry | dry-rice | 30-150 | 365 7.13 0.66 0.18 79.95 1.3 0.12 5 115 11.62 0.64 | 3.82/8.37/4.16 | 0 | 1 cup=185
20044 | white rice, long grain, enriched, dry | rice, uncooked, raw | dry | dry-rice | 30-150 | 365 7.13 0.66 0.18 79.95 1.3 0.12 5 115 11.62 0.64 | 3.82/8.37/4.16 | 0 | 1 cup=185
20052 | white rice, short grain, dry | rice, uncooked, sushi rice, sticky rice | dry | dry-rice | 30-150 | 358 6.5 0.52 0.14 79.15 2.8 - 1 76 13.29 0.54 | 3.82/8.37/4.16 | 0 | 1 cup=200
20036 | brown rice, long grain, dry | rice, uncooked, wholegrain rice | dry | dry-rice | 30-150 | 367 7.54 3.2 0.591 76.25 3.6 0.66 5 250 11.8 1.21 | 3.41/8.37/4.12 | 0 | 1 cup=185
20046 | white rice, parboiled, dry | rice, uncooked, converted rice | dry | dry-rice | 30-150 | 374 7.51 1.03 0.294 80.89 1.8 0.33 2 174 9.86 0.71 | 3.82/8.37/4.16 | 0 | 1 cup=185
20048 | white rice, instant, dry | rice, uncooked, precooked rice, quick rice | dry | dry-rice | 30-150 | 380 7.82 0.94 0.152 82.32 1.9 0.05 10 27 8.38 0.53 | 3.82/8.37/4.16 | 0 | 1 cup=95
08100 | rice cereal, ground, dry | creamed ground rice, rice farina, hot cereal | dry | dry-rice | 25-120 | 370 6.3 0.5 0.136 82.4 0.7 0.3 6 143 10.5 0.4 | 3.82/8.37/4.16 | 0 | 0.25 cup (1 label serving)=45
08120 | oats, rolled or quick, dry | oatmeal, porridge oats | dry | dry-starch | 30-130 | 379 13.15 6.52 1.11 67.7 10.1 0.99 6 362 10.84 1.77 | 3.46/8.37/4.12 | 0 | 1 cup=81; 0.333 cup=27
20038 | oats, whole grain, dry | oat groats, steel-cut oats | dry | dry-starch | 30-130 | 389 16.89 6.9 1.217 66.27 10.6 - 2 429 8.22 1.72 | 3.46/8.37/4.12 | 0 | 1 cup=156
20120 | pasta, dry | spaghetti, macaroni, penne, noodles, uncooked | dry | dry-starch | 30-150 | 371 13.04 1.51 0.277 74.67 3.2 2.67 6 223 9.9 0.88 | 3.91/8.37/4.12 | 0 | 1 cup spaghetti=91; 1 cup elbows=122; 1 cup penne=95; 1 cup farfalle=81; 1 cup rotini=96; 1 cup shells=64; 1 cup lasagna=90
20124 | pasta, whole wheat, dry | wholemeal spaghetti, uncooked | dry | dry-starch | 30-150 | 352 13.87 2.93 0.428 73.37 9.2 2.74 6 434 8.21 1.62 | 3.59/8.37/3.78 | 0 | 1 cup spaghetti=91; 1 cup elbows=122; 1 cup penne=95; 1 cup farfalle=81; 1 cup rotini=96; 1 cup shells=64; 1 cup lasagne=90
20133 | rice noodles, dry | vermicelli, uncooked | dry | dry-starch | 30-150 | 364 5.95 0.56 0.153 80.18 1.6 0.12 182 30 11.91 0.85 | 3.82/8.37/4.16 | 0 | 2 oz=57
20028 | couscous, dry | uncooked | dry | dry-starch | 30-150 | 376 12.76 0.64 0.117 77.43 5 - 10 166 8.56 0.62 | 4.05/8.37/4.12 | 0 | 1 cup=173
20035 | quinoa, dry | uncooked | dry | dry-starch | 30-150 | 368 14.12 6.07 0.706 64.16 7 - 5 563 13.28 2.38 | 4/9/4 | 0 | 1 cup=170
20061 | rice flour, white | ground rice | dry | dry | 10-120 | 366 5.95 1.42 0.386 80.13 2.4 0.12 0 76 11.89 0.61 | 3.82/8.37/4.16 | 0 | 1 cup=158
20027 | maize starch | cornstarch, cornflour, corn starch | dry | dry | 2-20 | 381 0.26 0.05 0.009 91.27 0.9 0 9 3 8.32 0.09 | 3.46/8.37/4.16 | 0 | 1 cup=128
20445 | white rice, long grain, unenriched, cooked | boiled rice, steamed rice, basmati, jasmine | cooked | cooked-rice | 80-400 | 130 2.69 0.28 0.077 28.17 0.4 0.05 1 35 68.44 0.41 | 3.82/8.37/4.16 | 0 | 1 cup=158
20045 | white rice, long grain, enriched, cooked | boiled rice, steamed rice | cooked | cooked-rice | 80-400 | 130 2.69 0.28 0.077 28.17 0.4 0.05 1 35 68.44 0.41 | 3.82/8.37/4.16 | 0 | 1 cup=158
20053 | white rice, short grain, cooked | boiled rice, sushi rice, sticky rice | cooked | cooked-rice | 80-400 | 130 2.36 0.19 0.051 28.73 - - 0 26 68.53 0.2 | 3.82/8.37/4.16 | 0 | 1 cup=186
20037 | brown rice, long grain, cooked | boiled rice, wholegrain rice | cooked | cooked-rice | 80-400 | 123 2.74 0.97 0.26 25.58 1.6 0.24 4 86 70.27 0.44 | 3.41/8.37/4.12 | 0 | 1 cup=202
20047 | white rice, parboiled, cooked | boiled rice, converted rice | cooked | cooked-rice | 80-400 | 123 2.91 0.37 0.074 26.05 0.9 0.11 2 56 70.36 0.3 | 3.82/8.37/4.16 | 0 | 1 cup=158
20049 | white rice, instant, cooked | precooked rice, quick rice | cooked | cooked-rice | 80-400 | 124 2.18 0.5 0.017 26.76 0.6 0 4 9 70.34 0.22 | 3.82/8.37/4.16 | 0 | 1 cup=165
08101 | rice cereal, ground, cooked with water | creamed ground rice, rice farina, hot cereal | cooked | cooked-rice | 150-600 | 52 0.9 0.1 0.027 11.4 0.1 0.04 1 20 87.5 0.1 | 3.82/8.37/4.16 | 0 | 1 cup=244; 1 tbsp=15; 0.75 cup=183
08121 | oats, rolled or quick, cooked with water | oatmeal, porridge | cooked | cooked-starch | 150-600 | 71 2.54 1.52 0.31 12 1.7 0.27 4 70 83.61 0.34 | 3.46/8.37/4.12 | 0 | 1 cup=234; 1 tbsp=14.6; 0.75 cup=175
20121 | pasta, cooked | boiled spaghetti, macaroni, penne, noodles | cooked | cooked-starch | 80-400 | 158 5.8 0.93 0.176 30.86 1.8 0.56 1 44 62.13 0.27 | 3.91/8.37/4.12 | 0 | 1 cup spaghetti not packed=124; 1 cup spaghetti packed=151; 1 cup elbows not packed=120; 1 cup elbows packed=132; 1 cup penne=107; 1 cup farfalle=107; 1 cup rotini=107; 1 cup shells=105; 1 cup lasagne=116
20125 | pasta, whole wheat, cooked | boiled wholemeal spaghetti | cooked | cooked-starch | 80-400 | 149 5.99 1.71 0.243 30.07 3.9 0.75 4 96 61.8 0.44 | 3.59/8.37/3.78 | 0 | 1 cup spaghetti not packed=117; 1 cup spaghetti packed=151; 1 cup elbows=117; 1 cup penne=97; 1 cup shells=105; 1 cup lasagne=116; 1 cup rotini=107; 1 cup farfalle=107
20134 | rice noodles, cooked | vermicelli, boiled | cooked | cooked-starch | 80-400 | 108 1.79 0.2 0.023 24.01 1 0.03 19 4 73.82 0.18 | 3.82/8.37/4.16 | 0 | 1 cup=176
20029 | couscous, cooked | - | cooked | cooked-starch | 80-400 | 112 3.79 0.16 0.029 23.22 1.4 0.1 5 58 72.57 0.26 | 4.05/8.37/4.12 | 0 | 1 cup, cooked=157; 1 cup, dry, yields=528; 1 oz, dry, yields=86
20137 | quinoa, cooked | boiled | cooked | cooked-starch | 80-400 | 120 4.4 1.92 0.231 21.3 2.8 0.87 7 172 71.61 0.76 | 4/9/4 | 0 | 1 cup=185
20345 | white rice, long grain, cooked with salt | boiled rice, salted rice | cooked | cooked-rice | 80-400 | 130 2.69 0.28 0.077 28.17 0.4 0.05 382 35 68.44 0.41 | 3.82/8.37/4.16 | 0 | 1 cup=158
19816 | rice cakes, brown rice, unsalted | puffed rice cake | as-is | dry | 9-54/9 | 387 8.2 2.8 0.57 81.5 4.2 0.88 26 290 5.8 1.7 | 3.41/8.37/4.12 | 0 | 1 cake=9; 2 cakes=18
08156 | puffed rice cereal, fortified | puffed rice, breakfast cereal | as-is | dry | 14-90 | 402 6.3 0.5 0.13 89.8 1.7 - 3 113 3 0.4 | 3.82/8.37/4.16 | 0 | 1 cup=14
18075 | bread, whole wheat | wholemeal bread, toast | as-is | bread | 32-128/32 | 252 12.45 3.5 0.722 42.71 6 4.34 455 254 39.01 2.32 | - | 0 | 1 slice=32
18069 | bread, white | toast, sandwich bread | as-is | bread | 29-116/29 | 266 8.85 3.33 0.698 49.42 2.7 5.67 490 126 36.42 1.98 | 3.9/8.7/4.1 | 0 | 1 slice=29; 1 cup, crumbs=45; 1 cup, cubes=35; 1 slice, large=30; 1 slice=25; 1 slice crust not eaten=12; 1 slice, thin=20; 1 slice thin, crust not eaten=9; 1 slice, very thin=15
18064 | bread, wheat | brown bread, toast | as-is | bread | 29-116/29 | 267 10.72 3.24 0.777 48.68 4 5.91 508 177 35.2 2.16 | - | 0 | 1 slice=29
28316 | bread, sprouted wheat | sprouted grain bread | as-is | bread | 38-114/38 | 188 13.16 0 0 33.88 5.3 2.63 474 198 50.88 2.08 | - | 0 | 1 slice=38
18001 | bagel, plain | bagels | as-is | bread | 99-198/99 | 264 10.56 1.32 0.36 52.38 1.6 8.43 422 107 33.81 1.93 | - | 0 | 1 bagel=99; 1 mini bagel (2-1/2 in across)=26; 1 small bagel (3 in across)=69; 1 medium bagel (3-1/2 to 4 in across)=105; 1 large bagel (4-1/2 in)=131
18258 | English muffin, plain | muffins, breakfast muffin | as-is | bread | 57-114/57 | 227 8.87 1.69 0.733 44.17 3.5 3.53 425 109 43.56 1.71 | - | 0 | 1 muffin=57
18364 | wheat tortilla | flour tortilla, wrap | as-is | bread | 48-144/48 | 306 8.2 7.99 2.924 49.38 3.5 3.71 736 125 31.98 2.45 | 4/8.8/4.1 | 0 | 1 tortilla=48; 1 tortilla medium (approx 6 in across)=30; 1 package=407; 1 tortilla (approx 10 in across)=72; 1 tortilla (approx 12 in across)=117; 1 tortilla (approx 7-8 in across)=49
`,
  },
];
