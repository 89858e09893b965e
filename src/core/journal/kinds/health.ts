/** Facts of the health room. */
export const healthKinds = {};
