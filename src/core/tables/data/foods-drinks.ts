import type { FoodSection } from '../food-section.ts';

/** Columns: see ../foods.ts. Composition and measures: source usda-sr28; names, servings and classes: ours. */
export const foodsDrinks: readonly FoodSection[] = [
  {
    group: 'drink',
    aisle: 'drinks',
    rows: `
14209 | coffee, brewed | black coffee | as-is | drink | 100-500 | 1 0.12 0.02 0.002 0 0 0 2 49 99.39 0.35 | 3.47/8.37/4.07 | 0 | 1 fl oz=29.6; 6 fl oz=178; 1 cup (8 fl oz)=237
14355 | black tea, brewed | - | as-is | drink | 100-500 | 1 0 0 0.002 0.3 0 0 3 37 99.7 0.04 | 2.44/8.37/3.57 | 0 | 1 fl oz=29.6; 6 fl oz=178; 1 cup (8 fl oz)=237
14278 | green tea, brewed | - | as-is | drink | 100-500 | 1 0.22 0 0 0 0 0 1 8 99.93 0 | - | 0 | 1 cup=245; 1 fl oz=29.6
14411 | tap water | drinking water | as-is | drink | 100-500 | 0 0 0 0 0 0 0 4 0 99.9 0.1 | - | 0 | 1 fl oz=29.6; 1 serving 8 fl oz=237; 1 litre=1000
14091 | almond milk, unsweetened | nut drink, plant milk | as-is | fresh-dairy | 50-500 | 15 0.59 1.1 0 0.58 0 0 71 67 97.05 0.68 | - | 0 | 1 cup=262
`,
  },
];
