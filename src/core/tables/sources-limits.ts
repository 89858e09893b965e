/** Where the limits and the last week's rules come from. Keys are cited in `limits` and `course`. */
export const limitSources = {
  'helms-2014-preparation':
    'Helms ER, Aragon AA, Fitschen PJ. Evidence-based recommendations for natural bodybuilding contest preparation: nutrition and supplementation. J Int Soc Sports Nutr 2014;11:20.',
  'helms-2014-protein':
    'Helms ER, Zinn C, Rowlands DS, Brown SR. A systematic review of dietary protein during caloric restriction in resistance trained lean athletes. Int J Sport Nutr Exerc Metab 2014;24:127-138.',
  'roberts-2020':
    'Roberts BM, Helms ER, Trexler ET, Fitschen PJ. Nutritional recommendations for physique athletes. J Hum Kinet 2020;71:79-108.',
  'garthe-2011':
    'Garthe I, Raastad T, Refsnes PE, Koivisto A, Sundgot-Borgen J. Effect of two different weight-loss rates on body composition and strength and power-related performance in elite athletes. Int J Sport Nutr Exerc Metab 2011;21:97-104.',
  'mountjoy-2018':
    'Mountjoy M, Sundgot-Borgen JK, Burke LM, et al. IOC consensus statement on relative energy deficiency in sport (RED-S): 2018 update. Br J Sports Med 2018;52:687-697.',
  'fagerberg-2018':
    'Fagerberg P. Negative consequences of low energy availability in natural male bodybuilding: a review. Int J Sport Nutr Exerc Metab 2018;28:385-402.',
  'oppliger-1996':
    'Oppliger RA, Case HS, Horswill CA, Landry GL, Shelter AC. ACSM position stand: weight loss in wrestlers. Med Sci Sports Exerc 1996;28(6):ix-xii (body-fat floors from memory).',
  'jensen-2014':
    'Jensen MD, Ryan DH, Apovian CM, et al. 2013 AHA/ACC/TOS guideline for the management of overweight and obesity in adults. Circulation 2014;129(25 Suppl 2):S102-S138 (daily intakes from memory).',
  'nielsen-2014':
    'Nielsen RO, Parner ET, Nohr EA, Sorensen H, Lind M, Rasmussen S. Excessive progression in weekly running distance and risk of running-related injuries. J Orthop Sports Phys Ther 2014;44:739-747 (from memory).',
  'alpert-2005':
    'Alpert SS. A limit on the energy transfer rate from the human fat store in hypophagia. J Theor Biol 2005;233:1-13.',
  'escalante-2021':
    'Escalante G, Stevenson SW, Barakat C, Aragon AA, Schoenfeld BJ. Peak week recommendations for bodybuilders: an evidence based approach. BMC Sports Sci Med Rehabil 2021;13:68.',
  'cdc-1998':
    'Centers for Disease Control and Prevention. Hyperthermia and dehydration-related deaths associated with intentional rapid weight loss in three collegiate wrestlers. MMWR 1998;47(6):105-108.',
  'sturmi-1995':
    'Sturmi JE, Rutecki GW. When competitive bodybuilders collapse: a result of hyperkalemia? Phys Sportsmed 1995;23(11):49-53.',
  'murugappan-2019':
    'Murugappan KR, Cocchi MN, Bose S, et al. Case study: fatal exertional rhabdomyolysis possibly related to drastic weight cutting. Int J Sport Nutr Exerc Metab 2019;29:68-71.',
  'hew-butler-2015':
    'Hew-Butler T, Rosner MH, Fowkes-Godek S, et al. Statement of the third international exercise-associated hyponatremia consensus development conference. Clin J Sport Med 2015;25:303-320 (renal water limit from memory).',
  'sawka-2007':
    'Sawka MN, Burke LM, Eichner ER, et al. ACSM position stand: exercise and fluid replacement. Med Sci Sports Exerc 2007;39:377-390 (from memory).',
  'nrc-1989-sodium':
    'National Research Council. Recommended Dietary Allowances, 10th edition. National Academy Press, 1989: estimated minimum requirement for sodium, 500 mg a day (from memory).',
  'moraes-2019':
    'de Moraes WMAM, de Almeida FN, Dos Santos LEA, et al. Carbohydrate loading practice in bodybuilders: effects on muscle thickness, photo silhouette scores, mood states and gastrointestinal symptoms. J Sports Sci Med 2019;18:772-779.',
  'homer-2024':
    'Homer KA, et al. Crossover of carbohydrate loading in lean dieting men. Nutrition 2024;127:112528 (described, not quoted).',
  'trexler-2017':
    'Trexler ET, Hirsch KR, Campbell BI, Smith-Ryan AE. Physiological changes following competition in male and female physique athletes: a pilot study. Int J Sport Nutr Exerc Metab 2017;27:458-466.',
  'hulmi-2017':
    'Hulmi JJ, Isola V, Suonpaa M, et al. The effects of intensive weight reduction on body composition and serum hormones in female fitness competitors. Front Physiol 2017;7:689.',
  'rossow-2013':
    'Rossow LM, Fukuda DH, Fahs CA, Loenneke JP, Stout JR. Natural bodybuilding competition preparation and recovery: a 12-month case study. Int J Sports Physiol Perform 2013;8:582-592.',
  'common-practice': 'Common practice of the trade, no source.',
  'adults-only':
    'Rule of this tool: energy restriction in growing people belongs under medical care; no published number is needed.',
} as const satisfies Record<string, string>;
