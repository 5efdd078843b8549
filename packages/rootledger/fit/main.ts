import { writeFileSync } from "node:fs";
import { dataFile } from "./data-file.js";
import { fitAll } from "./default-set.js";
import { residualTable } from "./residual-table.js";

/** Fits the default classes and writes their data and the table of what they miss, into the package folder given. */
const [folder] = process.argv.slice(2);
if (folder === undefined) throw new Error("usage: node main.js <package folder>");
const classes = fitAll();
writeFileSync(`${folder}/src/ground/default-classes.ts`, dataFile(classes));
writeFileSync(`${folder}/fit/RESIDUALS.md`, residualTable(classes));
