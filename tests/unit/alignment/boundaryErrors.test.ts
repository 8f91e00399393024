import { describe, expect, test } from "vitest";
import type { AlignedPhone } from "../../../src/alignment/alignUtterance.ts";
import { boundaryErrors, type ReferencePhone, soundKind } from "../../../src/alignment/boundaryErrors.ts";
import { summariseErrors } from "../../../src/alignment/summariseErrors.ts";
import type { Phone } from "../../../src/phonology/phones.ts";

function reference(...spans: [string, number, number][]): ReferencePhone[] {
  return spans.map(([name, startMs, endMs]) => {
    const devoiced = name === "U" || name === "I";
    return { phone: (devoiced ? name.toLowerCase() : name) as Phone, devoiced, startMs, endMs };
  });
}
function own(...spans: [string, number, number][]): AlignedPhone[] {
  return reference(...spans).map(({ devoiced, ...rest }, source) => ({
    ...rest,
    long: false,
    variant: devoiced ? "devoiced" : "plain",
    source,
    confidence: 1,
    atFloor: false,
  }));
}

describe("boundaryErrors", () => {
  test("gives our time minus theirs at every boundary, with kinds by the reference", () => {
    const errors = boundaryErrors(
      own(["pause", 0, 90], ["s", 90, 210], ["u", 210, 240], ["pause", 240, 400]),
      reference(["pause", 0, 100], ["s", 100, 200], ["U", 200, 250], ["pause", 250, 400]),
    );
    expect(errors).toEqual([
      {
        left: "pause",
        right: "fricative",
        ownLeft: "pause",
        ownRight: "fricative",
        errorMs: -10,
        referenceMs: 100,
      },
      {
        left: "fricative",
        right: "devoiced vowel",
        ownLeft: "fricative",
        ownRight: "vowel",
        errorMs: 10,
        referenceMs: 200,
      },
      {
        left: "devoiced vowel",
        right: "pause",
        ownLeft: "vowel",
        ownRight: "pause",
        errorMs: -10,
        referenceMs: 250,
      },
    ]);
  });
  test("judges no boundary between equal vowels, and takes a pause of ours alone for none", () => {
    const errors = boundaryErrors(
      own(["o", 0, 200], ["pause", 200, 230], ["k", 230, 300]),
      reference(["o", 0, 90], ["o", 90, 205], ["k", 205, 300]),
    );
    expect(errors?.map(({ errorMs }) => errorMs)).toEqual([25]);
  });
  test("is null when the phones differ, wherever the difference stands", () => {
    expect(
      boundaryErrors(own(["a", 0, 10], ["k", 10, 20]), reference(["a", 0, 10], ["t", 10, 20])),
    ).toBeNull();
    expect(boundaryErrors(own(["a", 0, 10]), reference(["a", 0, 10], ["t", 10, 20]))).toBeNull();
    expect(boundaryErrors(own(["a", 0, 10], ["t", 10, 20]), reference(["a", 0, 10]))).toBeNull();
  });
  test("soundKind takes an affricate for a stop at its start and for a fricative at its end", () => {
    expect(soundKind("ch", false, "right")).toBe("voiceless stop");
    expect(soundKind("ch", false, "left")).toBe("fricative");
  });
});

test("summariseErrors gives medians, mean and shares; an offset is taken off first", () => {
  const errors = [-60, -20, 0, 10, 30].map((errorMs) => ({ errorMs }));
  expect(summariseErrors(errors)).toEqual({
    n: 5,
    medianMs: 20,
    meanMs: 24,
    biasMs: 0,
    within10: 40,
    within20: 60,
    within50: 80,
  });
  expect(summariseErrors(errors, 10)).toMatchObject({ biasMs: -10, within20: 60 });
  expect(summariseErrors([]).within20).toBeNaN();
});
