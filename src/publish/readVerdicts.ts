import * as v from "valibot";
import { bases } from "../basis.ts";
import { scales } from "../findings/rules/region.ts";
import {
  contrastKinds,
  contrastSchema,
  exceptionColumns,
  leastSchema,
} from "../findings/rules/ruleSchema.ts";
import { verdicts } from "../findings/rules/verdict.ts";
import { readOptional } from "./readResults.ts";

const text = v.string();
const count = v.pipe(v.number(), v.integer(), v.minValue(0));
const number = v.nullable(v.number());
const place = v.picklist(["holds", "fails", "small", "open"]);

const part = v.object({
  column: v.picklist([...exceptionColumns, "speaker"]),
  value: text,
  place,
  estimate: v.number(),
  low: number,
  high: number,
  tokens: v.array(count),
  speakers: count,
});
const parts = v.nullable(
  v.object({ level: v.number(), judged: count, holding: v.array(part), failing: v.array(part) }),
);
const sound = v.object({
  speaker: text,
  utterance: text,
  index: count,
  phone: text,
  before: text,
  after: text,
  word: v.nullable(text),
  startMs: v.number(),
  endMs: v.number(),
  shows: v.nullable(text),
  value: number,
});
const examples = v.object({
  by: v.nullable(v.picklist(["probability", "ratio"])),
  clearest: v.array(sound),
  mostContrary: v.array(sound),
  reason: v.nullable(text),
});
const small = v.optional(v.number());
const holds = v.variant("when", [
  v.object({ when: v.literal("more-than"), value: v.number(), negligible: small }),
  v.object({ when: v.literal("less-than"), value: v.number(), negligible: small }),
  v.object({ when: v.literal("between"), from: v.number(), to: v.number() }),
  v.object({ when: v.literal("about"), value: v.number(), margin: v.number() }),
]);

const verdict = v.object({
  rule: v.pipe(text, v.regex(/^[a-z0-9-]+$/)),
  statement: v.object({ en: text, ja: v.optional(text) }),
  note: v.nullable(text),
  source: text,
  dataset: text,
  labelSet: text,
  verdict: v.picklist(verdicts),
  place: v.nullable(place),
  sentence: text,
  reason: v.nullable(text),
  asked: v.optional(v.nullable(v.object({ contrast: contrastSchema, least: leastSchema }))),
  sides: v.optional(v.array(number)),
  kind: v.picklist(contrastKinds),
  detail: v.nullable(text),
  scale: v.nullable(v.picklist(scales)),
  holds: v.nullable(holds),
  estimate: number,
  low: number,
  high: number,
  bound: v.nullable(v.picklist(["at least", "at most"])),
  level: v.number(),
  tokens: v.array(count),
  speakers: count,
  scope: v.picklist(["speakers", "one speaker"]),
  basis: v.nullable(v.picklist(bases)),
  method: v.nullable(text),
  warnings: v.array(text),
  environments: parts,
  bySpeaker: parts,
  clearest: v.array(part),
  mostContrary: v.array(part),
  examples: v.nullable(examples),
});

/** What the page of rules shows of a verdict. */
export type ShownVerdict = v.InferOutput<typeof verdict>;
export type ShownPart = v.InferOutput<typeof part>;

/** `rules.json` of a results folder; null in results of a time before rules were judged in every run. */
export function readVerdicts(results: string): Promise<ShownVerdict[] | null> {
  return readOptional(results, "rules.json", v.array(verdict));
}
