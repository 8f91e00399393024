/**
 * Everything a reader of the pages can meet, in English: one file a page, plain strings and functions of numbers.
 * Another language is one file beside this folder that gives the same names.
 */
import { agreement } from "./agreement.ts";
import { choices } from "./choices.ts";
import { cite } from "./cite.ts";
import { colouring } from "./colouring.ts";
import { controls } from "./controls.ts";
import { dataset } from "./dataset.ts";
import { datasets } from "./datasets.ts";
import { devoicing } from "./devoicing.ts";
import { dictionary } from "./dictionary.ts";
import { examples } from "./examples.ts";
import { figure } from "./figure.ts";
import { figures } from "./figures.ts";
import { format } from "./format.ts";
import { grid, spread } from "./grid.ts";
import { length } from "./length.ts";
import { limits } from "./limits.ts";
import { listen } from "./listen.ts";
import { lookUp } from "./lookUp.ts";
import { method } from "./method.ts";
import { navigation } from "./navigation.ts";
import { pages } from "./pages.ts";
import { ruleExamples } from "./ruleExamples.ts";
import { rules } from "./rules.ts";
import { sentences } from "./sentences.ts";
import { site } from "./site.ts";
import { start } from "./start.ts";
import { timing } from "./timing.ts";
import { verdicts } from "./verdicts.ts";
import { vowelSpace } from "./vowelSpace.ts";
import { whatMatters } from "./whatMatters.ts";
import { words } from "./words.ts";

export const english = {
  format,
  grid,
  limits,
  sentences,
  spread,
  verdicts,
  agreement,
  examples,
  /** A sentence of the results in this language; null where it is not known. Results are in English already. */
  retell: (_sentence: string): string | null => null,
  controls,
  datasets,
  dictionary,
  method,
  rules,
  start,
  choices,
  cite,
  dataset,
  figures,
  colouring,
  devoicing,
  figure,
  length,
  listen,
  lookUp,
  navigation,
  pages,
  ruleExamples,
  site,
  timing,
  vowelSpace,
  whatMatters,
  words,
};
