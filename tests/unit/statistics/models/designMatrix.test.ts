import { describe, expect, test } from "vitest";
import {
  aliasedCoefficient,
  constantColumn,
  noRowsLeft,
  referenceMissing,
  rowsLeftOut,
} from "../../../../src/messages/models.ts";
import { multiply } from "../../../../src/statistics/linearAlgebra/sparseRows.ts";
import { type Design, designMatrix } from "../../../../src/statistics/models/designMatrix.ts";
import { encodeRows } from "../../../../src/statistics/models/encodeRows.ts";
import { designOf, labelled } from "./toyData.ts";

function dense({ matrix }: Design): number[][] {
  const unit = (j: number) => Float64Array.from({ length: matrix.columns }, (_, k) => (k === j ? 1 : 0));
  const columns = Array.from({ length: matrix.columns }, (_, j) => multiply(matrix, unit(j)));
  return Array.from({ length: matrix.rows }, (_, i) => columns.map((column) => column[i]!));
}
const names = (design: Design) => design.coefficients.map(({ name }) => name);

const columns = {
  vowel: labelled(["i", "u", "i", "u", "i", "u"]),
  c1: labelled(["k", "s", "t", "k", "s", "t"]),
  rate: Float64Array.of(5, 6, 7, 8, 9, 11),
};

describe("designMatrix", () => {
  test("codes levels against the first that occurs, numbers as they are", () => {
    const design = designOf(columns, [{ column: "c1" }, { column: "rate" }]);
    expect(names(design)).toEqual(["(Intercept)", "c1=s", "c1=t", "rate"]);
    expect(dense(design)).toEqual([
      [1, 0, 0, 5],
      [1, 1, 0, 6],
      [1, 0, 1, 7],
      [1, 0, 0, 8],
      [1, 1, 0, 9],
      [1, 0, 1, 11],
    ]);
  });

  test("takes the wanted reference level", () => {
    expect(names(designOf(columns, [{ column: "c1", reference: "t" }]))).toEqual([
      "(Intercept)",
      "c1=k",
      "c1=s",
    ]);
  });

  test("refuses a reference level that does not occur and lists those that do", () => {
    const made = designMatrix(columns, [{ column: "c1", reference: "p" }]);
    expect(made).toMatchObject({
      status: "cannot be estimated",
      reason: referenceMissing("c1", "p", ["k", "s", "t"]),
    });
  });

  test("multiplies codings for interactions", () => {
    const design = designOf(columns, [
      { column: "vowel" },
      { column: "rate" },
      { interaction: ["vowel", "rate"] },
    ]);
    expect(names(design)).toEqual(["(Intercept)", "vowel=u", "rate", "vowel=u × rate"]);
    expect(dense(design)[5]).toEqual([1, 1, 11, 11]);
    expect(dense(design)[4]).toEqual([1, 0, 9, 0]);
  });

  test("an interaction of factors has a column for each pair of levels beside the references", () => {
    const many = {
      a: labelled([..."aabbccaabbcc"]),
      b: labelled([..."xyxyxyxyxyxy"]),
    };
    const design = designOf(many, [{ column: "a" }, { column: "b" }, { interaction: ["a", "b"] }]);
    expect(names(design).slice(4)).toEqual(["a=b × b=y", "a=c × b=y"]);
    expect(dense(design)[3]).toEqual([1, 1, 0, 1, 1, 0]);
    expect(dense(design)[5]).toEqual([1, 0, 1, 1, 0, 1]);
  });

  test("leaves out rows with unknown values and rows without tokens, and says how many were unknown", () => {
    const made = designOf(
      {
        vowel: labelled(["i", null, "u", "i", "u"]),
        rate: Float64Array.of(1, 2, Number.NaN, 4, 7),
        word: labelled(["x", "x", "x", null, "y"]),
      },
      [{ column: "vowel" }, { column: "rate" }],
      { counts: [1, 1, 1, 1, 0] },
    );
    expect([...made.rows]).toEqual([0, 3]);
    expect(made.notices.slice(0, 2)).toEqual([rowsLeftOut(1, "vowel"), rowsLeftOut(1, "rate")]);
  });

  test("known: leaves out rows whose word is unknown although no term uses it", () => {
    const word = labelled(["a", null, "b", "c", null, "a"]);
    const design = designOf({ ...columns, word }, [{ column: "vowel" }], { known: ["word"] });
    expect([...design.rows]).toEqual([0, 2, 3, 5]);
    expect(design.notices).toEqual([rowsLeftOut(2, "word")]);
  });

  test("leaves out constant columns and columns that follow from others, each with a notice", () => {
    const more = {
      ...columns,
      same: labelled(["x", "x", "x", "x", "x", "x"]),
      still: new Float64Array(6).fill(2),
      twice: columns.rate.map((value) => 2 * value + 1e6),
      copy: columns.vowel,
    };
    const terms = ["vowel", "same", "still", "rate", "twice", "copy"].map((column) => ({ column }));
    const design = designOf(more, terms);
    expect(names(design)).toEqual(["(Intercept)", "vowel=u", "rate"]);
    expect(design.notices).toEqual([
      constantColumn("same", "x"),
      constantColumn("still", "2"),
      aliasedCoefficient("twice"),
      aliasedCoefficient("copy=u"),
    ]);
    expect(dense(design)[1]).toEqual([1, 1, 6]);
  });

  test("keeps a number far from zero apart from the intercept", () => {
    const year = Float64Array.of(2001, 2002, 2003, 2004, 2005, 2006);
    expect(names(designOf({ year }, [{ column: "year" }]))).toEqual(["(Intercept)", "year"]);
  });

  test("an empty selection cannot be estimated", () => {
    expect(designMatrix({ vowel: labelled([]) }, [{ column: "vowel" }])).toMatchObject({
      reason: noRowsLeft(),
    });
    expect(designMatrix(columns, [{ column: "vowel" }], { counts: [0, 0, 0, 0, 0, 0] })).toMatchObject({
      reason: noRowsLeft(),
    });
  });

  test("without terms is an intercept over the counts", () => {
    expect(dense(designOf({}, [], { counts: [1, 0, 2] }))).toEqual([[1], [1]]);
  });

  test("throws for a column that does not exist: a mistake of the caller", () => {
    expect(() => designMatrix(columns, [{ column: "pitch" }])).toThrow("no column pitch");
  });
});

test("encodeRows under an intervention moves every row to the level, or gives the slope along a number", () => {
  const design = designOf(columns, [
    { column: "vowel" },
    { column: "rate" },
    { interaction: ["vowel", "rate"] },
  ]);
  const weights = Float64Array.of(1, 10, 100, 1000);
  const moved = encodeRows(6, 4, design.terms, { column: "vowel", level: 1 });
  expect([...multiply(moved, weights)]).toEqual([...columns.rate].map((rate) => 11 + 1100 * rate));
  const slope = encodeRows(6, 4, design.terms, { slopeOf: "rate" });
  expect([...multiply(slope, weights)]).toEqual([100, 1100, 100, 1100, 100, 1100]);
});
