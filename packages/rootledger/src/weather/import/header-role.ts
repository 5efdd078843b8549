import type { QuantityName } from "./quantity.js";

/** What a column is for. */
export type Role =
  | { readonly kind: "quantity"; readonly quantity: QuantityName; readonly canonical: boolean }
  | { readonly kind: "date" | "time" | "year" | "month" | "day" | "day-of-year" | "interval-start" | "interval-end" }
  | {
      readonly kind:
        | "notes"
        | "flag"
        | "record"
        | "station"
        | "latitude"
        | "longitude"
        | "elevation"
        | "depth"
        | "probe";
    }
  | { readonly kind: "other" };

export type RoleKind = Role["kind"];

export const isQuantity = (role: Role): role is Extract<Role, { kind: "quantity" }> => role.kind === "quantity";
