import { recalled, seen, type Substance, type SubstanceCaution, type SubstanceRow } from './substance.ts';
import { supplementSubstances } from './supplement-substances.ts';
import { medicineSubstances, refusedStimulants, refusedSubstances } from './unplanned-substances.ts';

/** Where the Prohibited List names it (classes seen, details from memory); others are refused for their danger alone. */
const prohibitedInSport: Readonly<Record<string, NonNullable<Substance['inSport']>>> = {
  diuretic: 'prohibited at all times',
  insulin: 'prohibited at all times',
  clenbuterol: 'prohibited at all times',
  sarm: 'prohibited at all times',
  anabolicSteroid: 'prohibited at all times',
  growthHormone: 'prohibited at all times',
  higenamine: 'prohibited at all times',
  dmaa: 'prohibited in competition',
  ephedra: 'prohibited in competition',
};

function made(rows: readonly SubstanceRow[], stand: Substance['stand']): Substance[] {
  return rows.map(([key, name, alsoCalled, ...cautions]) => {
    const inSport = prohibitedInSport[key];
    return { key, name, alsoCalled, stand, cautions, ...(inSport === undefined ? {} : { inSport }) };
  });
}

export const substances: readonly Substance[] = [
  ...made(supplementSubstances, 'planned'),
  ...made(medicineSubstances, 'medicine'),
  ...made(refusedSubstances, 'refused'),
  ...made(refusedStimulants, 'refused'),
];

/** Nutrients and substances that are taken up with fat: with a meal that holds some (from memory). */
export const takenUpWithFat: readonly string[] = [
  'vitaminA',
  'vitaminD',
  'vitaminE',
  'vitaminK',
  'betaCarotene',
  'fishOil',
  'curcumin',
  'coq10',
];

/** What a supplement can hold that its label does not say, and who answers for it. */
export const strictLiability: readonly SubstanceCaution[] = [
  recalled('The athlete answers for whatever is found, however it got there.', 'wada-list'),
  seen(
    '94 of 634 supplements from 13 countries held anabolic steroids that no label named (14.8 %; 9.6 % even from makers that sell none). Ask for a batch test; nothing here is called safe.',
    'geyer-2004',
  ),
  recalled(
    'The list of prohibited substances changes each 1 January; federations differ. Look at the one that counts for the show.',
    'wada-list',
  ),
];
