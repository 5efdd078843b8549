import type { SheetWords } from "./sheet-words.js";

/** The sheet in Spanish. */
export const sheetSpanish: SheetWords = {
  title: "$block: riego del $from al $to",
  holds: "Después del $to esta hoja ya no vale.",
  each: "$litres por árbol cada vez ($depth; $area).",
  everyDay: "Todos los días.",
  everyDays: "Cada $days días: $dates.",
  onDates: "En estos días: $dates.",
  water: "Agua",
  openingOne: "Abrir a las $start, durante $length.",
  openings: "$count veces al día: $list.",
  stop: "Nunca más tarde de las $stop.",
  stopNextDay: "Nunca más tarde de las $stop del día siguiente.",
  stopLater: "Nunca más tarde de las $stop, $later días después.",
  emittersAll: "Los $open emisores del árbol abiertos, $flow cada uno.",
  emittersPlugged: "$open emisores abiertos en cada árbol, $plugged tapados, $flow cada uno.",
  stopIfTitle: "Pare y llame si",
  stopIf: {
    wilting: "el árbol se marchita y el suelo a $shallow está mojado: no añada agua, cave primero;",
    airless:
      "el tensiómetro a $shallow sigue por debajo de $air cuando toca el riego siguiente: espere a que vuelva el aire;",
    thirsty: "el tensiómetro a $shallow pasa de $pull dos días seguidos: el árbol tiene sed;",
    thirstier: "el tensiómetro a $shallow pasa de $driest antes de un riego: más seco de lo que deja este programa;",
    standing: "el agua corre o queda en el suelo una hora después del riego, o un árbol no recibe nada.",
  },
  expectedBeyond: {
    thirsty:
      "Antes de un riego se espera el suelo a $shallow más allá de $pull, donde el árbol apenas tira: pregunte si conviene regar más a menudo.",
    airless:
      "Cuando toca regar se espera el suelo a $shallow por debajo de $air, aún sin aire: pregunte si conviene regar menos o menos a menudo.",
  },
  provesTitle: "Lo que debe encontrar. Una lectura fuera de esto demuestra que la hoja está equivocada",
  proves: "a $depth de hondo, a $distance de la línea, $when: lo más probable $middle, de $low a $high",
  provesThen:
    "Si una lectura queda fuera dos días seguidos, no cambie nada y llame: el suelo, las raíces o el agua no son como se supuso.",
  when: {
    "before-run": "justo antes del primer riego",
    "after-run": "dos horas después del último riego",
    "next-morning": "a la mañana siguiente",
  },
  beyondTensiometer: " (un tensiómetro llega hasta $end)",
  basis: "Árbol: $tree. Suelo: $soil. Clima usado: $weather, del $wfrom al $wto. Programa: $programme.",
  cautions: [
    "Los números son márgenes de un modelo de un árbol medio; decide la pala. Cambie una sola cosa y mire de nuevo a los pocos días.",
    "Derechos de agua, normas de nitratos, bombas, electricidad y todo lo que se inyecte: primero las normas locales y la práctica autorizada; evite el reflujo.",
  ],
  saltyWater:
    "Agua de CE $ec dS/m: su sal se queda donde poco drena bajo las raíces. Haga analizar el agua y el suelo; deciden el lavado y el consejo local.",
  notesTitle: "Lea aquí",
  adviser: "Asesor:",
};
