import { describe, expect, test } from "vitest";
import { adaptModel } from "../../../src/alignment/adaptModel.ts";
import type { Alignment } from "../../../src/alignment/alignUtterance.ts";
import { parseModel } from "../../../src/alignment/serialiseModel.ts";
import { summariseErrors } from "../../../src/alignment/summariseErrors.ts";
import { loadSeedModel, seedModelFile } from "../../../src/storage/loadSeedModel.ts";
import { align, corpusOf, errorsOf, train } from "../../bench/alignment/alignMaterial.ts";
import { classes } from "../../bench/alignment/classes.ts";
import { type Material, splitAt } from "../../bench/alignment/material.ts";
import { readSentences, readVowelSequences } from "../../bench/alignment/readMaterial.ts";
import { stability } from "../../bench/alignment/stability.ts";
import { catchSwapped } from "../../bench/alignment/swapTranscripts.ts";

// Real speech, trained on itself without its labels. The sentences' labels are another aligner's: agreement, not accuracy.
const sentences = await readSentences();
const vowels = await readVowelSequences();
const missing = [sentences, vowels].filter((material) => material === null).length;
if (missing > 0) console.log(`skipped ${missing} of 2 real datasets: not in the shared data`);

function judged(material: Material): {
  alignments: (Alignment | null)[];
  errors: ReturnType<typeof errorsOf>["errors"];
} {
  const alignments = align(material, train(material).model);
  const { errors, unjudged } = errorsOf(material.items, alignments);
  expect(unjudged).toBe(0);
  return { alignments, errors };
}

describe.skipIf(sentences === null)("read-sentences", () => {
  const { alignments, errors } = sentences ? judged(sentences) : { alignments: [], errors: [] };
  test("agree within 50 ms on 93 % of boundaries, and within 20 on 75 % once the constant difference is taken off", () => {
    const { within50, within20, biasMs } = summariseErrors(errors);
    expect(within50).toBeGreaterThanOrEqual(93);
    expect(within20).toBeGreaterThanOrEqual(68);
    expect(summariseErrors(errors, biasMs).within20).toBeGreaterThanOrEqual(74);
  });
  test("agree within 50 ms out of a pause in 85 %", () => {
    expect(summariseErrors(errors.filter(classes["out of a pause"]!)).within50).toBeGreaterThanOrEqual(85);
  });
  test("hold no final devoiced /u/ longer than 150 ms", () => {
    for (const alignment of alignments) {
      const last = alignment!.phones.filter(({ phone }) => phone !== "pause").at(-1)!;
      if (last.variant === "devoiced") expect(last.endMs - last.startMs).toBeLessThanOrEqual(150);
    }
  });
  test("give the same boundaries from five starts and from half the data, to 10 ms in the median of every class", () => {
    const { start, half } = stability(sentences!);
    expect(start[1]).toBeLessThanOrEqual(10);
    expect(half[1]).toBeLessThanOrEqual(10);
  });
  test("show 95 % of exchanged transcripts at 2 % false alarms", () => {
    const { caught, falseAlarms } = catchSwapped(sentences!, 0.05, 10);
    expect(caught).toBeGreaterThanOrEqual(95);
    expect(falseAlarms).toBeLessThanOrEqual(2);
  });
});

describe.skipIf(vowels === null)("vowel-sequences", () => {
  test("have 70 % of their hand-placed boundaries within 20 ms", () => {
    expect(summariseErrors(judged(vowels!).errors).within20).toBeGreaterThanOrEqual(70);
  });
  test("keep 70 % with the seed fitted to them, and from forty seconds gain from it", () => {
    const seed = parseModel(loadSeedModel(), seedModelFile);
    const shares = (material: Material) => {
      const within = (model: Parameters<typeof align>[1]) =>
        summariseErrors(errorsOf(material.items, align(material, model)).errors);
      return { alone: within(train(material).model), seeded: within(adaptModel(seed, corpusOf(material))!) };
    };
    expect(shares(vowels!).seeded.within20).toBeGreaterThanOrEqual(70);
    const [part] = splitAt(vowels!, 40);
    const { alone, seeded } = shares(part);
    expect(seeded.within20).toBeGreaterThan(alone.within20 + 10);
    expect(seeded.within50).toBeGreaterThanOrEqual(95);
  });
});
