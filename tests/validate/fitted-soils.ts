import { readFileSync, writeFileSync } from "node:fs";

type Values = Readonly<Record<string, number>>;

const file = new URL("../../data/soil-moisture/fitted.json", import.meta.url);

/** Parameters by station name, as the last `npm run validate -- --store` left them. */
export const fittedSoils = (): Readonly<Record<string, Values>> => JSON.parse(readFileSync(file, "utf8"));

/** Keeps fitted parameters, to five digits. */
export function storeFittedSoils(soils: Readonly<Record<string, Values>>): void {
  const rounded = Object.fromEntries(
    Object.entries(soils).map(([name, values]) => [
      name,
      Object.fromEntries(Object.entries(values).map(([key, value]) => [key, Number(value.toPrecision(5))])),
    ]),
  );
  writeFileSync(file, `${JSON.stringify(rounded, null, 2)}\n`);
}
