import type { Command } from "commander";

/** A command as the list of commands shows it. What it does, and all that needs, is loaded when it is called. */
export interface CommandEntry {
  readonly name: string;
  /** Options and arguments in the list, e.g. `[options] <results>`. */
  readonly takes: string;
  readonly summary: string;
  readonly load: () => Promise<(program: Command) => void>;
}

const ofResults = "[options] <results>";

/** All commands, in the order of the list. */
export const commands: readonly CommandEntry[] = [
  {
    name: "demo",
    takes: "[options]",
    summary: "run the built-in demo through to the open report",
    load: async () => (await import("./demo.ts")).registerDemo,
  },
  {
    name: "check",
    takes: "[options] <dataset>",
    summary: "say what a dataset is and what is wrong with it",
    load: async () => (await import("./check.ts")).registerCheck,
  },
  {
    name: "run",
    takes: "[options] <dataset...>",
    summary: "measure datasets and build their report",
    load: async () => (await import("./run.ts")).registerRun,
  },
  {
    name: "combine",
    takes: ofResults,
    summary: "make the results of shares that were run with --shard",
    load: async () => (await import("./combine.ts")).registerCombine,
  },
  {
    name: "worker",
    takes: "[options]",
    summary: "do the work of runs on other machines",
    load: async () => (await import("./worker.ts")).registerWorker,
  },
  {
    name: "phones",
    takes: "[options]",
    summary: "list the phones and classes that labels and filters use",
    load: async () => (await import("./phones.ts")).registerPhones,
  },
  {
    name: "columns",
    takes: "[options] [table]",
    summary: "what the columns of tables in CSV mean",
    load: async () => (await import("./columns.ts")).registerColumns,
  },
  {
    name: "rates",
    takes: ofResults,
    summary: "how often vowels are devoiced, by environment",
    load: async () => (await import("./rates.ts")).registerRates,
  },
  {
    name: "ratios",
    takes: ofResults,
    summary: "how much longer long vowels and doubled consonants are",
    load: async () => (await import("./ratios.ts")).registerRatios,
  },
  {
    name: "explain",
    takes: ofResults,
    summary: "what decides devoicing and duration; vowel space, timing and the decision's own error",
    load: async () => (await import("./explain.ts")).registerExplain,
  },
  {
    name: "rules",
    takes: ofResults,
    summary: "which rules of thumb the recordings bear out",
    load: async () => (await import("./rules.ts")).registerRules,
  },
  {
    name: "words",
    takes: ofResults,
    summary: "drill words and pairs, chosen by the corpus's evidence",
    load: async () => (await import("./words.ts")).registerWords,
  },
  {
    name: "agreement",
    takes: ofResults,
    summary: "how far the boundaries and devoicing of a run agree with labels",
    load: async () => (await import("./agreement.ts")).registerAgreement,
  },
  {
    name: "sample",
    takes: ofResults,
    summary: "draw vowels for a person to mark by ear",
    load: async () => (await import("./sample.ts")).registerSample,
  },
  {
    name: "card",
    takes: ofResults,
    summary: "draw one vowel or consonant with what was decided about it",
    load: async () => (await import("./card.ts")).registerCard,
  },
  {
    name: "report",
    takes: ofResults,
    summary: "build the report of a results folder",
    load: async () => (await import("./report.ts")).registerReport,
  },
  {
    name: "page",
    takes: "",
    summary: "write a page of your own for the report",
    load: async () => (await import("./page.ts")).registerPage,
  },
  {
    name: "serve",
    takes: "[options] <folder>",
    summary: "look at a report in the browser",
    load: async () => (await import("./serve.ts")).registerServe,
  },
];
