/**
 * Everything a reader of the pages can meet, in English: one file a page, plain strings and functions of numbers.
 * Another language is one file beside this folder that gives the same names.
 */
import { pages } from "./pages.ts";

export const english = { pages };
