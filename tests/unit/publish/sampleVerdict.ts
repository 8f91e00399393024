import type { ShownPart, ShownVerdict } from "../../../src/publish/readVerdicts.ts";

/** A plain verdict, borne out by several speakers; `changes` say what is particular to it. */
export function sampleVerdict(changes: Partial<ShownVerdict> = {}): ShownVerdict {
  return {
    rule: "some-rule",
    statement: { en: "Long vowels are long", ja: "長母音は長い" },
    note: null,
    source: "from memory",
    dataset: "d",
    labelSet: "s",
    verdict: "borne out",
    place: "holds",
    sentence: "Over 12 speakers of d, it holds.",
    reason: null,
    kind: "length-ratio",
    detail: null,
    scale: "ratio",
    holds: { when: "between", from: 1.5, to: 3 },
    estimate: 2.2,
    low: 2,
    high: 2.5,
    bound: null,
    level: 0.95,
    tokens: [1200, 3400],
    speakers: 12,
    scope: "speakers",
    basis: "aligned",
    method: "ratio of geometric means",
    warnings: [],
    environments: null,
    bySpeaker: null,
    clearest: [],
    mostContrary: [],
    examples: null,
    ...changes,
  };
}

export function samplePart(changes: Partial<ShownPart> = {}): ShownPart {
  return {
    ...({ column: "after", value: "k", place: "fails", estimate: 1.2, low: 1.1, high: 1.3 } as const),
    ...{ tokens: [60, 70], speakers: 12 },
    ...changes,
  };
}

/** A rule that a corpus cannot speak about. */
export function unreadVerdict(changes: Partial<ShownVerdict> = {}): ShownVerdict {
  return sampleVerdict({
    ...({
      verdict: "not measurable",
      place: null,
      reason: "its labels do not say which morae carry the accent",
    } as const),
    ...{ estimate: null, low: null, high: null, tokens: [0], speakers: 0, basis: null, method: null },
    ...changes,
  });
}
