import type { Question } from "rootledger/compare";
import type { Words } from "./english.js";
import { amount, clock, listed, percent, signedAmount, whole } from "./number-format.js";
import { depthText, measured, measuredUnit, tensionText, unitText, waterText } from "./quantity.js";
import { check } from "./spanish/check.js";
import { draws } from "./spanish/draws.js";
import { faultRules } from "./spanish/faults.js";
import { pages } from "./spanish/pages.js";
import { programmes } from "./spanish/programmes.js";
import { floorBases, measures, plural, questions, shortMeasures, textures, units } from "./spanish/terms.js";

const counts = ["ningún", "un", "dos", "tres", "cuatro"];

export const spanish: Words = {
  appName: "Rootledger",
  tagline: "la cuenta de agua y aire de una zona de raíces somera",
  headline: (sameWater, programmes) =>
    sameWater
      ? `La misma agua, ${counts[programmes]} maneras de darla`
      : `${capital(counts[programmes]!)} programas, no la misma agua`,
  skipToPictures: "Ir a las figuras",
  language: { label: "Idioma", en: "English", es: "español" },

  theme: { label: "Colores", auto: "los del aparato", light: "claros", dark: "oscuros" },
  number: (least, most) => `Un número de ${least} a ${most}`,
  units: { label: "Unidades", water: "Agua", depth: "Lámina", tension: "Tensión", salt: "Sal", area: "Superficie" },
  wall: { on: "Mostrar en la pared", off: "Volver al escritorio" },

  programmes,
  amount: {
    lock: "Los mismos litros para todos:",
    unlocked: "Los mismos litros para todos",
    unit: (): string => `${unitText("water")} por árbol y día`,
    label: "Litros por árbol y día, para todos los programas",
    free: "cada programa da lo que dicen sus minutos",
  },
  shared: (locked, litresPerDay, tree) =>
    `${locked ? `Los mismos litros para todos, ${waterText(litresPerDay)} al día` : "Cada uno sus litros"}; árbol ${tree}`,
  start: { label: "Comienzo", settled: "cada uno asentado a su manera", "same-state": "todos desde el mismo suelo" },
  tree: {
    label: "Árbol",
    mean: "medio",
    "under-fed": "cuarto inferior",
    "over-fed": "extremo bajo de la línea",
    sectionIsMean: "La figura muestra el árbol medio.",
  },
  span: { label: "Días mostrados", "3": "3 días", "14": "2 semanas", season: "temporada" },

  soil: {
    row: (index) => `Suelo ${index + 1}`,
    textureLabel: "Textura",
    structureLabel: "Estructura",
    structures: { tight: "apretada", ordinary: "corriente", crumbly: "grumosa" },
    name: (texture, structure) => {
      const name = textures[texture] ?? texture;
      if (structure === "ordinary") return capital(name);
      return capital(`${name}, estructura ${structure === "tight" ? "apretada" : "grumosa"}`);
    },
    window: (mm, litres, airKPa, pullKPa) =>
      `Presta ${depthText(mm)}, ${waterText(litres)} por árbol, entre ${tensionText(airKPa)} (vuelve el aire) y ${tensionText(pullKPa)} (las raíces ya no tiran).`,
  },

  section: {
    title: (soil, when, airless, thirsty) =>
      `${soil}, ${when}: raíces sin aire ${shares(airless)}; con sed ${shares(thirsty)}`,
    summary: (programme, airless, thirsty, wettest, driest) =>
      `El suelo visto a lo largo de la fila con ${programme}: ${percent(airless)} de las raíces sin aire, ${percent(thirsty)} con sed; agua del ${percent(driest)} al ${percent(wettest)} del volumen.`,
    rootsTo: (cm) => `raíces hasta ${amount(cm)} cm`,
    tableCaption: "Agua por celda, porcentaje del volumen del suelo; * raíces sin aire, ° raíces con sed",
    layer: "Profundidad, cm",
    lane: (from, to) => `${amount(from)}–${amount(to)} cm de la fila`,
    smoothed: "Dibujado con transición entre centros de celda; la tabla da el número de cada celda.",
  },
  key: {
    airless: "raíces sin aire",
    thirsty: "raíces con el suelo demasiado seco",
    water: (low, high) => `agua, del ${percent(low)} al ${percent(high)} del suelo`,
  },
  below: {
    title: (litres, share) =>
      `Bajo las raíces en la temporada: ${listed(litres.map((l) => `${waterText(l)}`))} por árbol, ${listed(share.map(percent))} de lo que entró`,
    sofar: (litres) => `${waterText(litres)} bajo las raíces hasta ahora`,
    inDays: (litres) => `${waterText(litres)} bajo las raíces en estos días`,
    total: (litres) => `${waterText(litres)} al final de la temporada`,
    none: "nada sale bajo las raíces",
    quantity: "Bajo las raíces",
    until: "Hasta ahora",
    whole: "Temporada",
    share: "De lo que entró",
  },
  storage: {
    title: (soil, above, beneath) => {
      const inside = above.every((x) => x < 0.01) && beneath.every((x) => x < 0.01);
      if (inside) return `${soil}: dentro de sus dos límites con todos los programas`;
      return `${soil}: por encima de la línea del aire ${listed(above.map(percent))} de la temporada, por debajo de la de tiro ${listed(beneath.map(percent))}`;
    },
    summary: (programme, low, high, air, pull) =>
      `Agua de la zona de raíces por hora con ${programme}: de ${amount(low)} a ${depthText(high)} en los días mostrados; el aire vuelve por debajo de ${depthText(air)}, las raíces no tiran por debajo de ${depthText(pull)}.`,
    air: "por debajo vuelve el aire",
    pull: "más abajo no tiran las raíces",
    runs: "riego",
    rain: "lluvia",
    noRain: "ninguna en estos días",
    axis: "mm de agua en la zona de raíces",
    day: "Día",
    tableCaption: "Agua de la zona de raíces al final de cada día; horas de válvula abierta; lluvia, mm",
  },
  hours: {
    title: (total, thirsty, airless) =>
      `De ${whole(total)} horas, raíces con sed ${listed(thirsty.map(whole))}, sin aire ${listed(airless.map(whole))}`,
    summary: (programme, thirsty, fine, airless) =>
      `Horas de raíz con ${programme}: ${whole(thirsty)} con sed, ${whole(fine)} bien, ${whole(airless)} sin aire.`,
    thirsty: "con sed",
    fine: "bien",
    airless: "sin aire",
    unit: "Horas de raíz",
    summaryOfAll: "Horas ponderadas por la parte de las raíces, en la temporada",
  },
  ledger: {
    heading: (soil) => `${soil}: la cuenta`,
    unit: (): string => `${unitText("water")} por árbol en la temporada`,
    emitters: "Dieron los emisores",
    rain: "Trajo la lluvia",
    heldByLeaves: "De ella retuvieron las hojas",
    heldByLayer: "De ella retuvo la hojarasca o el mantillo",
    drank: "Bebió el árbol",
    evaporated: "Se evaporó",
    runoff: "Se escurrió",
    bottom: "Salió por abajo",
    store: "Ganó el suelo",
    residual: "Sin explicar",
    wanted: "Quería el árbol",
    residualNote: (fraction) =>
      `Sin explicar: ${fraction < 1e-9 ? "menos de una milmillonésima parte" : `como mucho ${fraction.toExponential(0)}`} de lo que entró.`,
  },
  verdict: {
    heading: "Qué cambió",
    pair: (from, to, asked) =>
      asked.length === 0 ? `De ${from} a ${to}: no cambia nada` : `De ${from} a ${to}: ${list(asked)}`,
    mixed: (from, to, asked) =>
      `De ${from} a ${to} cambian a la vez ${list(asked)}: a ninguno se le puede dar el mérito.`,
    clear: (id, unit, verdict, difference, fromValue, toValue, floor) =>
      `${measures[id] ?? id}: ${verb(id, verdict)} ${valueText(Math.abs(difference), unit)}, de ${amount(measured(fromValue, unit))} a ${valueText(toValue, unit)} (margen ${valueText(floor, unit)}).`,
    measure: (id, unit) => `${measures[id] ?? id}, ${unitName(unit)}`,
    floorReason: ({ floorBasis }) => floorBases[floorBasis],
    unclear: (id, unit, difference, floor) =>
      `${measures[id] ?? id}: sin diferencia clara (${signedAmount(measured(difference, unit))} ${unitName(unit)}, margen ${valueText(floor, unit)}).`,
    unsure: (id, unit, difference, band) =>
      `${measures[id] ?? id}: ${signedAmount(measured(difference, unit))} ${unitName(unit)} en el cálculo único, pero los sorteos no concuerdan: de ${signedAmount(measured(band.low, unit))} a ${signedAmount(measured(band.high, unit))} en nueve de diez.`,
    brief: (from, to, asked, clear) => {
      const what = asked.length === 1 ? ` (${questions[asked[0]!]})` : "";
      const items = clear.map(
        (d) => `${shortMeasures[d.id] ?? d.id} ${signedAmount(measured(d.difference, d.unit))} ${unitName(d.unit)}`,
      );
      return `De ${from} a ${to}${what}: ${items.length === 0 ? "sin diferencia clara" : items.join("; ")}.`;
    },
  },
  badgesLabel: "Qué es igual",
  badges: {
    "same-water": ["La misma agua", "No la misma agua"],
    "same-weather": ["El mismo clima", "No el mismo clima"],
    "same-start": ["El mismo comienzo", "No el mismo comienzo"],
    settled: ["Asentado", "No asentado"],
    "one-question": ["Una pregunta a la vez", "Más de una pregunta a la vez"],
  },
  badgeDetail: ({ id, holds, figures = {} }) => {
    const { leastL = 0, mostL = 0, apartFraction = 0, changeFraction = 0 } = figures;
    switch (id) {
      case "same-water":
        return `de ${amount(leastL)} a ${waterText(mostL)} por árbol, ${percent(apartFraction)} de distancia`;
      case "same-weather":
        return holds ? "ET0 y lluvia de cada día son iguales" : "ET0 o lluvia difieren algún día";
      case "same-start":
        return holds
          ? "todos los programas parten del mismo estado del suelo"
          : "el agua del suelo al comienzo difiere entre programas";
      case "settled":
        return `cada uno repetido bajo su propio programa; último cambio: ${percent(changeFraction)} del agua aplicada por ciclo`;
      case "one-question":
        return holds
          ? "cada programa cambia una cosa respecto al anterior"
          : "algún programa cambia más de una cosa a la vez";
    }
  },

  time: {
    label: "Hora mostrada en todas las figuras",
    play: "Avanzar",
    pause: "Pausa",
    fourHours: "Cuatro horas",
    oneHour: "Una hora",
    keys: "Flechas: una hora. Re Pág y Av Pág: un día. Inicio y Fin: los extremos de la temporada.",
    at: (day, hour) => `${day}, ${clock(hour)}`,
    wanted: "línea: agua que quiere el árbol; hueco: lluvia",
  },
  states: {
    computing: (days, arms) => `Calculando ${days} días de ${arms} programas y suelos`,
    progress: (done, all) => `${percent(done / all)} hecho`,
    preview: (days) => `Figuras: un avance de ${days} días desde el suelo como estaba; la temporada sigue`,
    stale: "De antes de su cambio",
    failed: "Esto no se pudo calcular",
    kept: "Lo que puso se conserva, y las figuras son de antes de su cambio.",
    undo: "Deshacer el último cambio",
    retry: "Intentar otra vez",
    fault: ({ code, path, received, rule, terms }) => {
      const own = (faultRules as Readonly<Record<string, string>>)[code];
      const text = own?.replace(/\$(\w+)/g, (_, term: string) => String(terms?.[term] ?? "")) ?? rule;
      return `${placeText(path)} ${text}; es ${received}.`;
    },
    linkFaults: "Una parte del enlace no se pudo usar; se muestra el resto.",
    linkFault: (key, received, rule) =>
      rule === undefined
        ? `«${key}» no es un ajuste de esta página.`
        : rule === "weather"
          ? `Se hizo con otro clima, «${received}», que no está en este aparato: los litros y las horas no son los que vio quien lo envió. Pida el archivo y ábralo en Bloque.`
          : `«${key}» era «${received}»; debe ser ${ruleText(rule)}.`,
    dismiss: "Cerrar",
  },
  tools: {
    need: "Lo que necesita el árbol",
    limits: "Energía, lluvia y el riego más largo",
    unsure: "¿De qué estoy menos seguro?",
    further: (soil) => `${soil}: aire tras un riego, horas por profundidad, litros por día, aperturas de la temporada`,
  },
  check,
  pages,
  draws,
  table: "Los números",
  about: {
    example: "El valle, el bloque y el clima del ejemplo son inventados; lo que usted cambia o trae es suyo.",
    note: "El modelo anota (en inglés):",
    never: "Cuenta agua y horas. No predice cosecha ni dinero, y no sustituye a la pala.",
    defaults: "Valores usados donde no se dio ninguno; las fuentes, en inglés",
    computedHere: (version, seconds) =>
      `Calculado en este aparato en ${amount(seconds, 2)} s por rootledger ${version}. Nada sale de él.`,
  },
};

function placeText(path: string): string {
  return path
    .replace(/^programmes\[(\d+)\](\.runs\[0\])?/, (_, i: string) => `Programa ${"ABCD"[Number(i)]}`)
    .replace(/^soils\[(\d+)\](\.horizons\[0\])?/, (_, i: string) => `Suelo ${Number(i) + 1}`)
    .replace(/\./g, ", ");
}

/** @example ruleText("a whole number from 1 to 24") // "un número entero de 1 a 24" */
const ruleText = (rule: string): string =>
  rule
    .replace("a whole number from", "un número entero de")
    .replace("a number from", "un número de")
    .replace("a time of day from", "una hora del día de")
    .replace("one of", "uno de")
    .replace("whole numbers from", "números enteros de")
    .replace("rising, with dots between them", "de menor a mayor, con puntos entre ellos")
    .replace("small letters, digits and hyphens, up to", "minúsculas, cifras y guiones, hasta")
    .replace("or nothing", "o nada")
    .replace(/ to /, " a ")
    .replace(" or ", " o ");

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
const list = (asked: readonly Question[]): string => listed(asked.map((q) => questions[q]));

const shares = (fractions: readonly number[]): string =>
  fractions.every((f) => f < 0.005) ? "ninguna" : listed(fractions.map(percent));

const verb = (id: string, verdict: "rises" | "falls"): string =>
  `${verdict === "rises" ? "sube" : "baja"}${plural.has(id) ? "n" : ""}`;
const unitName = (unit: string): string => measuredUnit(unit, units);
const valueText = (value: number, unit: string): string => `${amount(measured(value, unit))} ${unitName(unit)}`;
