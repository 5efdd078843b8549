export { answerRules, type StationAnswers } from "./answers.js";
export { type DailyOfTable, type DailyRules, dailyWeatherOf } from "./daily-weather-of.js";
export { formatStationTable } from "./format-station-table.js";
export { type Joined, joinDailyWeather } from "./join-daily-weather.js";
export { type Quantity, type QuantityName, quantities } from "./quantity.js";
export { type Mark, mark } from "./special-cell.js";
export type { StationChoice, StationQuestion } from "./station-question.js";
export type {
  Assumption,
  Caution,
  ColumnReport,
  RejectedRow,
  Repair,
  RepairCode,
  StationReport,
  StationSite,
} from "./station-report.js";
export type { StationColumn, StationTable } from "./station-table.js";
export { stationTime } from "./station-time.js";
export { type StationProgress, type Understood, understandStationFile } from "./understand-station-file.js";
