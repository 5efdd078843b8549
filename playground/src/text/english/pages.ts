import type { PageName } from "../../state/scene.js";

/** Names of the pages and what is said while one is fetched. */
export const pages = {
  label: "Pages",
  names: {
    compare: "Compare",
    block: "Block",
    section: "Section",
    sheet: "Sheet",
    class: "Class",
    truth: "Truth",
  } satisfies Readonly<Record<PageName, string>>,
  /** In the window's title. */
  titles: {
    compare: "compare watering programmes",
    block: "the block from above",
    section: "the soil hour by hour",
    sheet: "the sheet for the grower",
    class: "lessons",
    truth: "published checks",
  } satisfies Readonly<Record<PageName, string>>,
  fetching: (page: PageName): string => `Fetching the page ${pages.names[page]}`,
  missing: "This page could not be fetched: the device is offline and has not kept it yet. Nothing is lost.",
  again: "Try again",
  resume: "Go on with what you last set on this device",
  skip: "Skip to the content",
};
