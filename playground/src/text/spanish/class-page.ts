import type { ClassPageWords } from "../english/class-page.js";
import { amount } from "../number-format.js";
import { classHandout } from "./class-handout.js";

const hoursOf = (hours: number): string => (hours < 48 ? `${amount(hours, 2)} h` : `${amount(hours / 24, 2)} días`);

/** What sources of the damage band saw, by the begin of their names. */
const seen: readonly (readonly [string, string])[] = [
  ["Newett", "murieron árboles bajo el agua"],
  ["Schaffer & Ploetz (1989)", "una inundación de siete días no hizo nada a árboles sanos"],
  [
    "Gil et al.",
    "en una inundación de once días el intercambio de gases bajó hacia el día 9 y el potencial del tallo hacia el día 14",
  ],
  ["Phytophthora", "más de la mitad de las raíces se pudrió tras inundaciones de 12 a 24 horas con inóculo"],
  [
    "Ploetz & Schaffer (1987)",
    "inundados, los árboles con más del 15-20 % de raíces muertas dejaron de tomar carbono o perdieron casi toda la toma",
  ],
];

export const classPage: ClassPageWords = {
  ...classHandout,
  heading: "Lecciones",
  lesson: "Lección",
  keys: "Teclas: las flechas mueven el control, 1 a 6 votan, D cava, T lee el tensiómetro, la barra espaciadora muestra, S acciona el interruptor, coma y punto mueven la hora, F congela, R empieza de nuevo, N y P cambian de lección. Valen mientras la lección tiene el foco.",
  stage: (title) => `Lección: ${title}`,
  votes: "Votos de la clase",
  vote: (option, count) => `${option}: ${amount(count)}`,
  guess: "apuesta",
  guessAt: (point) => `La clase apuesta por ${point}.`,
  hidden: "La respuesta está oculta hasta que la clase diga qué espera.",
  reveal: "Mostrar",
  spade: "Cavar con la pala",
  spadeLocked: "Pala: primero, votar",
  tensiometer: "Leer el tensiómetro",
  tensiometerLocked: "Tensiómetro: primero, cavar",
  tensiometerSays: (tension, depthCm) => `Tensiómetro a ${amount(depthCm)} cm, escala de 0 a 80 kPa: ${tension}`,
  drinks: (drinks, wants) => `Bebe ${drinks} de los ${wants} que quiere hoy.`,
  freeze: "Congelar esto",
  thaw: "Soltar lo congelado",
  reset: "Empezar de nuevo",
  next: "Lección siguiente",
  previous: "Lección anterior",
  computing: (done, all) => `Calculando ${amount(done)} de ${amount(all)}`,
  failed: "Esta lección no se pudo calcular",
  failedAt: (column, point) => (point === "" ? `Columna «${column}»:` : `Columna «${column}» en «${point}»:`),
  crashed:
    "La parte de la página que calcula se ha parado. Votos, apuesta y lección siguen aquí. Calcule otra vez; si se para de nuevo, recargue la página.",
  again: "Calcular otra vez",
  lost: (id) =>
    `El enlace nombra la lección «${id}», que no está en este aparato. Abra su archivo abajo; mientras, se ve la primera lección.`,
  notReckoned: (what) =>
    `No se calcula en este escenario: ${what}. La sal pide block.salt; el nitrógeno, block.nitrogen.`,
  tree: "Un árbol marchito; su suelo está oculto",
  frozenAt: (point) => `Congelado: ${point}`,
  nowAt: (point) => `Ahora: ${point}`,
  sweepSummary: (name, values) => `${name}: ${values}.`,
  measures: {
    thirsty: "Horas de raíz con sed",
    airless: "Horas de raíz sin aire",
    "airless-at-20": "Horas sin aire a 20 cm",
    "longest-airless": "Racha más larga sin aire",
    given: "Agua dada",
    "below-roots": "Agua bajo las raíces",
    transpiration: "Agua que bebió el árbol",
    "transpiration-share": "Parte bebida de lo que quiere el árbol",
    "drunk-that-day": "Agua bebida el día mostrado",
    evaporation: "Agua evaporada",
    runoff: "Agua escurrida",
    "window-litres": "Agua que presta el suelo",
    "on-roots": "Litros sobre raíces, al día",
    "on-nothing": "Litros sobre nada, al día",
    "nitrogen-given": "Nitrógeno dado",
    "nitrogen-taken-up": "Nitrógeno que tomó el árbol",
    "nitrogen-below-roots": "Nitrógeno bajo las raíces",
    "nitrogen-rootless-ground": "Nitrógeno en suelo sin raíces",
    "root-ece-that-day": "Sal en torno a las raíces el día mostrado, CEe",
    "salt-held-back": "Horas de raíz que la sal frena",
  },
  inDays: (name, days) => `${name} en ${days === 1 ? "un día" : `${amount(days)} días`}`,
  memory: "Raíces sin aire, hora a hora",
  memoryKey: "Barra: un pulso. Punto: aire que ya falta al empezar.",
  memorySummary: (shares) => `Raíces sin aire al empezar cada pulso del día, en orden: ${shares}.`,
  leakEdge: "Bajo las raíces",
  leakGrams: (grams) => `${grams} g de nitrógeno`,
  leakDot: (grams) => `un punto: ${grams} g`,
  leakSummary: (litres, grams) =>
    grams === undefined
      ? `${litres} cayeron bajo las raíces.`
      : `${litres} cayeron bajo las raíces, y con ellos ${grams} g de nitrógeno.`,
  damage: "Horas sin aire, y dónde ven daño las fuentes",
  span: hoursOf,
  spanRange: (from, to) => `${hoursOf(from)} a ${hoursOf(to)}`,
  damageSummary: (from, to, spells) =>
    `Las fuentes ven el primer daño tras ${hoursOf(from)} y la última a los ${hoursOf(to)}. Racha más larga sin aire: ${spells.join("; ")}.`,
  damageVerdict: {
    below: "menos que cualquier racha en la que una fuente vio daño.",
    within: "dentro de la banda: tras tanto tiempo unas fuentes vieron daño y otras no.",
    beyond: "más que toda racha que una fuente llama inofensiva.",
  },
  damageRemark:
    "Las fuentes difieren más de diez veces: es una banda, no un reloj. La pudrición de raíz en suelo templado la lleva de días a horas (peor entre 21 y 27 °C: Zentmyer 1981).",
  saw: (source, saw) => seen.find(([begin]) => source.startsWith(begin))?.[1] ?? saw,
  table: "Cifras de la lección",
  open: "Abrir una lección propia",
  openHint: "Un archivo JSON con el formato de las lecciones de la página. Se queda en este aparato.",
  template: "Bajar una lección para empezar",
  notKept: {
    full: "La lección está abierta, pero no hay sitio para guardarla en este aparato: abra su archivo otra vez la próxima vez.",
    forbidden:
      "La lección está abierta, pero este navegador no puede guardar nada: abra su archivo otra vez la próxima vez.",
  },
  forget: (title) => `Quitar «${title}» de este aparato`,
  faults: "Este archivo no es una lección; la lección en pantalla no ha cambiado.",
  faultHead: ["Dónde", "Qué hay", "Qué pide la regla"],
  wholeFile: "el archivo",
  nothing: "nada",
  tooLarge: (kB) => `${amount(kB)} kB`,
  rules: {
    "not-json": "debe ser JSON que se pueda leer",
    missing: "es obligatorio",
    "unknown-key": "no es una clave de las lecciones; vea la ayuda de abajo",
    "own-value": "debe ser como dice la ayuda de abajo",
    "one-engine": "debe omitirse, o ser bucket: el motor lento haría esperar a la clase",
    kind: (expected) => `debe ser del tipo ${expected}`,
    "one-of": (expected) => `debe ser uno de ${expected}`,
    form: (expected) => `debe tener la forma ${expected}`,
    "at-least": (limit, of) => `debe tener al menos ${amount(limit)}${sizeOf(of)}`,
    "at-most": (limit, of) => `debe tener como mucho ${amount(limit)}${sizeOf(of)}`,
  },
  help: "Cómo escribir una lección",
  helpText:
    "Una lección es un escenario del bloque de ejemplo con cambios encima: primero los de la lección, luego los de la columna, luego los del punto y por último los del interruptor. Los campos del escenario tienen los nombres que da el archivo README; las listas se cambian enteras. Los textos son uno solo, o uno en inglés y otro en español.",
  helpRows: [
    ["format, id", "1, y un nombre corto en minúsculas, cifras y guiones; una lección con el mismo id se reemplaza"],
    [
      "title, question, reveal, key",
      "palabras: primero la pregunta, la respuesta cuando la clase ha hablado, la clave para la hoja del profesor",
    ],
    [
      "predict",
      "{ kind: point }: la clase apuesta con el control; { kind: choice, options }: vota entre dos y seis opciones",
    ],
    ["scenario", "lo que comparten todos los cálculos: suelo, temporada, programa, comienzo"],
    ["columns", "de una a cuatro, lado a lado: name, change, tree (mean, under-fed, over-fed), rain { fecha: mm }"],
    ["slider, points", "nombre del control y de uno a dieciséis pasos: label, change, rain"],
    ["switch", "label, change; o rootRot: true para mover la banda de daño"],
    ["pictures", "tree, section, storage, window, plan, pulses, leak, damage"],
    ["measures", "de uno a tres de los nombres de abajo; el primero se escribe grande"],
    [
      "hour, view, soilTemperatureC",
      "hora que muestran las figuras, días de la figura del agua, calor del suelo para la banda de daño",
    ],
  ],
};

function sizeOf(of: string): string {
  const names: Readonly<Record<string, string>> = {
    string: " letras",
    array: " entradas",
    days: " días entre todos los puntos, columnas y el interruptor",
    file: " kB",
  };
  return names[of] ?? "";
}
