/** Columns: form | name | raw food | weight cooked to weight uncooked. Source usda-sr28-legumes. */
export const legumeRatios = `
legume-black | black beans, boiled, by the legume table | 16014 | 2.3
legume-cranberry | cranberry beans, boiled | - | 2.3
legume-great-northern | great northern beans, boiled | - | 2.5
legume-navy | navy beans, boiled | - | 2.3
legume-pink | pink beans, boiled | - | 2.3
legume-pinto | pinto beans, boiled, by the legume table | - | 2.4
legume-red-kidney | red kidney beans, boiled, by the legume table | - | 2.4
legume-small-red | small red beans, boiled | - | 2.3
legume-small-white | small white beans, boiled | - | 2.3
legume-broad | broad beans, boiled | - | 2.8
legume-chickpeas | chickpeas, boiled, by the legume table | 16056 | 2.1
legume-cowpeas | cowpeas, boiled | - | 2.6
legume-lima-baby | baby lima beans, boiled | - | 2.4
legume-lima-large | large lima beans, boiled | - | 2.6
legume-lentils | lentils, boiled, by the legume table | 16069 | 2.7
legume-mung | mung beans, boiled | - | 3.2
legume-split-peas | split peas, boiled | - | 2.5
legume-pigeon-peas | pigeon peas, boiled | - | 2.6
`;
