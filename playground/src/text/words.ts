import { english } from "./english.js";

/** Every word on the page; another language is another object of this type. */
export type Words = typeof english;

export const words: Words = english;
