import { expect, test } from "vitest";
import { type CellToken, cellsFromTokens } from "../../../src/estimates/cellsFromTokens.ts";
import { type Filter, filterMask } from "../../../src/estimates/filter.ts";
import { UserError } from "../../../src/messages/userError.ts";
import { sampleTokens } from "./sampleTokens.ts";

const tokens = sampleTokens(3000, 4, 1).map((t, i) => (i % 9 === 0 ? { ...t, length: null } : t));
const cells = cellsFromTokens(tokens);
const voiceless = ["k", "s", "t"];

/** Each filter beside the same question asked of every token. */
const questions: readonly (readonly [Filter, (token: CellToken) => boolean])[] = [
  [{}, () => true],
  [{ vowel: "i,u" }, (t) => t.kind === "vowel" && (t.phone === "i" || t.phone === "u")],
  [{ vowel: ["i", "u"] }, (t) => t.kind === "vowel" && (t.phone === "i" || t.phone === "u")],
  [{ phone: "stop" }, (t) => t.phone === "t" || t.phone === "k"],
  [
    { vowel: "i", before: "voiceless", after: "voiceless" },
    (t) => t.phone === "i" && voiceless.includes(t.before) && voiceless.includes(t.after),
  ],
  [{ after: "pause" }, (t) => t.after === "pause"],
  [{ after: ["pause", "nasal"] }, (t) => t.after === "pause" || t.after === "N"],
  [
    { speaker: ["s1", "s3"], position: "final" },
    (t) => "s1 s3".includes(t.speaker) && t.position === "final",
  ],
  [{ accented: true }, (t) => t.accented === true],
  [{ accented: false }, (t) => t.accented === false],
  [
    { devoiceableNeighbour: true, length: "long" },
    (t) => t.devoiceableNeighbour === true && t.length === "long",
  ],
  [{ dataset: "other" }, () => false],
  [{ length: ["short", "unknown"] }, (t) => t.length === "short" || t.length === null],
];

test.each(questions)(
  "filterMask %j selects the cells of exactly the tokens that match",
  (filter, matches) => {
    const mask = filterMask(cells, filter);
    let selected = 0;
    for (let i = 0; i < cells.size; i++) if (mask[i] === 1) selected += cells.tokens[i]!;
    expect(selected).toBe(tokens.filter(matches).length);
  },
);

test("filterMask refuses a phone or class that does not exist", () => {
  expect(() => filterMask(cells, { before: "voicless" })).toThrow(UserError);
});
