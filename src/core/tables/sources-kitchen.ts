/** Rules of food labels and of combining uncertainty. Keys are cited in `kitchen`. */
export const kitchenSources = {
  'cfr-101-9':
    'Code of Federal Regulations, title 21, section 101.9(c) (nutrition labeling: rounding, general factors 4, 4 and 9 kcal/g); U.S. Food and Drug Administration, Guide to Nutrition Labeling and Education Act Requirements, attachment 7.',
  'eu-1169-2011':
    'Regulation (EU) No 1169/2011 of the European Parliament and of the Council on the provision of food information to consumers, Annex XIV (conversion factors).',
  'eu-rounding-2012':
    'European Commission, Health and Consumers Directorate-General. Guidance document on the setting of tolerances for nutrient values declared on a label, section on rounding. December 2012 (figures for potassium from memory).',
  'jcgm-100':
    'Joint Committee for Guides in Metrology. Evaluation of measurement data: Guide to the expression of uncertainty in measurement. JCGM 100:2008 (4.3.7 rectangular distribution; 5.1.2 combined standard uncertainty).',
  'schema-org-recipe':
    'schema.org, types Recipe, NutritionInformation, HowToStep, HowToSupply and QuantitativeValue (recipeYield, recipeIngredient, recipeInstructions, supply, requiredQuantity; unit codes of UN/CEFACT). W3C Schema.org Community Group.',
} as const satisfies Record<string, string>;
