import type { PageName } from "../../state/scene.js";
import type { Words } from "../english.js";

export const pages: Words["pages"] = {
  label: "Páginas",
  names: { compare: "Comparar", block: "Bloque", section: "Corte", sheet: "Hoja", class: "Clase", truth: "Pruebas" },
  titles: {
    compare: "comparar programas de riego",
    block: "el bloque desde arriba",
    section: "el suelo hora por hora",
    sheet: "la hoja para el productor",
    class: "lecciones",
    truth: "comprobaciones publicadas",
  },
  fetching: (page: PageName) => `Trayendo la página ${pages.names[page]}`,
  missing: "No se pudo traer esta página: el aparato está sin conexión y aún no la guarda. No se pierde nada.",
  again: "Probar otra vez",
  resume: "Seguir con lo último que fijó en este aparato",
  skip: "Ir al contenido",
};
