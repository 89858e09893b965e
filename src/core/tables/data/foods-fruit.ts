import type { FoodSection } from '../food-section.ts';

/** Columns: see ../foods.ts. Composition and measures: source usda-sr28; names, servings and classes: ours. */
export const foodsFruit: readonly FoodSection[] = [
  {
    group: 'fruit',
    aisle: 'fruit',
    rows: `
09003 | apple with skin, raw | apples | raw | fresh-produce | 182-364/182 | 52 0.26 0.17 0.028 13.81 2.4 10.39 1 107 85.56 0.19 | 3.36/8.37/3.6 | 10 | 1 cup, quartered or chopped=125; 1 cup slices=109; 1 large (3-1/4 in across)=223; 1 medium (3 in across)=182; 1 small (2-3/4 in across)=149; 1 extra small (2-1/2 in across)=101; 1 label serving=242
09040 | banana, raw | bananas | raw | fresh-produce | 118-236/118 | 89 1.09 0.33 0.112 22.84 2.6 12.23 1 358 74.91 0.82 | 3.36/8.37/3.6 | 36 | 1 cup, mashed=225; 1 cup, sliced=150; 1 extra small (less than 6 in long)=81; 1 small (6 to 6-7/8 in long)=101; 1 medium (7 to 7-7/8 in long)=118; 1 large (8 to 8-7/8 in long)=136; 1 extra large (9 in or longer)=152; 1 label serving=126
09050 | blueberries, raw | berries | raw | fresh-produce | 40-250 | 57 0.74 0.33 0.028 14.49 2.4 9.96 1 77 84.21 0.24 | 3.36/8.37/3.6 | 5 | 1 cup=148; 50 berries=68
09316 | strawberries, raw | berries | raw | fresh-produce | 40-300 | 32 0.67 0.3 0.015 7.68 2 4.89 1 153 90.95 0.4 | 3.36/8.37/3.6 | 6 | 1 cup, halves=152; 1 cup, pureed=232; 1 cup, sliced=166; 1 cup, whole=144; 1 extra large (1-5/8 in across)=27; 1 large (1-3/8 in across)=18; 1 medium (1-1/4 in across)=12; 1 pint as purchased, yields=357; 1 small (1 in across)=7; 1 label serving=147
09302 | raspberries, raw | berries | raw | fresh-produce | 40-250 | 52 1.2 0.65 0.019 11.94 6.5 4.42 1 151 85.75 0.46 | 3.36/8.37/3.6 | 4 | 1 cup=123; 1 pint as purchased, yields=312; 10 raspberries=19
09042 | blackberries, raw | berries | raw | fresh-produce | 40-250 | 43 1.39 0.49 0.014 9.61 5.3 4.88 1 162 88.15 0.37 | 3.36/8.37/3.6 | 4 | 1 cup=144
09202 | orange, navel, raw | oranges, citrus | raw | fresh-produce | 140-280/140 | 49 0.91 0.15 0.017 12.54 2.2 8.5 1 166 85.97 0.43 | 3.36/8.37/3.6 | 32 | 1 cup sections, without membranes=165; 1 fruit (2-7/8 in across)=140; 1 label serving=154
09112 | grapefruit, pink or red, raw | citrus | raw | fresh-produce | 123-246/123 | 42 0.77 0.14 0.021 10.66 1.6 6.89 0 135 88.06 0.36 | 3.36/8.37/3.6 | 49 | 1 cup sections, with juice=230; 0.5 fruit (3-3/4 in across)=123; 1 label serving=154
09266 | pineapple, raw | ananas | raw | fresh-produce | 60-300 | 50 0.54 0.12 0.009 13.12 1.4 9.85 1 109 86 0.22 | 3.36/8.37/3.6 | 49 | 1 cup, chunks=165; 1 fruit=905; 1 slice (4-2/3 in across x 3/4 in thick)=166; 1 slice (3-1/2 in across x 3/4 in thick)=84; 1 slice, thin (3-1/2 in across x 1/2 in thick)=56
09132 | grapes, red or green, raw | - | raw | fresh-produce | 60-300 | 69 0.72 0.16 0.054 18.1 0.9 15.48 2 191 80.54 0.48 | 3.36/8.37/3.6 | 4 | 1 cup=151; 10 grapes=49; 1 label serving=126
09148 | kiwifruit, green, raw | kiwi | raw | fresh-produce | 69-207/69 | 61 1.14 0.52 0.029 14.66 3 8.99 3 312 83.07 0.61 | 3.36/8.37/3.6 | 24 | 1 cup, sliced=180; 1 fruit (2 in across)=69; 1 label serving=148
09326 | watermelon, raw | melon | raw | fresh-produce | 100-500 | 30 0.61 0.15 0.016 7.55 0.4 6.2 1 112 91.45 0.25 | 3.36/8.37/3.6 | 48 | 1 cup, balls=154; 1 cup, diced=152; 1 melon (15 in long x 7-1/2 in across)=4518; 1 wedge (approx 1/16 of melon)=286; 10 watermelon balls=122; 1 label serving=280
09181 | cantaloupe melon, raw | rockmelon | raw | fresh-produce | 100-400 | 34 0.84 0.19 0.051 8.16 0.9 7.86 16 267 90.15 0.65 | 3.36/8.37/3.6 | 49 | 1 cup, balls=177; 1 cup, cubes=160; 1 cup, diced=156; 1 melon, large (about 6-1/2 in across)=814; 1 wedge, large (1/8 of large melon)=102; 1 melon, medium (about 5 in across)=552; 1 wedge, medium (1/8 of medium melon)=69; 1 melon, small (about 4-1/4 in across)=441; 1 wedge, small (1/8 of small melon)=55; 10 cantaloupe balls=138; 1 label serving=134
09236 | peach, yellow, raw | peaches | raw | fresh-produce | 150-300/150 | 39 0.91 0.25 0.019 9.54 1.5 8.39 0 190 88.87 0.43 | 3.36/8.37/3.6 | 4 | 1 cup slices=154; 1 small (2-1/2 in across)=130; 1 medium (2-2/3 in across)=150; 1 large (2-3/4 in across)=175; 1 extra large (3 in across)=224; 1 label serving=147
09037 | avocado, raw | avocados | raw | fresh-produce | 30-150 | 160 2 14.66 2.126 8.53 6.7 0.66 7 485 73.23 1.58 | 3.36/8.37/3.6 | 26 | 1 cup, cubes=150; 1 cup, pureed=230; 1 cup, sliced=146; 1 avocado=201
09152 | lemon juice, raw | citrus, lime | raw | fresh-produce | 5-40 | 22 0.35 0.24 0.04 6.9 0.3 2.52 1 103 92.31 0.21 | 3.36/8.37/2.7 | 0 | 1 cup=244; 1 fl oz=30.5; 1 lemon yields=48; 1 wedge yields=5.9
09054 | blueberries, frozen | berries | raw | frozen-produce | 40-250 | 51 0.42 0.64 0.053 12.17 2.7 8.45 1 54 86.59 0.18 | 3.36/8.37/3.6 | 0 | 1 cup, unthawed=155; 1 package (20 oz)=567
09318 | strawberries, frozen | berries | raw | frozen-produce | 40-300 | 35 0.43 0.11 0.006 9.13 2.1 4.56 2 148 89.97 0.37 | 3.36/8.37/3.6 | 0 | 1 cup, thawed=221; 1 cup, unthawed=149; 1 berry=10.6; 1 package (20 oz)=567
09019 | apple sauce, unsweetened | applesauce, apple puree | as-is | canned | 40-250 | 42 0.17 0.1 0.008 11.27 1.1 9.39 2 74 88.22 0.24 | 3.36/8.37/3.6 | 0 | 1 cup=244
09020 | apple sauce, sweetened | applesauce, apple puree | as-is | canned | 40-200 | 68 0.16 0.17 0.03 17.49 1.2 14.67 2 75 81.98 0.21 | 3.36/8.37/3.75 | 0 | 1 cup=246
09298 | raisins | dried grapes, sultanas, dried fruit | as-is | dry | 10-60 | 299 3.07 0.46 0.058 79.18 3.7 59.19 11 749 15.43 1.85 | 3.36/8.37/3.6 | 0 | 1 cup, packed=165; 1 cup (not packed)=145; 1 miniature box (.5 oz)=14; 1 small box (1.5 oz)=43; 50 raisins=26; 1 oz (60 raisins)=28.35
09087 | dates, pitted | deglet noor, dried fruit | as-is | dry | 7-71 | 282 2.45 0.39 0.032 75.03 8 63.35 2 656 20.53 1.6 | 3.36/8.37/3.6 | 10 | 1 cup, chopped=147; 1 date, pitted=7.1
`,
  },
];
