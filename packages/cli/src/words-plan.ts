/** Texts of `rootledger plan`. */
export const planWords = {
  title: "Year by year",
  columns: [
    "age",
    "canopy m",
    "roots m",
    "least L/day",
    "peak L/day",
    "hot L/day",
    "lines",
    "open",
    "on roots",
    "hot-day h",
  ],
  legend:
    "Litres are gross, per tree and day: the span with the smallest and the largest need, and its hot day. Open: emitters open of all at a tree. On roots: share of their water that falls on the root disc. Hot-day h: hours that the open emitters need for the hot day.",
  lines: "Age at which the roots reach the water of each line",
  never: "not within the ages given",
  years: "years",
  age: "age",
  lookAt: "Look at",
  apart: "wetted circles of open emitters do not join",
  lowFlow: "the sector's flow falls below the smallest flow of pump and filter",
  pressure: "emitters that do not compensate pressure give more once others are plugged: measure the flow",
  trunk: "an emitter wets the trunk: move the line or plug it, wet bark invites rot",
  cautions:
    "Roots are taken as a disc in proportion to the canopy: dig before a line is opened or an emitter plugged. Fertiliser goes with the canopy's ground here; leaf and soil analysis, nitrate rules and licensed advice decide. Anything injected needs a guard against backflow. No yield is promised.",
} as const;
