import { describe, expect, test } from "vitest";
import { english } from "../../../src/interface/english/index.ts";
import type { Clip } from "../../../src/publish/clips.ts";
import { clipKey, soundsToHear } from "../../../src/publish/ruleClips.ts";
import { ruleExamplesHtml } from "../../../src/publish/ruleExamplesHtml.ts";
import { sampleVerdict } from "./sampleVerdict.ts";

const sound = (utterance: string, changes = {}) => ({
  ...{ speaker: "one", utterance, index: 3, phone: "u", before: "s", after: "pause", word: "です" },
  ...{ startMs: 100, endMs: 160, shows: "devoiced", value: 0.987, ...changes },
});
const examples = (clearest: readonly string[], mostContrary: readonly string[]) => ({
  ...{ by: "probability" as const, reason: null },
  ...{ clearest: clearest.map((name) => sound(name)), mostContrary: mostContrary.map((name) => sound(name)) },
});

describe("soundsToHear", () => {
  const verdicts = [
    sampleVerdict({ rule: "a", examples: examples(["a1", "a2", "a3"], ["x"]) }),
    sampleVerdict({ rule: "b", examples: examples(["b1", "a1"], ["y", "z"]) }),
    sampleVerdict({ rule: "c", dataset: "other", examples: examples(["c1"], []) }),
    sampleVerdict({ rule: "e" }),
  ];
  const names = (most?: number) => soundsToHear(verdicts, "d", most).map(({ utterance }) => utterance);

  test("takes the first of every rule before the second of any, each sound once", () => {
    expect(names()).toEqual(["a1", "b1", "x", "y", "a2", "z", "a3"]);
  });

  test("keeps its ceiling", () => {
    expect(names(3)).toEqual(["a1", "b1", "x"]);
  });
});

describe("ruleExamplesHtml", () => {
  const verdict = sampleVerdict({ examples: examples(["a", "b"], ["<img>"]) });
  const clip = (utterance: string) =>
    ({
      ...{ dataset: "d", labelSet: "s", utterance, index: 3, file: `data/clips/${utterance}.wav` },
      card: { file: `data/clips/${utterance}.svg`, alt: "u after s" },
    }) as Clip;

  test("names each sound with where it is, its value and a player where a clip is published", () => {
    const page = String(ruleExamplesHtml(verdict, [clip("a")]));
    expect(page.match(/<audio/g)).toHaveLength(1);
    expect(page).toContain('src="./data/clips/a.wav"');
    expect(page).toContain('src="./data/clips/a.svg" alt="u after s"');
    expect(page).toContain("probability 0.99, one, b");
    expect(page).toContain("devoiced &#91;ɯ] after &#91;s] and before a pause");
    expect(page).toContain(english.ruleExamples.notAllHeard);
    expect(page).not.toContain("<img>");
  });

  test("says nothing of silence where all are heard, and why there are none", () => {
    const page = String(ruleExamplesHtml(verdict, ["a", "b", "<img>"].map(clip)));
    expect(page).not.toContain(english.ruleExamples.notAllHeard);
    const none = { ...examples([], []), reason: "none" };
    expect(String(ruleExamplesHtml(sampleVerdict({ examples: none }), []))).toContain(
      english.ruleExamples.none,
    );
    expect(ruleExamplesHtml(sampleVerdict(), [])).toBeNull();
  });

  test("clipKey tells label sets apart", () => {
    const place = { dataset: "d", labelSet: "s", utterance: "a", index: 1 };
    expect(clipKey(place)).not.toBe(clipKey({ ...place, labelSet: "t" }));
  });
});
