import { expect, test } from "vitest";
import { openFolder, rulesOf } from "../openFolder.ts";

test("labels-only: names that come back in other folders are speakers", async () => {
  const lab = "0.0 0.1 a\n";
  const { card, utterances } = await openFolder({ "x/ann/1.lab": lab, "x/bob/1.lab": lab });
  expect(card).toMatchObject({ layout: "labels-only", speakers: 2 });
  expect(utterances.map(({ id }) => id)).toEqual(["ann/1", "bob/1"]);
});

test("labels-only: a CTM file of many recordings is one label file for each", async () => {
  const dataset = await openFolder({
    "all.ctm": ";; comment\nr1 1 0.00 0.10 k\nr1 1 0.10 0.05 a\nr2 1 0.00 0.20 o\n",
  });
  expect(dataset.utterances.map(({ id, labels }) => [id, labels[0]!.format, labels[0]!.path])).toEqual([
    ["r1", "ctm", "all.ctm/r1.ctm"],
    ["r2", "ctm", "all.ctm/r2.ctm"],
  ]);
  expect(dataset.tree.readText("all.ctm/r1.ctm")).toBe("r1 1 0.00 0.10 k\nr1 1 0.10 0.05 a\n");
  expect(rulesOf(dataset)).toEqual([]);
});
