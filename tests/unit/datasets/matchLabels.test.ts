import { expect, test } from "vitest";
import { draft } from "../../../src/datasets/layouts/layout.ts";
import { matchLabels } from "../../../src/datasets/matchLabels.ts";

const utterance = (speaker: string, style: string, stem: string) =>
  draft({
    id: `${speaker}/${style}/${stem}`,
    stem,
    speaker,
    style,
    audio: `${speaker}/${style}/wav/${stem}.wav`,
    file: "list",
  });

const numbers = Array.from({ length: 10 }, (_, index) => `V_${index}`);
const drafts = ["ann", "bob"].flatMap((speaker) => [
  ...numbers.map((stem) => utterance(speaker, "read", stem)),
  ...numbers.slice(0, 2).map((stem) => utterance(speaker, "whisper", stem)),
]);
const none = () => expect.unreachable("nothing is ambiguous here");
const idOf = (labels: readonly string[], path: string): string | undefined =>
  drafts[matchLabels(labels, drafts, none).matched.get(path)!]?.id;

test("matchLabels goes by speaker folder, then by the style that shares most names with the label's folder", () => {
  const labels = ["ann", "bob"].flatMap((speaker) => numbers.map((stem) => `labels/${speaker}/${stem}.lab`));
  expect(idOf(labels, "labels/bob/V_0.lab")).toBe("bob/read/V_0");
  expect(new Set(labels.map((path) => idOf(labels, path))).size).toBe(20);
});

test("matchLabels goes by style folder where there is one, and by a recording beside it before all else", () => {
  expect(idOf(["labels/ann/whisper/V_1.lab"], "labels/ann/whisper/V_1.lab")).toBe("ann/whisper/V_1");
  expect(idOf(["bob/whisper/wav/V_1.lab"], "bob/whisper/wav/V_1.lab")).toBe("bob/whisper/V_1");
});

test("matchLabels leaves a name nobody has unmatched", () => {
  expect(matchLabels(["labels/ann/X_1.lab"], drafts, none).unmatched).toEqual(["labels/ann/X_1.lab"]);
});

test("matchLabels never gives a label in one speaker's folder to another who alone has the name", () => {
  const onlyAnn = [utterance("ann", "read", "V_1"), utterance("bob", "read", "V_2")];
  const { matched, unmatched } = matchLabels(["labels/bob/V_1.lab", "labels/ann/V_1.lab"], onlyAnn, none);
  expect([...matched]).toEqual([["labels/ann/V_1.lab", 0]]);
  expect(unmatched).toEqual(["labels/bob/V_1.lab"]);
});
