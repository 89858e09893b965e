/** Columns: see ../yields.ts. Worked out from raw and cooked samples of source usda-sr28. */
export const derivedYields = `
beef-mince-70-30-crumbles | beef, minced 70/30, crumbles, browned | 13498 | 13494 | 56.1 | protein | measured | -19.97
beef-mince-70-30-patty-grill | beef, minced 70/30, patty, grilled | 13498 | 13497 | 56.5 | protein | measured | -19.45
beef-mince-75-25-crumbles | beef, minced 75/25, crumbles, browned | 23577 | 23580 | 60 | protein | measured | -14.08
beef-mince-75-25-patty-grill | beef, minced 75/25, patty, grilled | 23577 | 23578 | 61.7 | protein | measured | -13.36
beef-mince-80-20-crumbles | beef, minced 80/20, crumbles, browned | 23572 | 23575 | 63.6 | protein | measured | -8.96
beef-mince-80-20-patty-grill | beef, minced 80/20, patty, grilled | 23572 | 23573 | 66.7 | protein | measured | -8.14
beef-mince-80-20-patty-pan | beef, minced 80/20, patty, pan-broiled | 23572 | 23574 | 71.4 | protein | measured | -8.62
beef-mince-80-20-loaf | beef, minced 80/20, loaf, baked | 23572 | 23576 | 68 | protein | measured | -9
beef-mince-85-15-crumbles | beef, minced 85/15, crumbles, browned | 23567 | 23570 | 67 | protein | measured | -4.74
beef-mince-85-15-patty-grill | beef, minced 85/15, patty, grilled | 23567 | 23568 | 71.7 | protein | measured | -3.95
beef-mince-90-10-crumbles | beef, minced 90/10, crumbles, browned | 23562 | 23565 | 70.3 | protein | measured | -1.54
beef-mince-90-10-patty-grill | beef, minced 90/10, patty, grilled | 23562 | 23563 | 76.6 | protein | measured | -1
beef-mince-90-10-patty-pan | beef, minced 90/10, patty, pan-broiled | 23562 | 23564 | 79.3 | protein | measured | -1.53
beef-mince-90-10-loaf | beef, minced 90/10, loaf, baked | 23562 | 23566 | 75.1 | protein | measured | -1.66
beef-mince-93-7-crumbles | beef, minced 93/7, crumbles, browned | 23472 | 23476 | 72.2 | protein | measured | -0.13
beef-mince-93-7-patty-grill | beef, minced 93/7, patty, grilled | 23472 | 23473 | 79.5 | protein | measured | 0.11
beef-mince-95-5-crumbles | beef, minced 95/5, crumbles, browned | 23557 | 23560 | 73.4 | protein | measured | 0.56
beef-mince-95-5-patty-grill | beef, minced 95/5, patty, grilled | 23557 | 23558 | 81.4 | protein | measured | 0.54
beef-mince-95-5-patty-pan | beef, minced 95/5, patty, pan-broiled | 23557 | 23559 | 83 | protein | measured | -0.07
beef-mince-95-5-loaf | beef, minced 95/5, loaf, baked | 23557 | 23561 | 78.4 | protein | measured | -0.01
beef-mince-97-3-crumbles | beef, minced 97/3, crumbles, browned | 23477 | 23481 | 74.6 | protein | measured | 1.07
beef-mince-97-3-patty-grill | beef, minced 97/3, patty, grilled | 23477 | 23478 | 83.4 | protein | measured | 0.72
beef-top-round-lean-grill | beef top round steak, lean only, grilled | 23354 | 13491 | 78.4 | protein | measured | 0.02
beef-flank-lean-grill | beef flank steak, lean only, grilled | 23656 | 23654 | 77.3 | protein | measured | 0.25
beef-sirloin-petite-roast | beef top sirloin petite roast, lean only, roasted | 23261 | 23259 | 79.1 | protein | measured | 0.7
beef-top-loin-lean-grill | beef top loin steak, lean only, grilled | 23369 | 13448 | 78.1 | protein | measured | 0.9
beef-top-sirloin-lean-grill | beef top sirloin steak, lean only, grilled | 23611 | 23610 | 75.1 | protein | measured | 0.3
elk-mince-pan | venison (elk), minced, pan-broiled | 17338 | 17339 | 81.7 | protein | measured | -1.68
venison-mince-pan | venison (deer), minced, pan-broiled | 17343 | 17344 | 82.3 | protein | measured | -0.36
chicken-breast-roast | chicken breast, skinless, roasted | 05062 | 05064 | 72.5 | protein | measured | -0.03
chicken-breast-grill | chicken breast, skinless, grilled | 05062 | 05747 | 73.7 | protein | measured | -0.28
chicken-breast-braised | chicken breast, skinless, braised | 05062 | 05746 | 70.2 | protein | measured | -0.35
chicken-mince-crumbles | chicken, minced, crumbles, browned | 05332 | 05333 | 74.9 | protein | measured | 0.08
chicken-breast-skin-roast-samples | chicken breast with skin, roasted, by samples | 05057 | 05060 | 70 | protein | measured | -3.81
chicken-thigh-roast | chicken thigh, skinless, roasted | 05096 | 05098 | 79.4 | protein | measured | 2.35
turkey-breast-whole-bird-roast | turkey breast of a whole bird, skinless, roasted | 05219 | 05220 | 78.5 | protein | measured | 0.15
turkey-breast-roast | turkey breast, skinless, roasted | 05710 | 05711 | 79.1 | protein | measured | -0.77
turkey-mince-cooked | turkey, minced, cooked | 05305 | 05306 | 71.8 | protein | measured | -0.19
turkey-mince-fat-free-crumbles | turkey, minced, fat free, crumbles, pan-broiled | 05662 | 05663 | 74.4 | protein | measured | 0.07
turkey-mince-93-7-crumbles | turkey, minced 93/7, crumbles, pan-broiled | 05665 | 05666 | 69.1 | protein | measured | -0.32
turkey-mince-93-7-patty-grill | turkey, minced 93/7, patty, grilled | 05665 | 05667 | 72.4 | protein | measured | -0.05
turkey-mince-85-15-crumbles | turkey, minced 85/15, crumbles, pan-broiled | 05668 | 05669 | 67.3 | protein | measured | -0.8
pork-tenderloin-lean-roast | pork tenderloin, lean only, roasted, by samples | 10060 | 10061 | 80.1 | protein | measured | 0.64
pork-mince-cooked | pork, minced, cooked | 10219 | 10220 | 65.7 | protein | measured | -7.54
cod-atlantic-dry-heat | cod, Atlantic, dry heat | 15015 | 15016 | 78 | protein | imputed | 0
cod-pacific-dry-heat | cod, Pacific, dry heat | 15019 | 15192 | 81.5 | protein | imputed | -0
tilapia-dry-heat | tilapia, dry heat | 15261 | 15262 | 76.8 | protein | measured | 0.33
flatfish-dry-heat | flatfish, dry heat | 15028 | 15029 | 81.4 | protein | imputed | -0
haddock-dry-heat | haddock, dry heat | 15033 | 15034 | 81.6 | protein | imputed | -0
halibut-dry-heat | halibut, dry heat | 15036 | 15037 | 82.3 | protein | imputed | -0
salmon-farmed-dry-heat | salmon, farmed, dry heat | 15236 | 15237 | 92.4 | protein | measured | -2.01
salmon-wild-atlantic-dry-heat | salmon, Atlantic, wild, dry heat | 15076 | 15209 | 78 | protein | imputed | 0
salmon-sockeye-dry-heat | salmon, sockeye, dry heat | 15085 | 15086 | 84 | protein | imputed | -0.01
tuna-yellowfin-dry-heat | tuna, yellowfin, dry heat | 15127 | 15221 | 83.7 | protein | imputed | 0
trout-dry-heat | trout, rainbow, dry heat | 15240 | 15241 | 83.8 | protein | imputed | 0
catfish-dry-heat | catfish, channel, dry heat | 15234 | 15235 | 82.6 | protein | imputed | -0
prawns-moist-heat | prawns, moist heat | 15149 | 15151 | 59.7 | protein | imputed | 0.01
scallops-steamed | scallops, steamed | 15172 | 90240 | 58.7 | protein | imputed | 0
white-rice-long-unenriched-boiled | white rice, long grain, unenriched, boiled | 20444 | 20445 | 280 | dry-matter | measured | 0.08
white-rice-long-boiled | white rice, long grain, boiled | 20044 | 20045 | 280 | dry-matter | measured | 0.08
white-rice-short-boiled | white rice, short grain, boiled | 20052 | 20053 | 275.5 | dry-matter | imputed | 0
brown-rice-long-boiled | brown rice, long grain, boiled | 20036 | 20037 | 296.7 | dry-matter | measured | -0.53
parboiled-rice-boiled | white rice, parboiled, boiled | 20046 | 20047 | 304.1 | dry-matter | measured | -0.08
instant-rice-prepared | white rice, instant, prepared | 20048 | 20049 | 308.9 | dry-matter | measured | 0.85
rice-cereal-boiled | rice cereal, ground, boiled in water | 08100 | 08101 | 716 | dry-matter | measured | 0.2
wheat-farina-boiled | wheat farina, boiled in water | 08102 | 08103 | 719.1 | dry-matter | measured | 0.03
oats-rolled-boiled | oats, rolled or quick, boiled in water | 08120 | 08121 | 544 | dry-matter | measured | 1.35
oats-instant-prepared | oats, instant, prepared with water | 08122 | 08123 | 570.3 | dry-matter | measured | -0.06
oat-bran-boiled | oat bran, boiled | 20033 | 20034 | 584.1 | dry-matter | measured | -2.4
pasta-boiled | pasta, boiled | 20120 | 20121 | 237.9 | dry-matter | measured | 0.58
pasta-whole-wheat-boiled | pasta, whole wheat, boiled | 20124 | 20125 | 240.3 | dry-matter | measured | 1.03
rice-noodles-boiled | rice noodles, boiled | 20133 | 20134 | 336.5 | dry-matter | measured | 0.1
couscous-prepared | couscous, prepared | 20028 | 20029 | 333.4 | dry-matter | measured | -0.1
quinoa-boiled | quinoa, boiled | 20035 | 20137 | 305.5 | dry-matter | measured | 0.09
barley-pearled-boiled | barley, pearled, boiled | 20005 | 20006 | 288.2 | dry-matter | measured | 0.77
bulgur-boiled | bulgur, boiled | 20012 | 20013 | 409.2 | dry-matter | measured | -0.37
potato-baked | potato, baked in its skin | 11352 | 11674 | 82.6 | dry-matter | measured | 0.02
potato-russet-baked | russet potato, baked in its skin | 11353 | 11356 | 83.8 | dry-matter | measured | 0.03
potato-white-baked | white potato, baked in its skin | 11354 | 11357 | 75 | dry-matter | measured | 0.02
potato-red-baked | red potato, baked in its skin | 11355 | 11358 | 81.6 | dry-matter | measured | -0.02
sweet-potato-baked | sweet potato, baked in its skin | 11507 | 11508 | 93.8 | dry-matter | measured | 0.07
black-beans-boiled | black beans, boiled | 16014 | 16015 | 259.7 | dry-matter | measured | -0.1
lentils-boiled | lentils, boiled | 16069 | 16070 | 302.2 | dry-matter | measured | -0.02
chickpeas-boiled | chickpeas, boiled | 16056 | 16057 | 232 | dry-matter | measured | -0.06
kidney-beans-boiled | red kidney beans, boiled | 16032 | 16033 | 266.9 | dry-matter | measured | 0.24
pinto-beans-boiled | pinto beans, boiled | 16042 | 16043 | 239.3 | dry-matter | measured | 0.32
`;
