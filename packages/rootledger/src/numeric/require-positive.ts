/**
 * Refuses arguments that are not finite and above 0; the message names the caller, the argument and what it received.
 * @throws RangeError for the first argument at fault. @example requirePositive("flow", { radiusCm: 3 })
 */
export function requirePositive(caller: string, values: Readonly<Record<string, number>>): void {
  for (const [name, value] of Object.entries(values)) {
    if (!(value > 0 && value < Number.POSITIVE_INFINITY)) {
      throw new RangeError(`${caller} requires ${name} above 0: got ${value}`);
    }
  }
}
