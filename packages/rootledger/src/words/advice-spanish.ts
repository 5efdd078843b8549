import type { AdviceWords } from "./advice-words.js";

/** The advice in Spanish. */
export const adviceSpanish: AdviceWords = {
  answer: {
    "same-for-both":
      "Da lo mismo: nada se distingue con claridad del programa actual en sed, aire o agua bajo las raíces; a lo sumo en arranques.",
    "keep-today": "Deje el programa actual: nada de lo probado es claramente mejor en algo.",
    choice:
      "Hay que elegir: cada programa de abajo es claramente mejor que el actual en una cosa y claramente peor en otra. Cuál importa más lo dice usted.",
    better: "Algo es claramente mejor que el programa actual en una cosa o más y claramente peor en ninguna.",
  },
  cause: {
    "as-today": "El programa actual.",
    "wetted-ground":
      "Moja el $toShare del suelo, no el $fromShare: entre el aire y la sed puede prestar $toWindow, no $fromWindow, y el árbol pide $wanted al día.",
    "run-within-window":
      "Cada $every, no cada $from: un riego de $run, menos los $wanted que el árbol bebe ese día, cabe en los $window que el suelo mojado puede prestar.",
    "run-beyond-window":
      "Cada $every, no cada $from: un riego de $run es más que los $window que el suelo mojado puede prestar y los $wanted de ese día; el resto se hunde o quita el aire.",
    "run-within-day":
      "Cada $every, no cada $from: un riego de $run no pasa de los $wanted que el árbol bebe ese día, así que poco tiene que esperar en el suelo.",
    "water-amount": "$to al día, no $from; el árbol pide $wanted.",
    "no-air-lost":
      "Aperturas en un riego: $pulses, no $fromPulses. Las raíces conservan el aire en ambos casos; cambia hasta dónde llega el agua y cuándo está.",
    "gap-covers-recovery": "Las pausas de $gap son más largas que las $recovery que tarda en volver el aire.",
    "gap-shorter-than-recovery":
      "Las pausas de $gap son más cortas que las $recovery que tarda en volver el aire: cada pulso le quita aire al siguiente.",
    "gap-never-covers":
      "Las pausas de $gap son demasiado cortas: casi nunca vuelve el aire antes de la apertura siguiente.",
    "one-run": "Un riego, no $fromPulses pulsos: las pausas eran de $gap y el aire tarda $recovery en volver.",
    "one-run-never": "Un riego, no $fromPulses pulsos: tras pausas de $gap casi nunca había vuelto el aire.",
    "start-hour-fewer":
      "Desde las $to, no desde las $from: de los $wanted que el árbol pide al día solo $toWhileOpen caen en el riego, no $fromWhileOpen; antes de abrir ya ha bebido más y el suelo tiene más sitio para el agua.",
    "start-hour":
      "Desde las $to, no desde las $from: de los $wanted que el árbol pide al día $toWhileOpen caen en el riego, no $fromWhileOpen; lo que bebe entonces no tiene que guardarlo el suelo.",
  },
  caution: {
    "nitrogen-left-out": "Los programas van sin nitrógeno: hay que fijar de nuevo la dosis por riego.",
    "rain-skipped": "Los días que se saltan por lluvia se saltan también aquí, según el tiempo del archivo.",
    "today-cut": "Los límites recortan el programa actual; su agua es la que queda.",
    "spade-decides":
      "Las cifras son rangos de un modelo de un árbol; manda la pala. Cambie una cosa cada vez y vuelva a mirar en pocos días.",
    "no-yield":
      "No se promete cosecha. Derechos de agua, tarifas, bombas y todo lo que se inyecte: primero las normas locales; proteja contra el retorno.",
  },
  day: "día",
  days: "$count días",
};
