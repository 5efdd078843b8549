/** Words of the sheet that the class fills in and of the trainer's key. */
export const classHandout = {
  handout: "Handout",
  withKey: "with the key",
  print: "Print",
  saveHandout: "Save as a file",
  closeHandout: "Back to the lesson",
  handoutTitle: "Water and air in the root zone: a handout",
  handoutFile: "handout.html",
  name: "Name",
  ourGuess: "Our guess:",
  seen: "What we saw:",
  key: "Key",
  questionsHeading: "Three questions",
  questions: [
    [
      "Why does a drowned tree wilt?",
      "Without air roots take up little water, so the leaves wilt although the soil is wet.",
    ],
    [
      "Why can clay need frequent small water and still be the soil that drowns?",
      "Little of its water lies between the two limits, so it lends little; and it drains slowly, so air stays away long after each run.",
    ],
    [
      "Name one thing to check before changing hours.",
      "Root depth in a pit; or a tensiometer at two depths; or what one emitter gives.",
    ],
  ] as readonly (readonly [string, string])[],
  sumsHeading: "Sums with a known answer",
  /** Parts between the answers; answers are left blank on the class's sheet. */
  panTitle: "From the pan to the tree",
  panGiven:
    "The pan lost 7 mm in a day. Pan coefficient 0.7, crop coefficient 0.8; the tree has 15 m² of ground, 80 % of it covered.",
  panDepth: "7 × 0.7 × 0.8 =",
  panLitres: "Litres for the tree: that × 15 × 0.8 =",
  panSource: "Peruvian avocado manual, worked example; the litres are our arithmetic.",
  runsTitle: "Two drippers or a micro-sprinkler",
  runsGiven:
    "A citrus tree of 9 m² on loam wants 62.5 L on a January day. The ground under two drippers holds 34 L for it, the ground under a micro-sprinkler 189 L (9 m², roots of 30 cm, 70 mm per metre).",
  runsHeld: "Check what the sprinkled ground holds: 9 × 0.30 × 70 =",
  runsDrippers: "Runs a day with two drippers: 62.5 ÷ 34, rounded up =",
  runsSprinkler: "Whole days between runs with the sprinkler: 189 ÷ 62.5, rounded down =",
  runsSource: "Western Australia agriculture department, citrus irrigation recommendations.",
  windowTitle: "The window of each soil",
  windowGiven:
    "Water that a metre of soil holds between 8 and 20 kPa. Work out what 30 cm of roots can borrow, and the litres of a tree with 24 m² when a third of the ground is wetted (× 24 ÷ 3). Its peak day wants 126 L: which soil can lend that?",
  windowHead: ["Soil", "mm in a metre", "mm in 30 cm", "L per tree"],
  windowAnswer:
    "None: with a third of the ground wetted no soil lends a whole peak day. How much ground is wetted decides first how often to water, texture second.",
  windowSource:
    "Agriculture Victoria, How to determine readily available water, table 1; the same table in NSW Primefact 1362 (2014). The 126 L: ET0 7.5 mm, Kc 0.7 on 24 m² (INIA Chile, irrigation card for Hass).",
  soils: {
    sand: "sand",
    "loamy sand": "loamy sand",
    "sandy loam": "sandy loam",
    "sandy clay loam": "sandy clay loam",
    "clay loam": "clay loam",
    clay: "clay",
  },
  millimetres: "mm",
  litres: "L",
  runsADay: "a day",
  daysApart: "days",
};
