/** Columns: see ../yields.ts. Source usda-yields-2014; rows of 1975 go back to its forerunner, which gave neither n nor SD. */
export const publishedYields = `
beef-mince-over-22-crumbles | beef, minced, over 22 % fat, crumbles, pan-fried | 13498 23577 | 13494 | 62 | 60.31 | 63.89 | 4 | 1.6 | -24.96 | -12.57 | 2003
beef-mince-over-22-loaf | beef, minced, over 22 % fat, loaf, baked | 13498 23577 | 13495 | 63 | 61.94 | 63.89 | 4 | 0.863 | -22.48 | -12.88 | 2003
beef-mince-over-22-patty-pan | beef, minced, over 22 % fat, patty, pan-broiled | 13498 23577 | 13496 | 69 | 67.55 | 72.23 | 4 | 2.102 | -18.18 | -12.39 | 2003
beef-mince-over-22-patty-grill | beef, minced, over 22 % fat, patty, grilled | 13498 23577 | 13497 | 63 | 55.33 | 69.44 | 4 | 2.622 | -24.15 | -11.98 | 2003
beef-mince-12-22-crumbles | beef, minced, 12 to 22 % fat, crumbles, pan-fried | 23572 23567 | 23575 | 67 | 63.7 | 71.62 | 4 | 3.534 | -27.83 | -5.32 | 2002
beef-mince-12-22-loaf | beef, minced, 12 to 22 % fat, loaf, baked | 23572 23567 | 23576 | 70 | 65.08 | 76.25 | 4 | 4.86 | -23.97 | -5.73 | 2002
beef-mince-12-22-patty-grill | beef, minced, 12 to 22 % fat, patty, grilled | 23572 23567 | 23573 | 69 | 63.96 | 72.42 | 4 | 3.879 | -25.1 | -5.17 | 2002
beef-mince-12-22-patty-pan | beef, minced, 12 to 22 % fat, patty, pan-broiled | 23572 23567 | 23574 | 73 | 70.78 | 75.97 | 4 | 2.768 | -20.82 | -6.22 | 2002
beef-mince-under-12-crumbles | beef, minced, under 12 % fat, crumbles, pan-fried | 23562 23472 23557 23477 | 23565 | 69 | 67.08 | 69.53 | 4 | 1.083 | -29.56 | -1.39 | 2002
beef-mince-under-12-loaf | beef, minced, under 12 % fat, loaf, baked | 23562 23472 23557 23477 | 23566 | 72 | 67.59 | 73.93 | 4 | 2.817 | -25.93 | -1.72 | 2002
beef-mince-under-12-patty-grill | beef, minced, under 12 % fat, patty, grilled | 23562 23472 23557 23477 | 23563 | 73 | 72.82 | 74.68 | 4 | 0.856 | -24.21 | -1.55 | 2002
beef-mince-under-12-patty-pan | beef, minced, under 12 % fat, patty, pan-broiled | 23562 23472 23557 23477 | 23564 | 77 | 76.37 | 78.3 | 4 | 0.805 | -21.25 | -1.4 | 2002
beef-flank-steak-grill | beef flank steak, lean and fat, grilled | 23656 | 13948 | 81 | 74 | 89 | 20 | 4.128 | -22.55 | -0.99 | 2003
beef-top-round-steak-grill | beef top round steak, lean and fat, grilled | 23354 | 13893 | 72 | 62 | 83 | 20 | 5.324 | -28.42 | -1.8 | 2000
beef-top-sirloin-steak-grill | beef top sirloin steak, lean and fat, grilled | 23611 | 13930 | 80 | 69 | 87 | 20 | 4.871 | -25.16 | -2.73 | 2000
beef-tenderloin-steak-grill | beef tenderloin steak, lean and fat, grilled | - | 13918 | 80 | 71 | 86 | 19 | 3.91 | -21.25 | -5.85 | 2000
beef-eye-of-round-roast | beef eye of round roast, lean and fat, baked | - | 13878 | 81 | 75 | 83 | 20 | 1.987 | -23.92 | -1.17 | 2000
beef-bottom-round-roast | beef bottom round roast, lean and fat, baked | - | 13870 | 84 | 76 | 88 | 20 | 2.741 | -20.64 | -2.8 | 2000
beef-bottom-round-steak-braised | beef bottom round steak, lean and fat, braised | - | 13869 | 69 | 62 | 70 | 20 | 2.137 | -34.01 | -4.44 | 2000
beef-tri-tip-roast | beef tri-tip roast, lean and fat, baked | - | 13953 | 84 | 77 | 89 | 20 | 3.052 | -22.38 | -0.12 | 2003
beef-cuts-grill | beef, all retail cuts, grilled | 23354 23656 23261 23611 | - | 78 | 68.6 | 87.98 | 458 | 4.392 | - | - | 2011
beef-cuts-braised | beef, boneless retail cuts, braised | 23354 23656 23261 23611 | - | 67 | 55.74 | 84.17 | 361 | 7.439 | - | - | 2011
beef-liver-braised | beef liver, braised | - | 13326 | 68 | - | - | 1 | - | -30.6 | -0.04 | 2003
beef-liver-pan | beef liver, pan-fried | - | 13327 | 73 | - | - | 1 | - | -25.71 | -0.23 | 2003
chicken-breast-skin-roast | chicken breast with skin, roasted | - | 05060 | 72 | 61 | 82 | - | - | - | - | 1975
chicken-breast-skin-simmered | chicken breast with skin, simmered | - | 05061 | 77 | 70 | 88 | - | - | - | - | 1975
chicken-drumstick-skin-roast | chicken drumstick with skin, roasted | - | 05069 | 76 | 63 | 87 | - | - | - | - | 1975
chicken-thigh-skin-roast | chicken thigh with skin, roasted | - | 05094 | 69 | 58 | 79 | - | - | - | - | 1975
chicken-thigh-skin-simmered | chicken thigh with skin, simmered | - | 05095 | 74 | 67 | 82 | - | - | - | - | 1975
chicken-whole-roast | chicken, whole with skin, roasted | - | 05004 | 78 | 68 | 84 | - | - | - | - | 1975
chicken-whole-simmered | chicken, whole with skin, simmered | - | 05010 | 75 | 69 | 87 | - | - | - | - | 1975
chicken-drumstick-skin-braised | chicken drumstick with skin, braised | - | 05676 | 77 | - | - | 1 | - | -9.71 | -0.21 | 2011
chicken-thigh-skin-braised | chicken thigh with skin, braised | - | 05677 | 68 | - | - | 1 | - | -9.67 | -2.44 | 2011
chicken-thigh-skin-enhanced-roast | chicken thigh with skin, with added solution, roasted | - | 05692 | 67 | - | - | 1 | - | -10.28 | -2.17 | 2013
chicken-liver-pan | chicken liver, pan-fried | - | 05661 | 62 | 61.14 | 63.83 | 4 | 1.247 | -35.78 | -0.83 | 2003
turkey-breast-skin-enhanced-roast | turkey breast with skin, with added solution, roasted | - | 05731 | 68 | - | - | 1 | - | -16.96 | -1.93 | 2013
turkey-breast-skin-roast | turkey breast with skin, roasted | - | 05733 | 72 | - | - | 1 | - | -13.77 | -2.28 | 2013
turkey-thigh-skin-roast | turkey thigh with skin, roasted | - | 05743 | 83 | - | - | 1 | - | -10.86 | -0.67 | 2013
turkey-drumstick-skin-roast | turkey drumstick with skin, roasted | - | 05737 | 72 | - | - | 1 | - | -12.97 | 0.47 | 2013
turkey-whole-enhanced-roast | turkey, whole with skin, with added solution, roasted | - | 05707 | 71 | - | - | 1 | - | -11.07 | -1.55 | 2013
turkey-whole-roast | turkey, whole with skin, roasted | - | 05166 | 71 | - | - | 1 | - | -11.29 | 0.18 | 2013
turkey-sausage-grill | turkey sausage, fresh, grilled | - | 07958 | 77 | - | - | 1 | - | -20.12 | -0.01 | 2002
pork-tenderloin-roast | pork tenderloin, lean only, roasted | 10060 | 10061 | 77 | 74 | 84 | 12 | 3 | -20.7 | 0.5 | 2009
pork-sirloin-chop-grill | pork sirloin chop, boneless, grilled | - | 10212 | 79 | 73 | 94 | 12 | 5.38 | -23.2 | 0.1 | 2011
pork-loin-chop-pan | pork top loin chop, boneless, pan-fried | - | 10186 | 77 | 60 | 85 | 12 | 5.94 | -22.2 | -0.9 | 2011
pork-loin-chop-braised | pork top loin chop, boneless, braised | - | 10063 | 73 | 62 | 84 | 12 | 4.1 | -24.9 | -0.9 | 2011
pork-mince-under-10-crumbles | pork, minced, under 10 % fat, crumbles, browned | - | 10976 | 68 | 61 | 74 | 4 | 5.495 | -31.73 | -0.2 | 2009
pork-mince-10-27-crumbles | pork, minced, 10 to 27 % fat, crumbles, browned | 10219 | 10975 | 67 | 62 | 75 | 4 | 5.694 | -30.33 | -1.8 | 2009
pork-mince-over-27-crumbles | pork, minced, over 27 % fat, crumbles, browned | - | 10974 | 66 | 56 | 81 | 4 | 10.572 | -27.88 | -6.5 | 2009
pork-mince-under-10-patty-grill | pork, minced, under 10 % fat, patty, grilled | - | 10979 | 68 | 64 | 70 | 4 | 2.504 | -32.66 | 0.2 | 2009
bacon-pan | pork bacon, cured, pan-fried | - | 10862 | 32 | - | - | 1 | - | -36.8 | -28.6 | 2012
bacon-baked | pork bacon, cured, baked | - | 10860 | 32 | 30.53 | 32.57 | 3 | 0.784 | -35.53 | -32.37 | 2003
bison-mince-patty | bison, minced, grilled | - | 17331 | 77 | 75.56 | 78.86 | 6 | 1.251 | -18.15 | -4.21 | 2001
venison-mince-patty | venison (deer), minced, grilled | 17343 | 17344 | 83 | 81.22 | 84.87 | 3 | 1.878 | -17.71 | -0.05 | 2001
elk-mince-patty | venison (elk), minced, grilled | - | 17339 | 84 | 80.05 | 88.91 | 5 | 3.651 | -15 | -1.5 | 2001
veal-top-round-grill | veal top round cutlet, boneless, grilled | - | 17425 | 74 | 66.51 | 82.73 | 6 | 5.523 | -21.38 | 0.02 | 2014
`;
