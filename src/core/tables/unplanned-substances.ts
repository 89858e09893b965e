import { recalled, seen, type SubstanceRow } from './substance.ts';

/** Their prescriber sets the times: never planned here, only kept clear of. */
export const medicineSubstances: readonly SubstanceRow[] = [
  [
    'levothyroxine',
    'Levothyroxine',
    ['L-thyroxine', 'thyroxine', 'T4 tablets'],
    seen('Four hours apart from calcium, iron and antacids; on an empty stomach.', 'levothyroxine-label'),
  ],
  [
    'quinolone',
    'Quinolone antibiotic',
    ['ciprofloxacin', 'levofloxacin', 'moxifloxacin'],
    recalled('Minerals bind it: the medicine 2 hours before or 6 hours after.', 'drug-labels'),
  ],
  [
    'tetracycline',
    'Tetracycline antibiotic',
    ['doxycycline', 'minocycline'],
    recalled('Minerals bind it: 2 to 3 hours apart.', 'drug-labels'),
  ],
  [
    'bisphosphonate',
    'Bisphosphonate',
    ['alendronate', 'risedronate', 'ibandronate'],
    recalled('Minerals and food at least an hour after it.', 'drug-labels'),
  ],
  [
    'bileAcidBinder',
    'Bile acid binder',
    ['cholestyramine', 'colestyramine', 'colesevelam'],
    recalled('Binds many medicines and vitamins.', 'drug-labels'),
  ],
  [
    'antacid',
    'Antacid',
    ['aluminium antacid', 'aluminum hydroxide', 'magnesium hydroxide antacid', 'calcium antacid'],
    recalled('Binds or blocks several medicines.', 'drug-labels'),
  ],
  ['sucralfate', 'Sucralfate', []],
  ['simethicone', 'Simethicone', ['simeticone']],
  [
    'warfarin',
    'Warfarin-type anticoagulant',
    ['warfarin', 'phenprocoumon', 'acenocoumarol'],
    recalled(
      'Vitamin K, fish oil, vitamin E and many herbs change its effect: the prescriber decides.',
      'nih-ods',
    ),
  ],
  [
    'statin',
    'Statin',
    ['atorvastatin', 'rosuvastatin', 'simvastatin', 'pravastatin'],
    recalled(
      'Raises creatine kinase and liver enzymes in some; berberine, bergamot and red yeast rice add to it.',
      'drug-labels',
    ),
  ],
  ['metformin', 'Metformin', [], recalled('Adds to other glucose lowering.', 'drug-labels')],
  [
    'contraceptive',
    'Hormonal contraceptive',
    ['birth control pill', 'contraceptive pill'],
    recalled('Hides the menstrual signs of too little energy.', 'drug-labels'),
  ],
];

/** No dose is ever planned. */
export const refusedSubstances: readonly SubstanceRow[] = [
  [
    'diuretic',
    'Diuretic',
    [
      'furosemide',
      'hydrochlorothiazide',
      'spironolactone',
      'triamterene',
      'water pill',
      'dandelion',
      'dandelion root',
      'uva ursi',
      'juniper berry',
      'horsetail',
      'herbal diuretic',
    ],
    seen(
      'Competitors have collapsed and died of diuretics before a show. None is ever planned here, herbal or prescribed.',
      'sturmi-1995',
    ),
  ],
  [
    'laxative',
    'Laxative',
    ['senna', 'bisacodyl', 'cascara'],
    recalled('Takes water and potassium; never to lose weight.', 'sturmi-1995'),
  ],
  [
    'insulin',
    'Insulin',
    [],
    recalled('A medicine for a disease; without need it kills within hours.', 'wada-list'),
  ],
  [
    'thyroidHormone',
    'Thyroid hormone without prescription',
    ['liothyronine', 'T3 tablets', 'desiccated thyroid', 'thyroid glandular'],
    recalled('A medicine; it costs muscle, bone and heart rhythm.', 'kang-2013'),
  ],
  [
    'clenbuterol',
    'Clenbuterol',
    [],
    recalled('A medicine for horses and lungs: heart rhythm, heart muscle.', 'wada-list'),
  ],
  [
    'dnp',
    'DNP',
    ['2,4-dinitrophenol', 'dinitrophenol'],
    recalled('A poison: people die of overheating, and there is no antidote.', 'wada-list'),
  ],
  [
    'sarm',
    'SARM',
    ['SARMs', 'ostarine', 'ligandrol', 'LGD-4033', 'RAD-140', 'cardarine'],
    recalled('Not approved for people; liver injury; prohibited.', 'wada-list'),
  ],
  [
    'anabolicSteroid',
    'Anabolic agent',
    [
      'testosterone',
      'trenbolone',
      'nandrolone',
      'oxandrolone',
      'stanozolol',
      'DHEA',
      'prohormone',
      'androstenedione',
    ],
    recalled('No doses of hormones are planned here.', 'wada-list'),
  ],
  [
    'growthHormone',
    'Growth hormone or peptide',
    ['growth hormone', 'HGH', 'IGF-1', 'ibutamoren', 'MK-677', 'peptides'],
    recalled('No doses of hormones are planned here.', 'wada-list'),
  ],
  [
    'higenamine',
    'Higenamine',
    ['norcoclaurine'],
    recalled('Works on heart and lungs as clenbuterol does; prohibited.', 'wada-list'),
  ],
];

/** Stimulants without a dose that could be called acceptable. */
export const refusedStimulants: readonly SubstanceRow[] = [
  [
    'yohimbine',
    'Yohimbe or yohimbine',
    ['yohimbe', 'yohimbine', 'rauwolscine', 'alpha-yohimbine'],
    seen(
      'No acceptable intake could be set: blood pressure, anxiety, heart rate, and labels that do not tell the dose.',
      'efsa-yohimbe-2013',
    ),
  ],
  [
    'synephrine',
    'Synephrine',
    ['bitter orange', 'citrus aurantium', 'octopamine'],
    recalled('Blood pressure and heart rhythm, more with caffeine.', 'nih-ods'),
  ],
  [
    'dmaa',
    'DMAA',
    ['methylhexanamine', '1,3-dimethylamylamine', 'DMHA', 'DMBA'],
    recalled('Blood pressure, stroke; prohibited.', 'wada-list'),
  ],
  [
    'ephedra',
    'Ephedra',
    ['ephedrine', 'ma huang', 'pseudoephedrine'],
    recalled('Stroke and heart rhythm; prohibited.', 'wada-list'),
  ],
];
