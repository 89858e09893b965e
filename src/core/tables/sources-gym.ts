/** Where the gym's equations, tables and marks come from. */
export const gymSources = {
  'epley-1985':
    'Epley B. Poundage chart. Boyd Epley workout. Body Enterprises, Lincoln NE, 1985 (from memory).',
  'brzycki-1993':
    'Brzycki M. Strength testing: predicting a one-rep max from reps-to-fatigue. J Phys Educ Recreat Dance 1993;64(1):88-90 (from memory).',
  'lombardi-1989':
    'Lombardi VP. Beginning weight training: the safe and effective way. WC Brown, 1989 (from memory).',
  'wathan-1994':
    'Wathan D. Load assignment. In: Baechle TR, ed. Essentials of strength training and conditioning. Human Kinetics, 1994:435-446 (from memory).',
  'mayhew-1992':
    'Mayhew JL, Ball TE, Arnold MD, Bowen JC. Relative muscular endurance performance as a predictor of bench press strength in college men and women. J Appl Sport Sci Res 1992;6:200-206 (from memory).',
  'oconner-1989':
    "O'Conner B, Simmons J, O'Shea P. Weight training today. West Publishing, 1989 (from memory).",
  'lander-1985': 'Lander J. Maximum based on reps. Natl Strength Cond Assoc J 1985;6(6):60-61 (from memory).',
  'reynolds-2006':
    'Reynolds JM, Gordon TJ, Robergs RA. Prediction of one repetition maximum strength from multiple repetition maximum testing and anthropometry. J Strength Cond Res 2006;20:584-592.',
  'hutchins-2010':
    'Hutchins M, Gearhart R. Accuracy of 1-RM prediction equations for the bench press and biceps curl. J Exerc Physiol Online 2010;13(3):32-39.',
  'baechle-2008':
    'Baechle TR, Earle RW, Wathan D. Resistance training. In: Essentials of strength training and conditioning, 3rd edition. Human Kinetics, 2008: table of percent of one-repetition maximum (1 to 10 read in secondary tables; 11 and more from memory, prints differ).',
  'nuzzo-2024':
    'Nuzzo JL, Pinto MD, Nosaka K, Steele J. Maximal number of repetitions at percentages of the one repetition maximum: a meta-regression and moderator analysis of sex, age, training status, and exercise. Sports Med 2024;54:303-321.',
  'helms-2017':
    'Helms ER, Storey A, Cross MR, et al. RPE and velocity relationships for the back squat, bench press, and deadlift in powerlifters. J Strength Cond Res 2017;31:292-297.',
  'gray-2015':
    "Standring S, ed. Gray's anatomy: the anatomical basis of clinical practice, 41st edition. Elsevier, 2015 (muscle functions from memory).",
  'bishop-2018':
    'Bishop C, Read P, Lake J, Chavda S, Turner A. Interlimb asymmetries: understanding how to calculate differences from bilateral and unilateral tests. Strength Cond J 2018;40(4):1-6.',
  'robinson-1987':
    'Robinson RO, Herzog W, Nigg BM. Use of force platform variables to quantify the effects of chiropractic manipulation on gait symmetry. J Manipulative Physiol Ther 1987;10:172-176 (formula from memory).',
  'zifchock-2008':
    'Zifchock RA, Davis I, Higginson J, Royer T. The symmetry angle: a novel, robust method of quantifying asymmetry. Gait Posture 2008;27:622-627 (formula from memory).',
  'wilson-2012':
    'Wilson JM, Marin PJ, Rhea MR, et al. Concurrent training: a meta-analysis examining interference of aerobic and resistance exercises. J Strength Cond Res 2012;26:2293-2307 (from memory).',
  'stutz-2019':
    'Stutz J, Eiholzer R, Spengler CM. Effects of evening exercise on sleep in healthy participants: a systematic review and meta-analysis. Sports Med 2019;49:269-287 (from memory).',
} as const satisfies Record<string, string>;
