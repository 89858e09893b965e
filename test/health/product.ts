/** A supplement of one capsule with what is in it. */
export const product = (supplement: string, contents: object[], more: object = {}) => ({
  supplement,
  name: supplement,
  unit: 'capsule',
  perUnits: 1,
  contents,
  ...more,
});
