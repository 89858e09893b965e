import type { DataOf } from '#core/journal/kinds/registry.ts';

/** What the week's solver answered on the story's last morning, as it was adopted. */
export const weekPlan: DataOf<'week-adopted'> = {
  week: 'week-2027-03-05',
  days: [
    {
      date: '2027-03-05',
      target: {
        proteinG: 140,
        carbohydrateG: 185,
        fatG: 46,
        fibreG: 25,
      },
      dishes: [
        {
          from: 'ready',
          batch: 'turkey-pan-4',
          portions: 2,
        },
      ],
      foods: [
        {
          food: 'usda-sr28:08120',
          grams: 90,
        },
        {
          food: 'usda-sr28:01172',
          grams: 110,
        },
        {
          food: 'usda-sr28:11352',
          grams: 496,
        },
        {
          food: 'usda-sr28:19816',
          grams: 27,
        },
        {
          food: 'quay-protein-powder',
          grams: 60,
        },
        {
          food: 'usda-sr28:04053',
          grams: 6,
        },
      ],
    },
    {
      date: '2027-03-06',
      target: {
        proteinG: 140,
        carbohydrateG: 185,
        fatG: 46,
        fibreG: 25,
      },
      dishes: [
        {
          from: 'pan',
          recipe: 'lentil-beef-pot',
          cookedOn: '2027-03-06',
          portions: 1,
          frozen: false,
        },
        {
          from: 'pan',
          recipe: 'cod-potato-pot',
          cookedOn: '2027-03-06',
          portions: 2,
          frozen: false,
        },
      ],
      foods: [
        {
          food: 'usda-sr28:08120',
          grams: 45,
        },
        {
          food: 'usda-sr28:16098',
          grams: 39,
        },
        {
          food: 'usda-sr28:11463',
          grams: 58,
        },
        {
          food: 'usda-sr28:04053',
          grams: 3,
        },
      ],
    },
    {
      date: '2027-03-07',
      target: {
        proteinG: 140,
        carbohydrateG: 135,
        fatG: 50,
        fibreG: 25,
      },
      dishes: [
        {
          from: 'pan',
          recipe: 'lentil-beef-pot',
          cookedOn: '2027-03-06',
          portions: 2,
          frozen: false,
        },
      ],
      foods: [
        {
          food: 'usda-sr28:01123',
          grams: 50,
        },
        {
          food: 'usda-sr28:19816',
          grams: 18,
        },
        {
          food: 'usda-sr28:16098',
          grams: 44,
        },
        {
          food: 'quay-protein-powder',
          grams: 60,
        },
        {
          food: 'usda-sr28:04053',
          grams: 7,
        },
      ],
    },
    {
      date: '2027-03-08',
      target: {
        proteinG: 140,
        carbohydrateG: 185,
        fatG: 46,
        fibreG: 25,
      },
      dishes: [
        {
          from: 'pan',
          recipe: 'lentil-beef-pot',
          cookedOn: '2027-03-06',
          portions: 1,
          frozen: false,
        },
        {
          from: 'pan',
          recipe: 'cod-potato-pot',
          cookedOn: '2027-03-06',
          portions: 2,
          frozen: false,
        },
      ],
      foods: [
        {
          food: 'usda-sr28:08120',
          grams: 45,
        },
        {
          food: 'usda-sr28:16098',
          grams: 39,
        },
        {
          food: 'usda-sr28:11463',
          grams: 58,
        },
        {
          food: 'usda-sr28:04053',
          grams: 3,
        },
      ],
    },
    {
      date: '2027-03-09',
      target: {
        proteinG: 140,
        carbohydrateG: 185,
        fatG: 46,
        fibreG: 25,
      },
      dishes: [
        {
          from: 'pan',
          recipe: 'cod-potato-pot',
          cookedOn: '2027-03-06',
          portions: 2,
          frozen: false,
        },
      ],
      foods: [
        {
          food: 'usda-sr28:08120',
          grams: 88,
        },
        {
          food: 'usda-sr28:01172',
          grams: 100,
        },
        {
          food: 'usda-sr28:19816',
          grams: 27,
        },
        {
          food: 'usda-sr28:16098',
          grams: 36,
        },
        {
          food: 'quay-protein-powder',
          grams: 30,
        },
        {
          food: 'usda-sr28:04053',
          grams: 6,
        },
      ],
    },
    {
      date: '2027-03-10',
      target: {
        proteinG: 140,
        carbohydrateG: 135,
        fatG: 50,
        fibreG: 25,
      },
      dishes: [
        {
          from: 'pan',
          recipe: 'lentil-beef-pot',
          cookedOn: '2027-03-06',
          portions: 2,
          frozen: true,
        },
      ],
      foods: [
        {
          food: 'usda-sr28:01123',
          grams: 50,
        },
        {
          food: 'usda-sr28:19816',
          grams: 18,
        },
        {
          food: 'usda-sr28:16098',
          grams: 44,
        },
        {
          food: 'quay-protein-powder',
          grams: 60,
        },
        {
          food: 'usda-sr28:04053',
          grams: 7,
        },
      ],
    },
    {
      date: '2027-03-11',
      target: {
        proteinG: 140,
        carbohydrateG: 185,
        fatG: 46,
        fibreG: 25,
      },
      dishes: [
        {
          from: 'pan',
          recipe: 'lentil-beef-pot',
          cookedOn: '2027-03-06',
          portions: 1,
          frozen: true,
        },
        {
          from: 'pan',
          recipe: 'cod-potato-pot',
          cookedOn: '2027-03-06',
          portions: 1,
          frozen: true,
        },
      ],
      foods: [
        {
          food: 'usda-sr28:09054',
          grams: 57,
        },
        {
          food: 'usda-sr28:11352',
          grams: 139,
        },
        {
          food: 'usda-sr28:20044',
          grams: 55,
        },
        {
          food: 'usda-sr28:16098',
          grams: 28,
        },
        {
          food: 'quay-protein-powder',
          grams: 60,
        },
        {
          food: 'usda-sr28:04053',
          grams: 15,
        },
      ],
    },
  ],
  pans: [
    {
      date: '2027-03-06',
      recipe: 'lentil-beef-pot',
      portions: 7,
    },
    {
      date: '2027-03-06',
      recipe: 'cod-potato-pot',
      portions: 7,
    },
  ],
  cost: 275.73,
  gap: 0.1795,
  why: [
    '7 days planned together: 2 pans on 1 day at the stove.',
    'Missing the targets costs 24 kcal of mistake over all days, cooking 160, repeats and missing variety 0, freezing 24, leftovers 0, money 67.',
    'No plan can cost less than 226: at most 7.1 kcal of mistake a day could still be gained.',
  ],
};
