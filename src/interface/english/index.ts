/**
 * Everything a reader of the pages can meet, in English: one file a page, plain strings and functions of numbers.
 * Another language is one file beside this folder that gives the same names.
 */
import { choices } from "./choices.ts";
import { cite } from "./cite.ts";
import { colouring } from "./colouring.ts";
import { controls } from "./controls.ts";
import { dataset } from "./dataset.ts";
import { datasets } from "./datasets.ts";
import { devoicing } from "./devoicing.ts";
import { dictionary } from "./dictionary.ts";
import { figure } from "./figure.ts";
import { figures } from "./figures.ts";
import { length } from "./length.ts";
import { listen } from "./listen.ts";
import { lookUp } from "./lookUp.ts";
import { method } from "./method.ts";
import { navigation } from "./navigation.ts";
import { pages } from "./pages.ts";
import { ruleExamples } from "./ruleExamples.ts";
import { rules } from "./rules.ts";
import { site } from "./site.ts";
import { start } from "./start.ts";
import { timing } from "./timing.ts";
import { vowelSpace } from "./vowelSpace.ts";
import { whatMatters } from "./whatMatters.ts";
import { words } from "./words.ts";

export const english = {
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
