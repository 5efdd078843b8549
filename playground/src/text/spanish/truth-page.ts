import type { TruthPageWords } from "../english/truth-page.js";
import { amount, whole } from "../number-format.js";
import { truthTopics } from "./truth-topics.js";

export const truthPage: TruthPageWords = {
  heading: "Comprobaciones publicadas",
  title: (all, wrong) =>
    wrong === 0
      ? `${whole(all)} comprobaciones publicadas, todas concuerdan`
      : `${whole(all)} comprobaciones publicadas, ${amount(wrong)} no concuerdan`,
  verified: (seen, memory, derived) =>
    `${whole(seen)} cifras se leyeron impresas, ${whole(memory)} vienen de memoria y piden un segundo lector, ${whole(derived)} se dedujeron de cifras impresas.`,
  what: "Cada cifra la imprimió otra persona. La tolerancia es medio dígito impreso, salvo que los datos den una razón. Se comprobaron al construir esta página, con la misma biblioteca que calcula aquí.",
  search: "Buscar un título, una fuente o un tema",
  found: (count) => `${whole(count)} encontradas`,
  fetching: "Trayendo las comprobaciones",
  missing: "No se pudieron traer las comprobaciones; están junto a la página y vendrán cuando haya conexión.",
  again: "Probar otra vez",
  agree: (agree, all) =>
    agree === all
      ? `${whole(all)} ${all === 1 ? "concuerda" : "concuerdan"}`
      : `${whole(agree)} de ${whole(all)} concuerdan`,
  columns: ["Comprobación", "Cifra", "Impreso", "Nuestro", "Tolerancia", "Fuente"],
  how: { seen: "vista impresa", memory: "de memoria", derived: "deducida" },
  misses: "no concuerda",
  engines: "Cuánto se aparta el motor rápido de la física",
  enginesWhat:
    "La página calcula con un motor rápido. A su lado hay uno lento que resuelve la ecuación de Richards en celdas más finas. Lo que hace un cambio de programa se calculó con ambos en doce texturas, tres estructuras y dos suelos en capas; abajo están las mayores distancias. Una diferencia menor que estas se llama «sin diferencia clara» en la página Comparar. Los dos motores son nuestros: esto dice cuánto distan entre sí, no de su campo.",
  enginesCaption: "Mayor distancia en lo que hace un cambio de programa",
  soils: "Suelos",
  change: "Cambio",
  groups: { coarse: "gruesos", medium: "medios", fine: "finos", tight: "de estructura apretada", layered: "en capas" },
  kinds: { interval: "otro intervalo", pulses: "partido en pulsos" },
  topics: truthTopics,
  errors: {
    thirstyTime: "con sed, de las horas",
    airlessTime: "sin aire, de las horas",
    drainage: "bajo las raíces, del agua",
    evaporation: "evaporado, del agua",
    uptake: "bebido, de la demanda",
  },
};
