import * as v from "valibot";
import { bases } from "../basis.ts";
import { datasetFileInvalid, datasetFileNotJson } from "../messages/datasets.ts";
import { UserError } from "../messages/userError.ts";
import { insidePath } from "../storage/fileTreePath.ts";
import { labelFormats } from "./types.ts";

const text = v.pipe(v.string(), v.trim(), v.minLength(1));
const path = v.pipe(
  text,
  v.check(
    (value) => insidePath(value) !== null,
    "a path inside the dataset folder, without .. and leading /",
  ),
);
const basis = v.picklist(bases);
const positiveMs = v.pipe(v.number(), v.gtValue(0));

const labelSet = v.strictObject({
  id: text,
  path,
  format: v.optional(v.picklist(labelFormats)),
  timeBasis: v.optional(basis),
  timeGridMs: v.optional(v.nullable(positiveMs)),
  timeFloorMs: v.optional(v.nullable(positiveMs)),
  devoicingBasis: v.optional(v.nullable(basis)),
  lengthFrom: v.optional(v.nullable(v.picklist(["label", "reading"]))),
  accentBasis: v.optional(v.nullable(basis)),
  note: v.optional(text),
});

const table = v.strictObject({
  file: path,
  delimiter: v.optional(v.picklist(["tab", "comma", "semicolon", "pipe"])),
  columns: v.strictObject({
    id: v.optional(text),
    audio: v.optional(text),
    text: v.optional(text),
    reading: v.optional(text),
    accentReading: v.optional(text),
    speaker: v.optional(text),
    style: v.optional(text),
    startSec: v.optional(text),
    endSec: v.optional(text),
  }),
});

const speaker = v.variant("from", [
  v.strictObject({ from: v.literal("one"), name: v.optional(text) }),
  v.strictObject({ from: v.literal("folder"), depth: v.pipe(v.number(), v.integer(), v.minValue(1)) }),
  v.strictObject({
    from: v.literal("id"),
    pattern: v.pipe(
      text,
      v.check(
        isPatternWithGroup,
        "a regular expression with one (group) that catches the speaker, no group repeated, and at most three of * and +",
      ),
    ),
  }),
]);

const datasetFileSchema = v.strictObject({
  id: v.optional(v.pipe(v.string(), v.regex(/^[a-z0-9-]+$/, "lower-case letters, digits and hyphens"))),
  name: v.optional(text),
  version: v.optional(v.nullable(text)),
  licence: v.optional(v.strictObject({ name: text, url: v.optional(v.nullable(text)) })),
  citation: v.optional(v.nullable(text)),
  homePage: v.optional(v.nullable(text)),
  attribution: v.optional(v.array(text)),
  redistribution: v.optional(
    v.pipe(
      v.strictObject({
        kind: v.picklist(["all", "excerpt", "none"]),
        utterances: v.optional(v.nullable(v.pipe(v.number(), v.integer(), v.minValue(1)))),
        note: text,
      }),
      v.check(
        ({ kind, utterances }) => (kind === "excerpt") === (typeof utterances === "number"),
        '"utterances" with kind "excerpt", and only there',
      ),
    ),
  ),
  synthetic: v.optional(v.boolean()),
  notice: v.optional(v.nullable(text)),
  layout: v.optional(text),
  table: v.optional(table),
  speaker: v.optional(speaker),
  labelSets: v.optional(v.array(labelSet)),
});

/**
 * What a person may say about a dataset in a `dataset.json` at the top of its folder, or kept elsewhere and named with
 * `--card`. Every field may be left out; what is said here wins over what is known or found.
 *
 * - `id` (lower-case letters, digits, hyphens), `name`, `version`, `citation`, `homePage`: as on the dataset's page.
 * - `licence`: `{"name": "CC BY 4.0", "url": "…"}`. Without it the licence is "unknown" and no recording is published.
 * - `attribution`: list of credits that must stand wherever results are shown.
 * - `redistribution`: `{"kind": "all" | "excerpt" | "none", "utterances": 100, "note": "why"}`; `utterances` with excerpt only.
 * - `synthetic`: true for a voice made by a machine. `notice`: a sentence every page made from it must show.
 * - `layout`: name of a layout (`morascope check` lists them when it recognises none).
 * - `table` (layout `table`): `{"file": "list.tsv", "delimiter": "tab", "columns": {"id": "…", "audio": "…", "text": "…",
 *   "reading": "…", "accentReading": "…", "speaker": "…", "style": "…", "startSec": "…", "endSec": "…"}}`, each naming a
 *   column of the table; needed are `text`, `reading` or `audio`. The delimiter is told from the header when left out.
 * - `speaker`: `{"from": "one", "name": "f01"}`, `{"from": "folder", "depth": 1}` (first folder below the top) or
 *   `{"from": "id", "pattern": "^([a-z]+)_"}`.
 * - `labelSets`: list of `{"id", "path", "format", "timeBasis", "timeGridMs", "timeFloorMs", "devoicingBasis",
 *   "lengthFrom", "accentBasis", "note"}`. `path` is a folder or a file; `format` one of start-end-phone, full-context,
 *   ctm; a basis one of measured, annotated, aligned, predicted. What is left out is measured from the labels or takes
 *   the careful default (times `aligned`, devoicing marks `predicted`).
 */
export type DatasetFile = v.InferOutput<typeof datasetFileSchema>;
export type LabelSetFacts = NonNullable<DatasetFile["labelSets"]>[number];

/** Parses a dataset.json. `file` is the path shown in errors. Throws UserError with place, value and what is allowed. */
export function parseDatasetFile(json: string, file: string): DatasetFile {
  let data: unknown;
  try {
    data = JSON.parse(json);
  } catch (error) {
    const reason = error instanceof Error ? error.message : String(error);
    throw new UserError(datasetFileNotJson(file, lineOfError(json, reason), reason));
  }
  if (Array.isArray(data) || data === null || typeof data !== "object")
    throw new UserError(datasetFileInvalid(file, [notAnObject]));
  const parsed = v.safeParse(datasetFileSchema, data);
  if (parsed.success) return parsed.output;
  throw new UserError(datasetFileInvalid(file, parsed.issues.map(describeIssue)));
}

const notAnObject = 'It must be one object in braces, as in {"name": "Town radio readings"}.';

/** What the parser calls things, in words. */
const inWords: Readonly<Record<string, string>> = {
  string: "text in quotation marks",
  number: "a number",
  boolean: "true or false",
  Array: "a list in square brackets",
  Object: "an object in braces",
  ">=1": "not empty, or a number from 1",
};

function describeIssue(issue: v.BaseIssue<unknown>): string {
  const place = v.getDotPath(issue) ?? "the whole file";
  const wanted =
    issue.type === "check" || issue.type === "regex" ? issue.message : (issue.expected ?? issue.message);
  if (issue.type === "strict_object" && issue.expected === "never")
    return `${place} is not a field that is read; check its spelling.`;
  if (issue.received === "undefined") return `${place} is missing.`;
  const value = JSON.stringify(issue.input);
  const shown = value.length > 80 ? `${value.slice(0, 77)}…` : value;
  return `${place} is ${shown}; it must be ${inWords[wanted] ?? wanted}.`;
}

/** One group to catch the speaker, and no repetition that could take for ever: of a group, or more than three. */
function isPatternWithGroup(pattern: string): boolean {
  if (pattern.length > 200 || /\)[*+{]/.test(pattern)) return false;
  if ((pattern.match(/[*+]|\{\d+,/g)?.length ?? 0) > 3) return false;
  try {
    return new RegExp(`${pattern}|`).exec("")!.length === 2;
  } catch {
    return false;
  }
}

function lineOfError(json: string, reason: string): number {
  const position = /position (\d+)/.exec(reason)?.[1];
  return position === undefined
    ? json.split("\n").length
    : json.slice(0, Number(position)).split("\n").length;
}
