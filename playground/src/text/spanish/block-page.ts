import type { BlockPageWords } from "../english/block-page.js";
import { amount, percent } from "../number-format.js";
import { unitText, waterText } from "../quantity.js";

export const blockPage: BlockPageWords = {
  title: (open, all, useful) =>
    useful === undefined
      ? `${amount(open)} de ${amount(all)} emisores abiertos; las raíces de un árbol adulto siguen las líneas`
      : `${amount(open)} de ${amount(all)} emisores abiertos; ${percent(useful)} del agua cae sobre raíces`,
  planLabel: "La hilera desde arriba: los emisores de un árbol",
  planKeys:
    "Toque un emisor para abrirlo o taparlo. Con teclas: las flechas van de uno a otro y la barra espaciadora lo abre o lo tapa.",
  countOnly:
    "El cálculo bajo tierra toma cuántos emisores están abiertos, no cuáles: a lo largo de las líneas su agua se reparte por igual; muy separados, cada uno tiene su círculo. Una línea tapada entera no cuenta si las líneas abiertas siguen siendo simétricas respecto a la hilera.",
  thenRuns: (sameLitres) =>
    sameLitres
      ? "Los litros del programa se mantienen, así que riega más tiempo."
      : "Los minutos del programa se mantienen, así que el árbol recibe menos litros.",
  emitter: (alongM, acrossM, open) =>
    `${open ? "abierto" : "tapado"}, ${amount(Math.abs(alongM), 2)} m ${alongM < 0 ? "antes" : "después"} del tronco, ${acrossM === 0 ? "en la hilera" : `${amount(Math.abs(acrossM), 2)} m a la ${acrossM < 0 ? "izquierda" : "derecha"}`}`,
  waterEc: (): string => `Sal del agua (CE), ${unitText("salt")}; 0: no se calcula`,
  saltNote: "Lo que pasa con ella en la zona de raíces (CEe) se dibuja más abajo en cada suelo de la página Comparar.",
  openAll: "Abrir todos",
  openNearest: (count) => `Abrir los ${amount(count)} más cercanos`,
  openOnRoots: "Abrir los que están sobre raíces",
  lastOne: "Un emisor debe quedar abierto.",
  key: { roots: "raíces", wet: "suelo mojado", canopy: "copa", open: "abierto", plugged: "tapado" },
  litres: (programme, litres) => `${programme} da ${litres} al día por árbol`,
  onRoots: (litres) => `${litres} sobre raíces`,
  onNothing: (litres) => `${litres} sobre nada`,
  need: "Litros que necesitan las raíces al día",
  goesOut: (need, out) => `Para llevar a las raíces ${waterText(need)}, los emisores deben dar ${waterText(out)}.`,
  flow: (litresPerH, mmPerH) =>
    `${waterText(litresPerH)}/h por árbol, ${amount(mmPerH, 2)} mm/h sobre el suelo mojado.`,
  wetted: (share) => `Se moja ${percent(share)} del suelo del árbol.`,
  sectorFlow: (now, all) => `El sector toma ${waterText(now)}/h en vez de ${waterText(all)}/h.`,
  warning: (warning) => {
    switch (warning.code) {
      case "circles-do-not-join":
        return `Suelo seco entre emisores: están a ${amount(warning.gapM, 2)} m y mojan ${amount(warning.wettedDiameterM, 2)} m.`;
      case "below-smallest-flow":
        return `La bomba o el filtro reciben muy poco: ${waterText(warning.flowLPerH)}/h; el caudal mínimo es ${waterText(warning.smallestFlowLPerH)}/h.`;
      case "pressure-rises":
        return "Los emisores no compensados dan más cada uno si se tapan otros: mida antes de fiarse de estos litros.";
      case "wets-trunk":
        return `Un emisor moja el tronco: el más cercano está a ${amount(warning.nearestM, 2)} m.`;
    }
  },
  heading: {
    trees: "Árboles",
    lines: "Líneas",
    roots: "Raíces",
    soil: "Suelos",
    valve: "Detrás de la válvula",
    water: "Agua",
  },
  treeSpacing: "De árbol a árbol, m",
  rowSpacing: "De hilera a hilera, m",
  canopy: "Diámetro de copa, m",
  lines: "Líneas por hilera",
  lineDistance: "De línea a línea, m",
  emitterSpacing: "De emisor a emisor, m",
  flowLabel: () => `Caudal del emisor, ${unitText("water")}/h`,
  wettedRadius: "Un emisor moja hasta, m",
  drains: "Las líneas se vacían hacia el extremo bajo tras cada cierre",
  drainsNote: "Entonces el árbol del extremo bajo recibe lo que escurre; elíjalo en la página Comparar.",
  rootKind: "Raíces",
  rootKinds: { mature: "de un árbol adulto, a lo largo de las líneas", disc: "de un árbol joven, un disco" },
  rootRadius: "Las raíces llegan a, m",
  rootDepth: "Las raíces bajan hasta, cm",
  sectorTrees: "Árboles de la válvula (0: no se sabe)",
  smallestFlow: () => `Caudal mínimo de bomba y filtro, ${unitText("water")}/h`,
  compensating: "Los emisores compensan la presión",
  soilLabel: (n) => `Suelo ${n}`,
  cannot: "Este arreglo no tiene un emisor para cada árbol.",
};
