import { describe, expect, it } from 'vitest';
import { limitSources } from '#core/tables/sources-limits.ts';
import { cautionsFor, type Habits } from './caution.ts';

const sound: Habits = {
  sex: 'male',
  massKg: 80,
  fatKg: 10,
  energyKcal: 2500,
  exerciseKcal: 300,
  proteinG: 190,
  fatG: 60,
  lossPercentPerWeek: 0.6,
  deficitKcal: 500,
  targetBodyFatPercent: 6,
};

describe('[LIM-30] cautions', () => {
  it('[LIM-30] sound habits raise none, and what is not known raises none', () => {
    expect(cautionsFor(sound)).toEqual([]);
    expect(cautionsFor({ sex: 'male', massKg: 80, fatKg: 10 })).toEqual([]);
  });

  it('[LIM-30] each limit run against says both numbers, word for word', () => {
    const harsh = cautionsFor({
      ...sound,
      energyKcal: 1450,
      proteinG: 120,
      fatG: 30,
      lossPercentPerWeek: 1.234,
      deficitKcal: 900,
      targetBodyFatPercent: 4,
    });
    expect(harsh).toEqual([
      {
        limit: 'body-fat',
        value: 5,
        source: 'oppliger-1996',
        words:
          'The target of 4 % body fat is below what is planned here. Nothing below 5 % body fat is planned: it is the floor for men in the position stands on weight loss in sport.',
      },
      {
        limit: 'loss-rate',
        value: 1,
        source: 'helms-2014-preparation',
        words:
          'The present course loses 1.23 % of body mass a week. No faster than 1 % of body mass a week: beyond it more of the loss is muscle.',
      },
      {
        limit: 'energy-availability',
        value: 25,
        source: 'fagerberg-2018',
        words:
          'Energy availability is about 16.4 kcal per kg of fat-free mass. Energy availability stays at 25 kcal per kg of fat-free mass or above: men have no agreed threshold, but below it muscle, hormones and mood have suffered. See a physician or a sports dietitian before going on like this.',
      },
      {
        limit: 'intake',
        value: 1500,
        source: 'jensen-2014',
        words:
          'Intake is about 1450 kcal a day; below 1500 kcal it belongs under medical care. See a physician or a sports dietitian before going on like this.',
      },
      {
        limit: 'protein',
        value: 161,
        source: 'helms-2014-protein',
        words:
          'Protein is about 120 g a day. At least 161 g of protein a day: 2.3 g for each of 70 kg of fat-free mass.',
      },
      {
        limit: 'fat',
        value: 40,
        source: 'common-practice',
        words: 'Fat is about 30 g a day. At least 40 g of fat a day: 0.5 g for each of 80 kg of body mass.',
      },
      {
        limit: 'fat-draw',
        value: 69.3,
        source: 'alpert-2005',
        words:
          'The deficit is about 900 kcal a day; 10 kg of fat can give about 693, so more of it comes from muscle. The figure is an estimate with a wide band.',
      },
    ]);
    for (const { source } of harsh) expect(limitSources).toHaveProperty(source);
  });

  it('[LIM-02] an own limit speaks as one', () => {
    const [only] = cautionsFor({ ...sound, lossPercentPerWeek: 0.6 }, { lossPercentPerWeek: { max: 0.5 } });
    expect(only).toMatchObject({ limit: 'own', value: 0.5 });
  });
});
