/** Every text of a grower's sheet. `$name` stands for a term. */
export interface SheetWords {
  readonly title: string;
  readonly holds: string;
  readonly each: string;
  readonly everyDay: string;
  readonly everyDays: string;
  readonly onDates: string;
  readonly water: string;
  readonly openingOne: string;
  readonly openings: string;
  readonly stop: string;
  readonly stopNextDay: string;
  readonly stopLater: string;
  readonly emittersAll: string;
  readonly emittersPlugged: string;
  readonly stopIfTitle: string;
  /** Two lines are left out where the programme itself is expected to cross them; `thirstier` stands in for one of them. */
  readonly stopIf: Readonly<Record<"wilting" | "airless" | "thirsty" | "thirstier" | "standing", string>>;
  /** The programme is expected to leave the soil beyond a limit just before a run. */
  readonly expectedBeyond: Readonly<Record<"thirsty" | "airless", string>>;
  readonly provesTitle: string;
  readonly proves: string;
  readonly provesThen: string;
  readonly when: Readonly<Record<"before-run" | "after-run" | "next-morning", string>>;
  readonly beyondTensiometer: string;
  readonly basis: string;
  readonly cautions: readonly string[];
  /** Stands before them where the water's salt is known. */
  readonly saltyWater: string;
  readonly notesTitle: string;
  readonly adviser: string;
}
