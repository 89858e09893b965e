/** A caution read once at the start and shown again beside what it concerns. */
export interface StartCaution {
  readonly key: string;
  readonly title: string;
  readonly words: string;
}

/** Shown whole before the first entry; the keys that were confirmed are kept in the journal. */
export const startCautions: readonly StartCaution[] = [
  {
    key: 'not-medical-advice',
    title: 'This is a tool, not a physician',
    words:
      'It computes from what you enter and from published averages. Local rules and your physician, dietitian or physiotherapist come before anything it says.',
  },
  {
    key: 'eating-disorder',
    title: 'Weighing food can turn on you',
    words:
      'Dieting to stage leanness can start or wake an eating disorder. If food, weight or the mirror run your days, stop and talk to someone who treats it; a show can wait.',
  },
  {
    key: 'low-energy',
    title: 'Too little energy harms first where you do not look',
    words:
      'Lost menses or libido, cold, low mood, poor sleep, stress fractures: signs of too little energy for the work you do. They call for food and a physician, not for more will.',
  },
  {
    key: 'essential-fat',
    title: 'There is a floor to body fat',
    words:
      'Below essential fat hormones, heart and bone suffer. The tool does not plan past its floors and says so when a target lies below one.',
  },
  {
    key: 'last-week',
    title: 'No water tricks',
    words:
      'Diuretics, drying out, drinking far beyond thirst, salt and potassium extremes, sauna: people have died of them in the last week. The tool plans none of these.',
  },
  {
    key: 'food-safety',
    title: 'A packed portion has an end',
    words:
      'Use-by times follow food-safety agencies. Look and smell prove nothing; when in doubt it goes in the bin.',
  },
  {
    key: 'supplements',
    title: 'Supplements are on you',
    words:
      'Doses add up across products, some spoil blood tests or fight with medicines, and in tested sport you answer for whatever is found, however it got there.',
  },
  {
    key: 'blood',
    title: 'Some values cannot wait',
    words:
      'Chest pain, fainting, confusion, palpitations, dark urine, cramps with weakness: call emergency care, whatever a chart says. A value marked "seek care now" means today.',
  },
];
