/** Facts of the gym room. */
export const gymKinds = {};
