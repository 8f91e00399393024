import { readFile } from "node:fs/promises";
import path from "node:path";
import { parse } from "csv-parse/sync";
import * as v from "valibot";
import { bases } from "../basis.ts";
import type { DatasetCard, Problem } from "../datasets/types.ts";
import { labelFormats } from "../datasets/types.ts";
import type { Estimates } from "../estimates/runEstimates.ts";
import type { Finding } from "../findings/runFindings.ts";
import { resultsMissing, resultsUnreadable } from "../messages/publish.ts";
import { UserError } from "../messages/userError.ts";
import { schemaVersion } from "../storage/schemaVersion.ts";

const text = v.string();
const count = v.pipe(v.number(), v.integer(), v.minValue(0));
const basis = v.nullable(v.picklist(bases));

const labelSet = v.object({
  id: text,
  format: v.picklist(labelFormats),
  utterances: count,
  timeBasis: v.picklist(bases),
  timeGridMs: v.nullable(v.number()),
  timeFloorMs: v.nullable(v.number()),
  devoicingBasis: basis,
  lengthFrom: v.nullable(v.picklist(["label", "reading"])),
  accentBasis: basis,
  note: text,
});

const card = v.object({
  id: text,
  name: text,
  version: v.nullable(text),
  licence: v.object({ name: text, url: v.nullable(text) }),
  citation: v.nullable(text),
  homePage: v.nullable(text),
  redistribution: v.object({
    kind: v.picklist(["all", "excerpt", "none"]),
    utterances: v.nullable(count),
    note: text,
  }),
  attribution: v.array(text),
  layout: text,
  recognisedBy: text,
  synthetic: v.boolean(),
  notice: v.nullable(text),
  speakers: count,
  utterances: count,
  audioHours: v.nullable(v.number()),
  readings: v.object({ utterances: count, source: v.nullable(text) }),
  labelSets: v.array(labelSet),
}) satisfies v.GenericSchema<unknown, DatasetCard>;

const run = v.object({
  schemaVersion: v.literal(schemaVersion),
  software: v.object({ name: text, version: text }),
  createdAt: v.pipe(text, v.isoTimestamp()),
  datasets: v.array(card),
  counts: v.object({ utterances: count, phones: count, intervals: count, tokens: count, cells: count }),
  parameters: v.object({ level: v.number() }),
  corrections: v.optional(
    v.nullable(
      v.object({
        ...{ files: v.array(text), marks: count, used: count, tokens: count },
        ...{ devoiced: count, voiced: count, cannotTell: count },
      }),
    ),
  ),
  problems: v.object({ total: count, excluded: count }),
});
export type Run = Readonly<Omit<v.InferOutput<typeof run>, "datasets">> & {
  readonly datasets: readonly DatasetCard[];
};

const finding = v.object({
  id: text,
  question: text,
  scale: v.picklist(["share", "ratio"]),
  answers: v.array(
    v.object({
      dataset: text,
      labelSet: text,
      basis: v.optional(v.nullable(v.picklist(bases)), null),
      sentence: text,
      marks: v.array(
        v.object({
          name: text,
          estimate: v.number(),
          low: v.number(),
          high: v.number(),
          atLeast: v.boolean(),
        }),
      ),
    }),
  ),
}) satisfies v.GenericSchema<unknown, Finding>;

const nullable = v.pipe(
  text,
  v.transform((value) => (value === "" ? null : value)),
);
const problem = v.object({
  dataset: text,
  utterance: nullable,
  file: text,
  line: v.pipe(
    nullable,
    v.transform((value) => (value === null ? null : Number(value))),
  ),
  rule: text,
  message: text,
  wayOut: text,
  excluded: v.pipe(
    v.picklist(["true", "false"]),
    v.transform((value) => value === "true"),
  ),
}) satisfies v.GenericSchema<unknown, Problem>;

async function read(results: string, file: string): Promise<string> {
  try {
    return await readFile(path.join(results, file), "utf8");
  } catch {
    throw new UserError(resultsMissing(results, file));
  }
}

function checked<T>(file: string, schema: v.GenericSchema<unknown, T>, give: () => unknown): T {
  try {
    return v.parse(schema, give());
  } catch (error) {
    const where = v.isValiError(error) ? (v.getDotPath(error.issues[0]) ?? "") : "";
    const fault = error instanceof Error ? error.message : String(error);
    throw new UserError(resultsUnreadable(file, where === "" ? fault : `${where}: ${fault}`));
  }
}

/** A JSON file that not every results folder holds; null when this one does not. */
export async function readOptional<T>(
  results: string,
  file: string,
  schema: v.GenericSchema<unknown, T>,
): Promise<T | null> {
  const full = path.join(results, file);
  let content: string;
  try {
    content = await readFile(full, "utf8");
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException;
    if (code === "ENOENT") return null;
    throw new UserError(resultsUnreadable(full, code ?? String(error)));
  }
  return checked(full, schema, () => JSON.parse(content));
}

/** `run.json` of a results folder. Throws a UserError that names the file and the field at fault. */
export async function readRun(results: string): Promise<Run> {
  const content = await read(results, "run.json");
  return checked(path.join(results, "run.json"), run, () => JSON.parse(content));
}

/** `problems.csv` of a results folder, in file order. */
export async function readProblems(results: string): Promise<Problem[]> {
  const content = await read(results, "problems.csv");
  return checked(path.join(results, "problems.csv"), v.array(problem), () =>
    parse(content, { columns: true }),
  );
}

/** What `estimates.json` must hold for findings to be told from it; its rows are as the run wrote them. */
const estimates = v.looseObject({ rates: v.array(v.any()), ratios: v.array(v.any()) });

/** The estimates of a results folder, from which findings are told in other languages; null where it has none. */
export async function readEstimates(results: string): Promise<Pick<Estimates, "rates" | "ratios"> | null> {
  return readOptional(results, "estimates.json", estimates);
}

/** `findings.json` of a results folder. */
export async function readFindings(results: string): Promise<Finding[]> {
  const content = await read(results, "findings.json");
  return checked(path.join(results, "findings.json"), v.array(finding), () => JSON.parse(content));
}
