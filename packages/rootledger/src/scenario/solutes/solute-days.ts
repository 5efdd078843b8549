/** Columns of the day table where salt is reckoned. ECe is the mean over the roots at the end of the day. */
export const saltColumns = [
  ["rootZoneEce", "dS/m", "state"],
  ["saltStored", "g", "state"],
  ["saltWithWater", "g", "flux"],
  ["saltBelowRoots", "g", "flux"],
] as const;

/** Columns of the day table where nitrogen is reckoned. */
export const nitrogenColumns = [
  ["nitrogenStored", "g", "state"],
  ["nitrogenOnGround", "g", "state"],
  ["nitrogenGiven", "g", "flux"],
  ["nitrogenTakenUp", "g", "flux"],
  ["nitrogenBelowRoots", "g", "flux"],
] as const;
