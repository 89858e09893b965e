import { recalled, seen, type SubstanceRow } from './substance.ts';

/** May stand in a regimen. */
export const supplementSubstances: readonly SubstanceRow[] = [
  [
    'creatine',
    'Creatine',
    ['creatine monohydrate', 'creatine hydrochloride'],
    seen(
      'Raises creatinine in blood and so lowers the filtration computed from it, while measured filtration did not change over 12 weeks; cystatin C tells them apart.',
      'vilar-neto-2020',
    ),
  ],
  [
    'kelp',
    'Kelp',
    ['seaweed', 'bladderwrack', 'thyroid support'],
    seen(
      'Iodine above 500 ug a day from supplements is advised against; above 1100 ug the thyroid may fail or race. Wait for a TSH value.',
      'ata-2013',
    ),
    recalled('Some thyroid products held real thyroid hormone.', 'kang-2013'),
  ],
  [
    'bergamot',
    'Citrus bergamot extract',
    ['bergamot', 'citrus bergamot'],
    recalled(
      'May slow the breakdown of statins, calcium blockers and ciclosporin, as grapefruit does.',
      'nih-ods',
    ),
    seen('Very high intakes of its oil gave cramps and twitching.', 'finsterer-2002'),
  ],
  [
    'berberine',
    'Berberine',
    ['berberine hydrochloride', 'barberry'],
    seen(
      'Acts like a medicine from 400 mg a day: low glucose, low blood pressure, gut upset; interacts with metformin, statins, ciclosporin, tacrolimus, digoxin, losartan. Not in pregnancy, nursing, under 18, liver or heart disease.',
      'anses-berberine-2019',
    ),
  ],
  [
    'lipoicAcid',
    'Alpha-lipoic acid',
    ['ALA', 'R-lipoic acid', 'lipoic acid', 'thioctic acid'],
    recalled(
      'Rarely sets off an immune reaction to insulin with low glucose; adds to glucose lowering.',
      'efsa-lipoic-2021',
    ),
  ],
  [
    'cinnamon',
    'Cassia cinnamon',
    ['cinnamon', 'cinnamon extract'],
    recalled('Its coumarin harms the liver above 0.1 mg per kg body mass a day.', 'efsa-coumarin'),
  ],
  [
    'ashwagandha',
    'Ashwagandha',
    ['withania somnifera', 'withania', 'KSM'],
    seen(
      'Liver injury with jaundice and itching after 2 to 12 weeks has been reported, with deaths where the liver was ill before; no safe level is known.',
      'bjornsson-2020',
    ),
    seen('Eight more cases, three deaths among those with liver disease.', 'philips-2023'),
    recalled(
      'Raises thyroid hormones; adds to sedatives, thyroid and diabetes medicines. Not in pregnancy.',
      'nccih',
    ),
  ],
  [
    'astragalus',
    'Astragalus',
    ['astragalus root'],
    recalled('May counter immunosuppressants and lithium; not in autoimmune disease.', 'nccih'),
  ],
  [
    'tudca',
    'TUDCA',
    ['tauroursodeoxycholic acid', 'UDCA', 'ursodeoxycholic acid'],
    recalled(
      'Never with a blocked bile duct; bile acid binders and aluminium antacids block it; diarrhoea. It does not license medicines that are toxic to the liver.',
      'tudca-label',
    ),
  ],
  [
    'greenTea',
    'Green-tea extract',
    ['green tea', 'camellia sinensis'],
    seen(
      'From 800 mg of EGCG a day liver enzymes rose early; no safe supplement dose could be set. Brewed tea is not of concern.',
      'efsa-catechins-2018',
    ),
  ],
  [
    'licorice',
    'Licorice',
    ['liquorice', 'glycyrrhiza', 'glycyrrhizin'],
    recalled(
      'Above 100 mg of glycyrrhizic acid a day: low potassium, water retention, high blood pressure.',
      'scf-2003',
    ),
  ],
  [
    'redYeastRice',
    'Red yeast rice',
    ['monacolin K', 'monascus purpureus'],
    recalled(
      'A statin in effect: muscle, liver, interactions; in the EU less than 3 mg of monacolins a day.',
      'eu-2022-860',
    ),
  ],
  [
    'fishOil',
    'Fish oil',
    ['omega-3', 'omega 3', 'EPA', 'DHA', 'EPA and DHA', 'krill oil', 'cod liver oil'],
    recalled(
      'Up to 5 g of EPA and DHA a day raise no concern; adds to anticoagulants.',
      'efsa-fish-oil-2012',
    ),
  ],
  [
    'curcumin',
    'Curcumin',
    ['turmeric', 'turmeric extract', 'curcuma'],
    recalled('Rare liver injury, more with pepper extract; adds to anticoagulants.', 'nih-ods'),
  ],
  [
    'fibre',
    'Fibre powder',
    ['psyllium', 'psyllium husk', 'inulin', 'glucomannan', 'fiber', 'fibre', 'fibre powder'],
    recalled('With plenty of water; keeps medicines from being taken up.', 'drug-labels'),
  ],
  [
    'melatonin',
    'Melatonin',
    [],
    recalled('Drowsiness; a medicine in many countries: local rules go first.', 'nih-ods'),
  ],
  ['citrulline', 'Citrulline', ['citrulline malate', 'L-citrulline']],
  ['betaAlanine', 'Beta-alanine', []],
  ['taurine', 'Taurine', []],
  ['glycine', 'Glycine', []],
  ['betaine', 'Betaine', ['trimethylglycine', 'TMG']],
  ['coq10', 'Coenzyme Q10', ['CoQ10', 'ubiquinol', 'ubiquinone']],
  ['probiotic', 'Probiotic', ['lactobacillus', 'bifidobacterium', 'probiotics']],
  ['electrolytes', 'Electrolyte mix', ['electrolytes']],
  [
    'wheyProtein',
    'Protein powder',
    ['whey', 'whey protein', 'casein', 'soy protein', 'pea protein', 'EAA', 'essential amino acids', 'BCAA'],
  ],
  ['collagen', 'Collagen', ['collagen peptides', 'gelatin']],
];
