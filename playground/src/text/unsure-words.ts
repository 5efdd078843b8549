import { type ToMeasure, type UnknownId, whatToMeasure } from "rootledger/chance";
import { byLanguage } from "./by-language.js";
import { listed, whole } from "./number-format.js";

const english = {
  what: "Moves every unknown over its range, one at a time, and looks how far the differences between programmes move. It takes a minute or more.",
  start: "Rank the unknowns",
  again: "Rank them again",
  stop: "Stop",
  stale: "The ranking was about programmes or soils from before your change.",
  failed: "The unknowns could not be ranked",
  running: (done: number, all: number): string => `${whole(done)} of about ${whole(all)} seasons`,
  nothing:
    "No unknown moves a difference by more than its floor: what is not clear stays unclear, whatever is measured.",
  finding: (top: readonly string[]): string =>
    top.length === 1
      ? `Only ${top[0]} matters: go and measure it.`
      : `${capital(listed(top))} matter most: go and measure them.`,
  basis: (seasons: string, moved: string, all: string): string =>
    `From ${seasons} seasons; ${moved} of ${all} differences move by more than their floors. Shares of what moves them, on average.`,
  table: "Unknowns, the weightiest first",
  unknown: "Unknown",
  share: "Share",
  measure: "How to know it",
  unknowns: whatToMeasure as Readonly<Record<UnknownId, ToMeasure>>,
};

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

const spanish: typeof english = {
  what: "Mueve cada incógnita por todo su margen, una a la vez, y mira cuánto se mueven las diferencias entre programas. Tarda un minuto o más.",
  start: "Ordenar las incógnitas",
  again: "Ordenarlas otra vez",
  stop: "Parar",
  stale: "El orden era sobre programas o suelos de antes de su cambio.",
  failed: "No se pudieron ordenar las incógnitas",
  running: (done, all) => `${whole(done)} de unas ${whole(all)} temporadas`,
  nothing:
    "Ninguna incógnita mueve una diferencia más que su umbral: lo que no está claro sigue sin estarlo, se mida lo que se mida.",
  finding: (top) =>
    top.length === 1 ? `Solo importa ${top[0]}: vaya y mídalo.` : `Lo que más importa: ${listed(top)}. Vaya y mídalo.`,
  basis: (seasons, moved, all) =>
    `De ${seasons} temporadas; ${moved} de ${all} diferencias se mueven más que su umbral. Partes de lo que las mueve, en promedio.`,
  table: "Incógnitas, primero la de más peso",
  unknown: "Incógnita",
  share: "Parte",
  measure: "Cómo saberlo",
  unknowns: {
    "root-depth": {
      name: "la profundidad con raíces",
      how: "cavar una calicata junto a un emisor y anotar dónde ralean las raíces finas y dónde está la última",
    },
    "root-top-share": {
      name: "la parte de raíces en los 20 cm de arriba",
      how: "en la misma calicata, contar raíces finas cada 10 cm con un marco",
    },
    "root-width": {
      name: "el ancho de la franja con raíces",
      how: "raspar a través de la línea, 10 cm de hondo, y medir con huincha hasta las últimas raíces finas",
    },
    "compensation-onset": {
      name: "cuánto suplen las raíces mojadas a las secas",
      how: "dos tensiómetros, en la parte mojada y en la seca: cuál baja mientras el árbol sigue bebiendo",
    },
    "pull-limit": {
      name: "la tensión a la que el árbol empieza a sufrir",
      how: "dejar secar unos pocos árboles con un tensiómetro a 20 cm y una cámara de presión o dendrómetro al lado",
    },
    "dry-limb": {
      name: "la tensión a la que ya no extrae nada",
      how: "un sensor que pase de 100 kPa en suelo que se deja secar: dónde acaban sus escalones diarios",
    },
    "air-limit": {
      name: "el aire que las raíces necesitan",
      how: "cilindros de la zona de raíces a capacidad de campo, pesados húmedos y secos; mirar color y olor de las raíces",
    },
    "air-return": {
      name: "la tensión a la que vuelve el aire",
      how: "tensiómetro y sonda de oxígeno a 20 cm tras un riego largo: la tensión cuando sube el oxígeno",
    },
    "field-capacity": {
      name: "el agua a capacidad de campo",
      how: "dos días después de mojar a fondo y tapar, sacar un cilindro de la zona de raíces y pesarlo húmedo y seco",
    },
    "k-sat": {
      name: "la conductividad saturada",
      how: "un anillo de infiltración donde gotea un emisor, tres veces; o medir cuánto tarda en irse el agua encharcada",
    },
    structure: {
      name: "la estructura del suelo",
      how: "una pala: si el terrón se desmenuza en la mano o queda entero",
    },
    kcb: {
      name: "el coeficiente del cultivo",
      how: "contador y dos tensiómetros en dos semanas secas: el agua que mantuvo quieto al hondo, sobre la ET0",
    },
    uniformity: {
      name: "la uniformidad de los emisores",
      how: "vasos bajo 16 emisores o más a lo largo de las líneas: media del cuarto más bajo sobre la media",
    },
    "weather-year": {
      name: "el tiempo del año",
      how: "un pluviómetro y la ET0 de la estación, semana a semana; ningún año se conoce de antemano",
    },
  },
};

/** Words of the ranking of unknowns, in the language that holds. */
export const unsureWords = byLanguage(english, spanish);
