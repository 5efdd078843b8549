import type { classHandout as english } from "../english/class-handout.js";

export const classHandout: typeof english = {
  handout: "Hoja de trabajo",
  withKey: "con la clave",
  print: "Imprimir",
  saveHandout: "Guardar como archivo",
  closeHandout: "Volver a la lección",
  handoutTitle: "Agua y aire en la zona de raíces: hoja de trabajo",
  handoutFile: "hoja-de-trabajo.html",
  name: "Nombre",
  ourGuess: "Nuestra apuesta:",
  seen: "Lo que vimos:",
  key: "Clave",
  questionsHeading: "Tres preguntas",
  questions: [
    [
      "¿Por qué se marchita un árbol ahogado?",
      "Sin aire las raíces toman poca agua, y las hojas se marchitan aunque el suelo esté mojado.",
    ],
    [
      "¿Por qué la arcilla puede pedir agua poca y frecuente y ser a la vez el suelo que ahoga?",
      "Poca de su agua queda entre los dos límites, así que presta poco; y drena despacio, así que el aire tarda en volver tras cada riego.",
    ],
    [
      "Diga una cosa que revisar antes de cambiar las horas.",
      "La profundidad de raíces en una calicata; o un tensiómetro a dos profundidades; o lo que da un emisor.",
    ],
  ],
  sumsHeading: "Cuentas con respuesta conocida",
  panTitle: "De la bandeja al árbol",
  panGiven:
    "La bandeja perdió 7 mm en un día. Coeficiente de bandeja 0,7, de cultivo 0,8; el árbol tiene 15 m² de suelo, cubierto en un 80 %.",
  panDepth: "7 × 0,7 × 0,8 =",
  panLitres: "Litros para el árbol: eso × 15 × 0,8 =",
  panSource: "Manual peruano del palto, ejemplo resuelto; los litros son cuenta nuestra.",
  runsTitle: "Dos goteros o un microaspersor",
  runsGiven:
    "Un cítrico de 9 m² en suelo franco pide 62,5 L un día de enero. El suelo bajo dos goteros le guarda 34 L; el suelo bajo un microaspersor, 189 L (9 m², raíces de 30 cm, 70 mm por metro).",
  runsHeld: "Compruebe lo que guarda el suelo del microaspersor: 9 × 0,30 × 70 =",
  runsDrippers: "Riegos al día con dos goteros: 62,5 ÷ 34, hacia arriba =",
  runsSprinkler: "Días enteros entre riegos con el microaspersor: 189 ÷ 62,5, hacia abajo =",
  runsSource: "Departamento de agricultura de Australia Occidental, recomendaciones de riego de cítricos.",
  windowTitle: "La ventana de cada suelo",
  windowGiven:
    "Agua que guarda un metro de suelo entre 8 y 20 kPa. Calcule lo que prestan 30 cm de raíces y los litros de un árbol con 24 m² si se moja un tercio del suelo (× 24 ÷ 3). Su día de mayor consumo pide 126 L: ¿qué suelo los presta?",
  windowHead: ["Suelo", "mm en un metro", "mm en 30 cm", "L por árbol"],
  windowAnswer:
    "Ninguno: con un tercio del suelo mojado ningún suelo presta un día entero de pico. Cuánto suelo se moja decide primero cada cuánto regar; la textura, después.",
  windowSource:
    "Agriculture Victoria, How to determine readily available water, tabla 1; la misma tabla en NSW Primefact 1362 (2014). Los 126 L: ET0 de 7,5 mm, Kc 0,7 en 24 m² (INIA Chile, ficha de riego para Hass).",
  soils: {
    sand: "arena",
    "loamy sand": "arena franca",
    "sandy loam": "franco arenoso",
    "sandy clay loam": "franco arcillo arenoso",
    "clay loam": "franco arcilloso",
    clay: "arcilla",
  },
  millimetres: "mm",
  litres: "L",
  runsADay: "al día",
  daysApart: "días",
};
