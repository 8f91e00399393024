import { describe, expect, test } from "vitest";
import { adaptModel } from "../../../src/alignment/adaptModel.ts";
import { alignUtterance } from "../../../src/alignment/alignUtterance.ts";
import { extractFeatures } from "../../../src/alignment/features.ts";
import { makePhoneGraph } from "../../../src/alignment/graph.ts";
import { speakerNormalisation } from "../../../src/alignment/observations.ts";
import { parseModel, serialiseModel } from "../../../src/alignment/serialiseModel.ts";
import { trainModel } from "../../../src/alignment/trainModel.ts";
import { modelUnreadable } from "../../../src/messages/alignment.ts";
import { toySpeech } from "./toySpeech.ts";

const speech = toySpeech(40, 3);
const features = speech.map(({ samples }) => extractFeatures(samples));
const normalisation = speakerNormalisation(features);
const graphs = speech.map(({ parts }) => makePhoneGraph(parts));
const corpus = features.map((own, i) => ({ features: own, graph: graphs[i]!, normalisation }));
const { model, likelihoods, skipped } = trainModel(corpus);

describe("trainModel and alignUtterance on sounds that change at known times", () => {
  test("find 70 % of the changes between sounds within 10 ms and all within 20, and those to silence within 35", () => {
    const between: number[] = [];
    const besidePauses: number[] = [];
    speech.forEach(({ timesMs }, i) => {
      const { phones } = alignUtterance(model, features[i]!, graphs[i]!, normalisation)!;
      expect(phones).toHaveLength(timesMs.length - 1);
      phones.slice(1).forEach(({ startMs, phone }, k) => {
        const list = phone === "pause" || phones[k]!.phone === "pause" ? besidePauses : between;
        list.push(Math.abs(startMs - timesMs[k + 1]!));
      });
    });
    expect(between.filter((e) => e <= 10).length / between.length).toBeGreaterThanOrEqual(0.7);
    expect(Math.max(...between)).toBeLessThanOrEqual(20);
    expect(Math.max(...besidePauses)).toBeLessThanOrEqual(35);
  });
  test("cover the recording without gap or overlap", () => {
    const { phones } = alignUtterance(model, features[0]!, graphs[0]!, normalisation)!;
    expect(phones[0]!.startMs).toBe(0);
    expect(phones.at(-1)!.endMs).toBe(features[0]!.durationMs);
    for (let i = 1; i < phones.length; i++) expect(phones[i]!.startMs).toBe(phones[i - 1]!.endMs);
  });
  test("raise the likelihood with each pass of equal size, and skip nothing", () => {
    expect(skipped).toBe(0);
    expect(likelihoods[1]!).toBeGreaterThan(likelihoods[0]!);
    expect(likelihoods[3]!).toBeGreaterThanOrEqual(likelihoods[2]!);
  });
  test("choose the reading that was spoken", () => {
    const { parts, samples } = toySpeech(1, 99)[0]!;
    const wrong = parts.map(
      (part) => ({ phone: "phone" in part && part.phone === "a" ? "i" : "a" }) as const,
    );
    const graph = makePhoneGraph([{ choices: [wrong, parts] }]);
    const { phones } = alignUtterance(model, extractFeatures(samples), graph, normalisation)!;
    const sounds = phones.filter(({ phone }) => phone !== "pause");
    expect(sounds.map(({ source }) => source)).toEqual(parts.map((_, i) => parts.length + i));
  });
  test("flag a phone that the recording does not hold as lasting no longer than the floor", () => {
    const { samples, parts } = speech[0]!;
    const hiss = { phone: "s" } as const;
    const place = parts.findIndex(
      (part, i) => i > 0 && ![part, parts[i - 1]!].some((p) => "phone" in p && p.phone === "s"),
    );
    const graph = makePhoneGraph([...parts.slice(0, place), hiss, ...parts.slice(place)]);
    const { phones } = alignUtterance(model, extractFeatures(samples), graph, normalisation)!;
    expect(phones.filter(({ atFloor }) => atFloor).map(({ source }) => source)).toEqual([place]);
    expect(phones.find(({ source }) => source === place)!.confidence).toBeLessThanOrEqual(1);
  });
  test("give a worse match score to a text that was not spoken", () => {
    const right = alignUtterance(model, features[0]!, graphs[0]!, normalisation)!;
    const wrong = alignUtterance(model, features[0]!, graphs[1]!, normalisation)!;
    expect(wrong.match.gap).toBeGreaterThan(2 * right.match.gap + 1);
    expect(wrong.match.worst.endMs - wrong.match.worst.startMs).toBeGreaterThanOrEqual(300);
  });
  test("have no alignment for a recording shorter than its phones, nor for a phone unlike any known", () => {
    expect(
      alignUtterance(model, extractFeatures(new Float32Array(1600)), graphs[0]!, normalisation),
    ).toBeNull();
    const onlyVowels = trainModel(
      corpus.slice(0, 1).map((utterance) => ({ ...utterance, graph: makePhoneGraph([{ phone: "pause" }]) })),
    ).model;
    expect(alignUtterance(onlyVowels, features[0]!, graphs[0]!, normalisation)).toBeNull();
  });
});

describe("trainModel", () => {
  test("gives the same bytes for the same input", () => {
    expect(serialiseModel(trainModel(corpus).model)).toBe(serialiseModel(model));
    expect(serialiseModel(trainModel(corpus, { jitter: 0.5, seed: 2 }).model)).not.toBe(
      serialiseModel(model),
    );
  });
  test("started five ways places boundaries within 2 ms in the median", () => {
    for (let seed = 1; seed <= 5; seed++) {
      const other = trainModel(corpus, { jitter: 0.5, seed }).model;
      const shifts = speech.flatMap((_, i) => {
        const one = alignUtterance(model, features[i]!, graphs[i]!, normalisation)!.phones;
        const two = alignUtterance(other, features[i]!, graphs[i]!, normalisation)!.phones;
        return one.map(({ startMs }, k) => Math.abs(startMs - two[k]!.startMs)).slice(1);
      });
      expect(shifts.sort((a, b) => a - b)[shifts.length >> 1]).toBeLessThan(2);
    }
  });
  test("fit a model of other speech to three utterances", () => {
    const fitted = adaptModel(model, corpus.slice(0, 3))!;
    const { phones } = alignUtterance(fitted, features[9]!, graphs[9]!, normalisation)!;
    phones.slice(1).forEach(({ startMs }, k) => {
      expect(Math.abs(startMs - speech[9]!.timesMs[k + 1]!)).toBeLessThanOrEqual(35);
    });
  });
  test("refuses to learn from nothing", () => {
    expect(() => trainModel([])).toThrow(/at least one utterance/);
  });
});

describe("parseModel", () => {
  test("gives back what serialiseModel wrote, to the last bit", () => {
    const text = serialiseModel(model);
    const again = parseModel(text, "model.json");
    expect(serialiseModel(again)).toBe(text);
    expect(alignUtterance(again, features[5]!, graphs[5]!, normalisation)).toEqual(
      alignUtterance(model, features[5]!, graphs[5]!, normalisation),
    );
  });
  test("refuses other text, other versions and parts that do not fit, with the file's name", () => {
    expect(() => parseModel("no", "m.json")).toThrow(modelUnreadable("m.json", "it is no JSON"));
    const file = JSON.parse(serialiseModel(model));
    expect(() => parseModel(JSON.stringify({ ...file, version: 0 }), "m.json")).toThrow(
      /^m\.json is no acoustic model/,
    );
    expect(() => parseModel(JSON.stringify({ ...file, frames: [3] }), "m.json")).toThrow(
      modelUnreadable("m.json", "its parts do not fit each other"),
    );
  });
});
