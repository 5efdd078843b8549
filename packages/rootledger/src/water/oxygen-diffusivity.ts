/**
 * Diffusivity of a gas in soil over that in free air, from the air-filled porosity e and the total porosity f.
 * `millington-quirk`: e^(10/3) / f^2, Millington & Quirk (1961), Trans. Faraday Soc. 57:1200. `moldrup`: e^2.5 / f, Moldrup
 * et al. (2000), SSSAJ 64:1588. `penman`: 0.66 e, Penman (1940). `buckingham`: e^2, Buckingham (1904). From memory. In wet soil
 * the first two differ by a factor of five, and which is right there decides the air of fine soils.
 */
export type DiffusivityLaw = "millington-quirk" | "moldrup" | "penman" | "buckingham";

/**
 * @param airFilled air-filled porosity, m3/m3; 0 gives 0
 * @throws RangeError if the porosities do not satisfy 0 <= airFilled <= porosity and porosity > 0.
 * @example gasDiffusivityRatio("moldrup", 0.1, 0.45) // 0.0070273
 */
export function gasDiffusivityRatio(law: DiffusivityLaw, airFilled: number, porosity: number): number {
  if (!(airFilled >= 0 && airFilled <= porosity && porosity > 0)) {
    throw new RangeError(`gasDiffusivityRatio requires 0 <= airFilled <= porosity: got ${airFilled} of ${porosity}`);
  }
  switch (law) {
    case "millington-quirk":
      return (airFilled * airFilled * airFilled * Math.cbrt(airFilled)) / (porosity * porosity);
    case "moldrup":
      return (airFilled * airFilled * Math.sqrt(airFilled)) / porosity;
    case "penman":
      return 0.66 * airFilled;
    case "buckingham":
      return airFilled * airFilled;
  }
}
