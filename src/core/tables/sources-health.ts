/** Where the health room's figures come from. Keys are cited in `tables` and `health`. */
export const healthSources = {
  'abim-2024':
    'American Board of Internal Medicine. ABIM Laboratory Test Reference Ranges, 2024 (male testosterone seen; the other figures from memory).',
  'interval-memory':
    "Commonly printed adult interval, from memory; it depends on the method, so the laboratory's own goes first.",
  'kdigo-2024':
    'KDIGO 2024 clinical practice guideline for the evaluation and management of chronic kidney disease. Kidney Int 2024;105(4S):S117-S314.',
  'ncep-2002':
    'National Cholesterol Education Program, Adult Treatment Panel III, final report. Circulation 2002;106:3143-3421.',
  'ada-standards':
    'American Diabetes Association. Standards of care in diabetes: below 5.7 % normal, 6.5 % and more diabetes (from memory).',
  'iom-2011-vitamin-d':
    'Institute of Medicine. Dietary Reference Intakes for Calcium and Vitamin D. National Academies Press, 2011.',
  'pearson-2003':
    'Pearson TA, Mensah GA, Alexander RW, et al. Markers of inflammation and cardiovascular disease (AHA/CDC). Circulation 2003;107:499-511 (from memory).',
  'kost-1990':
    'Kost GJ. Critical limits for urgent clinician notification at US medical centers. JAMA 1990;263:704-707.',
  'critical-lists':
    'Critical-value lists published by hospitals and clinics, the stricter end of those seen; laboratories differ.',
  'critical-memory': 'Critical value as commonly taught, from memory.',
  'jama-si':
    "Iverson C, Christiansen S, Flanagin A, et al. AMA Manual of Style: conversion of conventional units to SI units (the medical journals' table); insulin by the factor 6.00 of Knopp JL, Holder-Pearson L, Chase JG. J Diabetes Sci Technol 2019;13:597-600.",
  'carobene-2017':
    'Carobene A, Braga F, Roraas T, Sandberg S, Bartlett WA, et al. The EuBIVAS project: within- and between-subject biological variation data for serum enzymes. Clin Chem 2017;63:1527-1536.',
  'eflm-variation':
    'European Federation of Clinical Chemistry and Laboratory Medicine, biological variation database (rounded, from memory).',
  'fraser-1989':
    'Fraser CG, Harris EK. Generation and application of data on biological variation in clinical chemistry. Crit Rev Clin Lab Sci 1989;27:409-437.',
  'inker-2021':
    'Inker LA, Eneanya ND, Coresh J, et al. New creatinine- and cystatin C-based equations to estimate GFR without race. N Engl J Med 2021;385:1737-1749.',
  'inker-2012':
    'Inker LA, Schmid CH, Tighiouart H, et al. Estimating glomerular filtration rate from serum creatinine and cystatin C. N Engl J Med 2012;367:20-29 (coefficients from memory).',
  'friedewald-1972':
    'Friedewald WT, Levy RI, Fredrickson DS. Estimation of the concentration of low-density lipoprotein cholesterol in plasma. Clin Chem 1972;18:499-502.',
  'sampson-2020':
    'Sampson M, Ling C, Sun Q, et al. A new equation for calculation of low-density lipoprotein cholesterol in patients with normolipidemia and/or hypertriglyceridemia. JAMA Cardiol 2020;5:540-548.',
  'matthews-1985':
    'Matthews DR, Hosker JP, Rudenski AS, et al. Homeostasis model assessment: insulin resistance and beta-cell function. Diabetologia 1985;28:412-419.',
  'sterling-2006':
    'Sterling RK, Lissen E, Clumeck N, et al. Development of a simple noninvasive index to predict significant fibrosis in patients with HIV/HCV coinfection. Hepatology 2006;43:1317-1325.',
  'mcpherson-2017':
    'McPherson S, Hardy T, Dufour JF, et al. Age as a confounding factor for the accurate non-invasive diagnosis of advanced NAFLD fibrosis. Am J Gastroenterol 2017;112:740-751 (from memory).',
  'vermeulen-1999':
    'Vermeulen A, Verdonck L, Kaufman JM. A critical evaluation of simple methods for the estimation of free testosterone in serum. J Clin Endocrinol Metab 1999;84:3666-3672 (constants from memory).',
  'nathan-2008':
    'Nathan DM, Kuenen J, Borg R, Zheng H, Schoenfeld D, Heine RJ. Translating the A1C assay into estimated average glucose values. Diabetes Care 2008;31:1473-1478 (from memory).',
  'weykamp-2008':
    'Weykamp C, John WG, Mosca A, et al. The IFCC reference measurement system for HbA1c: a 6-year progress report. Clin Chem 2008;54:240-248 (equation from memory).',
  'pettersson-2008':
    'Pettersson J, Hindorf U, Persson P, et al. Muscular exercise can cause highly pathological liver function tests in healthy men. Br J Clin Pharmacol 2008;65:253-259.',
  'dickerman-1999':
    'Dickerman RD, Pertusi RM, Zachariah NY, Dufour DR, McConathy WJ. Anabolic steroid-induced hepatotoxicity: is it overstated? Clin J Sport Med 1999;9:34-39.',
  'simundic-2014':
    'Simundic AM, Cornes M, Grankvist K, Lippi G, Nybo M. Standardization of collection requirements for fasting samples (EFLM working group). Clin Chim Acta 2014;432:33-37 (12 hours, from memory).',
  'brambilla-2009':
    'Brambilla DJ, Matsumoto AM, Araujo AB, McKinlay JB. The effect of diurnal variation on clinical measurement of serum testosterone and other sex hormone levels in men. J Clin Endocrinol Metab 2009;94:907-913.',
  'gagliano-juca-2019':
    'Gagliano-Juca T, Li Z, Pencina KM, et al. Oral glucose load and mixed meal feeding lowers testosterone levels in healthy eugonadal men. Endocrine 2019;63:149-156.',
  'fda-biotin-2019':
    'U.S. Food and Drug Administration. Biotin interference with troponin lab tests: safety communication, 2017, updated November 2019.',
  'biotin-assays':
    'How sandwich and competitive immunoassays with streptavidin and biotin are built: the direction of the error (from memory).',
  'vilar-neto-2020':
    'Vilar Neto JO, da Silva CA, Meneses GC, et al. Novel renal biomarkers show that creatine supplementation is safe: a double-blind, placebo-controlled randomized clinical trial. Toxicol Res 2020;9:263-270.',
  'lugaresi-2013':
    'Lugaresi R, Leme M, de Salles Painelli V, et al. Does long-term creatine supplementation impair kidney function in resistance-trained individuals consuming a high-protein diet? J Int Soc Sports Nutr 2013;10:26.',
  'preparation-cases':
    'Case studies of contest preparation: Rossow LM, et al. Int J Sports Physiol Perform 2013;8:582-592; Halliday TM, et al. Nutrients 2016;8:740 (directions of the hormones from memory).',
  'draw-practice': 'Laboratory practice of specimen collection: posture, haemolysis, illness (from memory).',
  'nasem-dri':
    'National Academies of Sciences, Engineering, and Medicine. Dietary Reference Intakes: tolerable upper intake levels (tables of 1997-2011; sodium and potassium 2019).',
  'efsa-ul':
    'European Food Safety Authority. Overview on tolerable upper intake levels as derived by the SCF and the EFSA panel, version 4, 2018, with the opinions of 2022-2024.',
  'efsa-caffeine-2015':
    'EFSA NDA Panel. Scientific opinion on the safety of caffeine. EFSA Journal 2015;13(5):4102.',
  'fda-caffeine':
    'U.S. Food and Drug Administration. Spilling the beans: how much caffeine is too much? 400 mg a day for most adults (from memory).',
  'drake-2013':
    'Drake C, Roehrs T, Shambroom J, Roth T. Caffeine effects on sleep taken 0, 3, or 6 hours before going to bed. J Clin Sleep Med 2013;9:1195-1200 (from memory).',
  'efsa-catechins-2018':
    'EFSA ANS Panel. Scientific opinion on the safety of green tea catechins. EFSA Journal 2018;16(4):5239.',
  'efsa-yohimbe-2013':
    'EFSA ANS Panel. Scientific opinion on the evaluation of the safety in use of yohimbe. EFSA Journal 2013;11(7):3302.',
  'ata-2013':
    'American Thyroid Association. Statement on the potential risks of excess iodine ingestion and exposure. June 2013.',
  'kang-2013':
    'Kang GY, Parks JR, Fileta B, et al. Thyroxine and triiodothyronine content in commercially available thyroid health supplements. Thyroid 2013;23:1233-1237 (from memory).',
  'finsterer-2002': 'Finsterer J. Earl Grey tea intoxication. Lancet 2002;359:1484.',
  'anses-berberine-2019':
    'ANSES. Opinion on the use of berberine-containing plants in food supplements. Maisons-Alfort, 2019.',
  'efsa-lipoic-2021':
    'EFSA NDA Panel. Alpha-lipoic acid added to foods and insulin autoimmune syndrome. EFSA Journal 2021;19(6):6577 (from memory).',
  'efsa-coumarin':
    'EFSA AFC Panel. Coumarin in flavourings and other food ingredients. EFSA Journal 2008;793 (from memory).',
  'bjornsson-2020':
    'Bjornsson HK, Bjornsson ES, Avula B, et al. Ashwagandha-induced liver injury: a case series from Iceland and the US Drug-Induced Liver Injury Network. Liver Int 2020;40:825-829.',
  'philips-2023':
    'Philips CA, Valsan A, Theruvath AH, et al. Ashwagandha-induced liver injury: a case series from India and literature review. Hepatol Commun 2023;7:e0270.',
  'nih-ods':
    'Office of Dietary Supplements, National Institutes of Health. Fact sheets for health professionals (from memory).',
  nccih: 'National Center for Complementary and Integrative Health. Herbs at a glance (from memory).',
  'tudca-label':
    'Labels of ursodeoxycholic acid medicines: bile acid binders, aluminium antacids, bile-duct obstruction (from memory).',
  'scf-2003':
    'Scientific Committee on Food. Opinion on glycyrrhizinic acid and its ammonium salt, 2003 (from memory).',
  'eu-2022-860': 'Commission Regulation (EU) 2022/860 on monacolins from red yeast rice (from memory).',
  'efsa-fish-oil-2012':
    'EFSA NDA Panel. Tolerable upper intake level of EPA, DHA and DPA. EFSA Journal 2012;10(7):2815 (from memory).',
  'drug-labels':
    'Prescribing information of the medicine named: separation from minerals, antacids and food (from memory).',
  'levothyroxine-label':
    'Prescribing information of levothyroxine: 4 hours apart from calcium, iron, antacids, sucralfate, simethicone and bile acid binders; empty stomach (the latter from memory).',
  'calcium-dose':
    'Office of Dietary Supplements, NIH. Calcium: absorption is best at doses up to 500 mg (from memory).',
  'wada-list':
    'World Anti-Doping Agency. The Prohibited List, in force each 1 January; and the Code, article 2.1.1.',
  'geyer-2004':
    'Geyer H, Parr MK, Mareck U, Reinhart U, Schrader Y, Schanzer W. Analysis of non-hormonal nutritional supplements for anabolic-androgenic steroids. Int J Sports Med 2004;25:124-129.',
  'stellingwerff-2023':
    'Stellingwerff T, Mountjoy M, McCluskey WT, Ackerman KE, Verhagen E, Heikura IA. Review of the scientific rationale, development and validation of the IOC Relative Energy Deficiency in Sport Clinical Assessment Tool: V.2. Br J Sports Med 2023;57:1109-1121.',
  'mountjoy-2023':
    'Mountjoy M, Ackerman KE, Bailey DM, et al. 2023 International Olympic Committee consensus statement on Relative Energy Deficiency in Sport (REDs). Br J Sports Med 2023;57:1073-1097.',
  'loucks-2003':
    'Loucks AB, Thuma JR. Luteinizing hormone pulsatility is disrupted at a threshold of energy availability in regularly menstruating women. J Clin Endocrinol Metab 2003;88:297-311.',
} as const satisfies Record<string, string>;
