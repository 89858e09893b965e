/** Where the equations of `science`, the tables of activity and noise, and the filter of `body` come from. */
export const scienceSources = {
  'hall-2011':
    'Hall KD, Sacks G, Chandramohan D, et al. Quantification of the effect of energy imbalance on bodyweight. Lancet 2011;378:826-837, web appendix (equations 4 to 10 read in an open implementation that quotes the authors).',
  'polidori-2016':
    'Polidori D, Sanghvi A, Seeley RJ, Hall KD. How strongly does appetite counter weight loss? Quantification of the feedback control of human energy intake. Obesity 2016;24:2289-2295.',
  'forbes-1987':
    'Forbes GB. Lean body mass-body fat interrelationships in humans. Nutr Rev 1987;45:225-231 (curve from memory).',
  'hall-2007':
    'Hall KD. Body fat and fat-free mass inter-relationships: Forbes theory revisited. Br J Nutr 2007;97:1059-1063.',
  'hall-2008':
    'Hall KD. What is the required energy deficit per unit weight loss? Int J Obes 2008;32:573-576.',
  'corless-1996':
    'Corless RM, Gonnet GH, Hare DEG, Jeffrey DJ, Knuth DE. On the Lambert W function. Adv Comput Math 1996;5:329-359.',
  'mifflin-1990':
    'Mifflin MD, St Jeor ST, Hill LA, Scott BJ, Daugherty SA, Koh YO. A new predictive equation for resting energy expenditure in healthy individuals. Am J Clin Nutr 1990;51:241-247.',
  'cunningham-1980':
    'Cunningham JJ. A reanalysis of the factors influencing basal metabolic rate in normal adults. Am J Clin Nutr 1980;33:2372-2374.',
  'cunningham-1991':
    'Cunningham JJ. Body composition as a determinant of energy expenditure: a synthetic review and a proposed general prediction equation. Am J Clin Nutr 1991;54:963-969 (from memory).',
  'ten-haaf-2014':
    'ten Haaf T, Weijs PJM. Resting energy expenditure prediction in recreational athletes of 18-35 years. PLoS ONE 2014;9:e108460 (coefficients from memory).',
  'jackson-2002':
    'Jackson AS, Stanforth PR, Gagnon J, et al. The effect of sex, age and race on estimating percentage body fat from body mass index: the HERITAGE Family Study. Int J Obes 2002;26:789-796.',
  'silva-2007':
    'Silva AM, Wang J, Pierson RN, et al. Extracellular water across the adult lifespan: reference values for adults. Physiol Meas 2007;28:489-502.',
  'siri-1961':
    'Siri WE. Body composition from fluid spaces and density: analysis of methods. In: Techniques for measuring body composition. National Academy of Sciences, 1961:223-244.',
  'brozek-1963':
    'Brozek J, Grande F, Anderson JT, Keys A. Densitometric analysis of body composition: revision of some quantitative assumptions. Ann N Y Acad Sci 1963;110:113-140.',
  'jackson-pollock-1978':
    'Jackson AS, Pollock ML. Generalized equations for predicting body density of men. Br J Nutr 1978;40:497-504.',
  'jackson-pollock-1980':
    'Jackson AS, Pollock ML, Ward A. Generalized equations for predicting body density of women. Med Sci Sports Exerc 1980;12:175-182.',
  'durnin-womersley-1974':
    'Durnin JVGA, Womersley J. Body fat assessed from total body density and its estimation from skinfold thickness. Br J Nutr 1974;32:77-97.',
  'hodgdon-beckett-1984':
    'Hodgdon JA, Beckett MB. Prediction of percent body fat for U.S. Navy men and women from body circumferences and height. Naval Health Research Center reports 84-11 and 84-29, 1984.',
  'van-der-ploeg-2003':
    'van der Ploeg GE, Withers RT, Laforgia J. Percent body fat via DEXA: comparison with a four-compartment model. J Appl Physiol 2003;94:499-506 (errors of methods from memory).',
  'kouri-1995':
    'Kouri EM, Pope HG, Katz DL, Oliva P. Fat-free mass index in users and nonusers of anabolic-androgenic steroids. Clin J Sport Med 1995;5:223-228.',
  'schutz-2002':
    'Schutz Y, Kyle UUG, Pichard C. Fat-free mass index and fat mass index percentiles in Caucasians aged 18-98 y. Int J Obes 2002;26:953-960.',
  'acsm-2018':
    "American College of Sports Medicine. ACSM's guidelines for exercise testing and prescription, 10th edition. Wolters Kluwer, 2018: metabolic equations.",
  'ainsworth-2011':
    'Ainsworth BE, Haskell WL, Herrmann SD, et al. 2011 Compendium of Physical Activities. Med Sci Sports Exerc 2011;43:1575-1581.',
  'herrmann-2024':
    'Herrmann SD, Willis EA, Ainsworth BE, et al. 2024 Adult Compendium of Physical Activities. J Sport Health Sci 2024;13:6-12.',
  'weir-1949':
    'Weir JB de V. New methods for calculating metabolic rate with special reference to protein metabolism. J Physiol 1949;109:1-9.',
  'lusk-1924':
    'Lusk G. Analysis of the oxidation of mixtures of carbohydrate and fat. J Biol Chem 1924;59:41-42 (from memory).',
  'robinson-watson-1965':
    'Robinson MF, Watson PE. Day-to-day variations in body-weight of young women. Br J Nutr 1965;19:225-235 (attribution from memory).',
  'turicchi-2020':
    "Turicchi J, O'Driscoll R, Horgan G, et al. Weekly, seasonal and holiday body weight fluctuation patterns among individuals engaged in a European multi-centre behavioural weight loss maintenance intervention. PLoS ONE 2020;15:e0232152.",
  'fernandez-elias-2015':
    'Fernandez-Elias VE, Ortega JF, Nelson RK, Mora-Rodriguez R. Relationship between muscle water and glycogen recovery after prolonged exercise in the heat in humans. Eur J Appl Physiol 2015;115:1919-1926.',
  'yorkin-2013':
    'Yorkin M, Spaccarotella K, Martin-Biggers J, Quick V, Byrd-Bredbenner C. Accuracy and consistency of weights provided by home bathroom scales. BMC Public Health 2013;13:1194.',
  'michailidis-2025':
    'Michailidis et al. Case report of a 30-week drug-free male preparation. Appl Sci 2025;15:79.',
  'kalman-1960':
    'Kalman RE. A new approach to linear filtering and prediction problems. J Basic Eng 1960;82:35-45.',
  'bryson-frazier-1963':
    'Bryson AE, Frazier M. Smoothing for linear and nonlinear dynamic systems. Proc Optimum System Synthesis Conf, 1963:353-364.',
  'bierman-1973':
    'Bierman GJ. Fixed interval smoothing with discrete measurements. Int J Control 1973;18:65-75.',
} as const satisfies Record<string, string>;
