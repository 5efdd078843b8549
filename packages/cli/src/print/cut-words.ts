/** Why a run was cut or left out. */
export const cutWords = {
  rain: "rain",
  "longest-run": "longest run",
  "pump-hours": "pump hours",
  allocation: "allocation",
  "allowed-hours": "allowed hours",
  "shortest-pulse": "shorter than the shortest pulse",
  overlap: "the run before or the next decision",
  "fewer-pulses": "given in fewer pulses",
} as const;
