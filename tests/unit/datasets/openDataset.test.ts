import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { openDataset } from "../../../src/datasets/openDataset.ts";
import { labelFileEmpty, unknownLicenceNote } from "../../../src/messages/datasets.ts";
import { UserError } from "../../../src/messages/userError.ts";
import { tempFolder } from "../../helpers/tempFolder.ts";
import { lab, openFolder, rulesOf, wav } from "./openFolder.ts";

test("openDataset of an unrecognised folder says what was looked for, what was found and the way out", async () => {
  const folder = tempFolder({ "readme.md": "x", "data.zip": "x" });
  const error = await openDataset(folder).catch((reason) => reason);
  expect(error).toBeInstanceOf(UserError);
  expect(error.exitCode).toBe(2);
  for (const part of [
    "was not recognised",
    "0 recordings, 0 label files",
    "data.zip",
    "transcript_utf8.txt",
    "unpack .zip",
    "dataset.json",
  ])
    expect(error.message).toContain(part);
  await expect(openDataset(tempFolder())).rejects.toThrow("no file at all");
});

test("openDataset of an unknown dataset calls its licence unknown, keeps its clips here and its marks predicted", async () => {
  const lines = Array.from({ length: 80 }, (_, index) => {
    const startSec = 0.13 * (index >> 1) + (index % 2) * 0.05;
    return `${startSec.toFixed(2)} ${(startSec + (index % 2 === 0 ? 0.05 : 0.08)).toFixed(2)} ${index % 2 === 0 ? "k" : "U"}`;
  });
  const { card } = await openFolder({ "a.lab": lines.join("\n"), "a.txt": "ク" });
  expect(card.licence).toEqual({ name: "unknown", url: null });
  expect(card.redistribution).toEqual({ kind: "none", utterances: null, note: unknownLicenceNote });
  expect(card.labelSets[0]).toMatchObject({
    timeBasis: "aligned",
    devoicingBasis: "predicted",
    timeGridMs: 10,
    timeFloorMs: 50,
    accentBasis: null,
  });
  expect(card.labelSets[0]!.note).toContain("measured on 80 intervals of 1 label files");
  expect(card.labelSets[0]!.note).toContain("treated as predicted");
});

test("openDataset believes dataset.json over what is known and found, and a licence alone publishes nothing", async () => {
  const files = {
    "aioi_ao.wav": wav,
    "aioi_ao.lab": lab,
    "dataset.json": JSON.stringify({
      id: "mine",
      name: "Mine",
      licence: { name: "CC0 1.0" },
      synthetic: true,
      notice: "A machine speaks.",
      speaker: { from: "one", name: "m1" },
      labelSets: [
        {
          id: "by-hand",
          path: "aioi_ao.lab",
          timeBasis: "annotated",
          timeGridMs: null,
          timeFloorMs: null,
          note: "Placed by hand.",
        },
      ],
    }),
  };
  const { card, utterances } = await openFolder(files);
  expect(card).toMatchObject({
    id: "mine",
    name: "Mine",
    licence: { name: "CC0 1.0", url: null },
    synthetic: true,
    notice: "A machine speaks.",
  });
  expect(card.labelSets).toHaveLength(1);
  expect(card.labelSets[0]).toMatchObject({ id: "by-hand", timeBasis: "annotated", note: "Placed by hand." });
  expect(utterances[0]).toMatchObject({ dataset: "mine", speaker: "m1", labels: [{ labelSet: "by-hand" }] });
  const unknown = await openFolder({
    ...files,
    "aioi_ao.wav": wav,
    "other.wav": wav,
    "other.lab": lab,
    "third.wav": wav,
    "third.lab": lab,
  });
  expect(unknown.card.redistribution.kind).toBe("none");
});

test("openDataset takes a card kept elsewhere, by --card, before the folder's own", async () => {
  const folder = tempFolder({
    "a.wav": wav,
    "a.txt": "はい",
    "dataset.json": JSON.stringify({ name: "Inside" }),
  });
  const elsewhere = join(tempFolder(), "card.json");
  writeFileSync(elsewhere, JSON.stringify({ name: "Elsewhere" }));
  expect((await openDataset(folder)).card.name).toBe("Inside");
  expect((await openDataset(folder, { card: elsewhere })).card.name).toBe("Elsewhere");
  await expect(openDataset(folder, { card: `${elsewhere}.none` })).rejects.toThrow("cannot be read");
});

test("openDataset refuses a dataset.json that is broken or names a layout that is not there", async () => {
  const files = (card: string) => tempFolder({ "a.wav": wav, "a.txt": "はい", "dataset.json": card });
  await expect(openDataset(files('{"name": }'))).rejects.toThrow(/dataset\.json, line 1: this is not JSON/);
  await expect(openDataset(files('{"layout": "fleurs"}'))).rejects.toThrow(/does not hold it/);
  await expect(openDataset(files('{"layout": "best"}'))).rejects.toThrow(
    /no such layout; layouts are text-reading-list/,
  );
});

test("openDataset reads two declared label sets of one recording, with the speaker from a folder", async () => {
  const { card, utterances } = await openFolder({
    "rec/ann/1.wav": wav,
    "rec/ann/1.txt": "か",
    "hand/ann/1.txt.phones": lab,
    "auto/1.lab": lab,
    "dataset.json": JSON.stringify({
      speaker: { from: "folder", depth: 2 },
      labelSets: [
        { id: "hand", path: "hand", format: "start-end-phone", timeBasis: "annotated" },
        { id: "auto", path: "auto" },
      ],
    }),
  });
  expect(utterances).toHaveLength(2);
  expect(utterances.find(({ audio }) => audio !== null)).toMatchObject({ speaker: "ann" });
  expect(card.labelSets.map(({ id, timeBasis }) => [id, timeBasis])).toContainEqual(["auto", "aligned"]);
});

test("openDataset leaves out a label that reaches beyond its recording, one with NUL bytes and an empty one", async () => {
  const dataset = await openFolder({
    "1.wav": wav,
    "1.txt": "か",
    "1.lab": "0.00 0.05 k\n0.05 0.30 a\n",
    "2.wav": wav,
    "2.txt": "か",
    "2.lab": "0.00 0.05 k\0\n",
    "3.wav": wav,
    "3.txt": "か",
    "3.lab": "",
    "4.wav": wav,
    "4.txt": "か",
    "4.lab": lab,
  });
  expect(rulesOf(dataset).sort()).toEqual([
    "file-empty 3.lab",
    "label-longer-than-audio 1.lab",
    "text-nul 2.lab",
  ]);
  expect(dataset.problems.map(({ file, utterance, excluded }) => [file, utterance, excluded]).sort()).toEqual(
    [
      ["1.lab", "1", true],
      ["2.lab", "2", true],
      ["3.lab", "3", true],
    ],
  );
  expect(dataset.utterances.map(({ id, labels }) => [id, labels.length])).toEqual([
    ["1", 0],
    ["2", 0],
    ["3", 0],
    ["4", 1],
  ]);
});

test("openDataset says of an empty label file beside a good one that it is left out, and leaves out no utterance", async () => {
  const dataset = await openFolder({
    "1.wav": wav,
    "1.txt": "か",
    "hand/1.lab": lab,
    "auto/1.lab": "",
    "2.wav": wav,
    "2.txt": "か",
    "hand/2.lab": lab,
    "auto/2.lab": lab,
  });
  const empty = dataset.problems.filter(({ rule }) => rule === "file-empty");
  expect(empty).toMatchObject([{ file: "auto/1.lab", utterance: "1", ...labelFileEmpty(false) }]);
  expect(dataset.utterances.map(({ labels }) => labels.length)).toEqual([1, 2]);
});

test("openDataset gives the same answer for a folder whatever order it was written in", async () => {
  const files = (order: readonly string[]) => ({
    ...Object.fromEntries(
      order.flatMap((name) => [[`${name}.wav`, wav] as const, [`${name}.txt`, "はい"] as const]),
    ),
    "dataset.json": JSON.stringify({ id: "same", name: "Same" }),
  });
  const [first, second] = [
    await openFolder(files(["b", "a", "c"])),
    await openFolder(files(["c", "b", "a"])),
  ];
  expect(first.utterances.map(({ id }) => id)).toEqual(["a", "b", "c"]);
  expect(first.utterances).toEqual(second.utterances);
  expect(first.card).toEqual(second.card);
});
