/** Where the bundled tables come from. Keys are cited in `tables` and `kitchen`. */
export const tableSources = {
  'usda-sr28':
    'U.S. Department of Agriculture, Agricultural Research Service, Nutrient Data Laboratory. USDA National Nutrient Database for Standard Reference, Release 28. September 2015, slightly revised May 2016. Public domain.',
  'usda-yields-2014':
    'Roseland JM, Nguyen QV, Williams JR, Patterson KY, Showell BA, Pehrsson PR. USDA Table of Cooking Yields for Meat and Poultry, Release 2. U.S. Department of Agriculture, 2014. Rows of 1975: Matthews RH, Garrison YJ. Food Yields Summarized by Different Stages of Preparation. Agriculture Handbook 102.',
  'usda-sr28-legumes':
    'USDA National Nutrient Database for Standard Reference, Release 28, documentation: notes on legumes, Table 22 (weight cooked to weight uncooked).',
  'usda-retention-2007':
    'U.S. Department of Agriculture. USDA Table of Nutrient Retention Factors, Release 6. 2007.',
  'merrill-watt-1973':
    'Merrill AL, Watt BK. Energy Value of Foods: Basis and Derivation. Agriculture Handbook 74. U.S. Department of Agriculture, 1973.',
  'cold-storage-chart':
    'U.S. Department of Health and Human Services, FoodSafety.gov. Cold Food Storage Chart, and the two-hour rule (one hour above 90 F).',
  'safe-temperature-chart':
    'U.S. Department of Agriculture, Food Safety and Inspection Service; FoodSafety.gov. Safe Minimum Internal Temperature Chart.',
  'fsa-rice':
    'Food Standards Agency (United Kingdom). Advice on cooling and reheating rice: cool within one hour, eat within 24 hours, reheat once (from memory).',
} as const satisfies Record<string, string>;
