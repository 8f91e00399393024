import * as v from "valibot";
import { contrasts, surroundings } from "../../estimates/lengthContrast.ts";
import { cellColumns } from "../../measures/columns.ts";
import { expandSelector } from "../../phonology/phoneClasses.ts";
import { type TokenContrast, tokenContrasts, tokenKinds } from "./tokenContrasts.ts";

const text = v.pipe(v.string(), v.trim(), v.minLength(1, "some text"));
const selector = v.pipe(
  text,
  v.rawCheck(({ dataset, addIssue }) => {
    if (!dataset.typed) return;
    try {
      expandSelector(dataset.value);
    } catch (error) {
      addIssue({ message: (error as Error).message });
    }
  }),
);
const selectors = v.union(
  [selector, v.pipe(v.array(selector), v.minLength(1))],
  "a phone, a class of phones, or a list of them",
);

/** Which vowels or consonants a cut holds; a field left out does not restrict. */
const where = v.strictObject({
  vowel: v.exactOptional(selectors),
  phone: v.exactOptional(selectors),
  before: v.exactOptional(selectors),
  after: v.exactOptional(selectors),
  kind: v.exactOptional(v.picklist(["vowel", "consonant"])),
  length: v.exactOptional(v.picklist(["short", "long", "single", "geminate"])),
  position: v.exactOptional(v.picklist(["initial", "medial", "final", "only"])),
  accented: v.exactOptional(v.boolean()),
  devoiceableNeighbour: v.exactOptional(v.boolean()),
});
/** A cut and what a sentence calls it. */
const cut = v.strictObject({ called: text, where });

export const exceptionColumns = [
  ...(["phone", "before", "after", "position"] as const),
  ...(["length", "accented", "devoiceableNeighbour"] as const),
] as const;

const rate = v.strictObject({ kind: v.literal("rate"), of: cut });
const rateDifference = v.strictObject({ kind: v.literal("rate-difference"), first: cut, second: cut });
const lengthRatio = v.strictObject({
  kind: v.literal("length-ratio"),
  of: v.picklist(contrasts),
  where: v.exactOptional(v.omit(where, ["length"])),
  surroundings: v.exactOptional(v.picklist(surroundings)),
});
const durationRatio = v.strictObject({
  kind: v.literal("duration-ratio"),
  first: cut,
  second: cut,
  within: v.pipe(v.array(v.picklist(exceptionColumns)), v.minLength(1)),
});
const needs = v.strictObject({
  kind: v.literal("needs"),
  columns: v.pipe(
    v.array(
      v.strictObject({
        name: v.pipe(
          text,
          v.check(
            (name) => !Object.hasOwn(cellColumns, name),
            "a column that the cells do not hold; they do hold this one, so write the contrast itself",
          ),
        ),
        is: text,
      }),
    ),
    v.minLength(1, "at least one column"),
  ),
});

/** The contrasts a rule may speak of. */
export const contrastKinds = [
  ...(["rate", "rate-difference", "length-ratio", "duration-ratio"] as const),
  ...tokenKinds,
  "needs",
] as const;
export const contrastSchema = v.variant("kind", [
  rate,
  rateDifference,
  lengthRatio,
  durationRatio,
  ...tokenContrasts,
]);

const worth = v.optional(v.pipe(v.number(), v.gtValue(0)));
const holds = v.variant("when", [
  v.strictObject({ when: v.literal("more-than"), value: v.number(), negligible: worth }),
  v.strictObject({ when: v.literal("less-than"), value: v.number(), negligible: worth }),
  v.strictObject({ when: v.literal("between"), from: v.number(), to: v.number() }),
  v.strictObject({
    when: v.literal("about"),
    value: v.number(),
    margin: v.pipe(v.number(), v.gtValue(0), v.ltValue(1)),
  }),
]);

/** How far a source was seen; none where there is no published one. */
export const sourceMarks = ["read", "read, secondary", "computed", "memory"] as const;
export const unpublished = ["common practice, no published source", "from memory"] as const;
const source = v.union(
  [
    v.strictObject({ citation: text, url: v.optional(text), mark: v.picklist(sourceMarks) }),
    v.picklist(unpublished),
  ],
  `{"citation": "…", "mark": "${sourceMarks.join('" | "')}"}, or one of "${unpublished.join('", "')}"`,
);

const head = {
  id: v.pipe(text, v.regex(/^[a-z0-9]+(-[a-z0-9]+)*$/, "lower-case letters, digits and single hyphens")),
  statement: v.strictObject({ en: text, ja: v.optional(text) }),
  source,
  note: v.optional(text),
};
const atLeast = (least: number) => v.pipe(v.number(), v.integer(), v.minValue(least));
export const leastSchema = v.strictObject({ tokens: atLeast(2), speakers: atLeast(2) });

export const judgedRuleSchema = v.strictObject({
  ...head,
  contrast: contrastSchema,
  /** Set for edges that aligners place badly: only boundaries set or measured otherwise may judge. */
  boundaries: v.exactOptional(v.literal("annotated")),
  /** Set where the rule speaks of certain words (です, ます), not of words like them: their own number then widens no interval. */
  words: v.exactOptional(v.literal("these")),
  holds,
  least: leastSchema,
  exceptions: v.optional(v.array(v.picklist(exceptionColumns)), []),
});
export const needsRuleSchema = v.strictObject({ ...head, contrast: needs, holdsWhen: text });

/** A rule that cells or tokens can judge. Rates and their differences are shares (0.95, not 95); ratios are plain numbers, shifts in semitones or Hz. */
export type JudgedRule = v.InferOutput<typeof judgedRuleSchema>;
/** A rule that needs columns which results do not hold. */
export type NeedsRule = v.InferOutput<typeof needsRuleSchema>;
export type Rule = JudgedRule | NeedsRule;
export type RuleContrast = JudgedRule["contrast"];
/** Those that cells can judge. */
export type CellContrast = Exclude<RuleContrast, TokenContrast>;
export type RuleCut = v.InferOutput<typeof cut>;
export type Holds = v.InferOutput<typeof holds>;
export type RuleSource = v.InferOutput<typeof source>;
export type ExceptionColumn = (typeof exceptionColumns)[number];
