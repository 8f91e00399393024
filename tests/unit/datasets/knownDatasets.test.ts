import { expect, test } from "vitest";
import { knownDatasets, knownLabelSet, recogniseKnown } from "../../../src/datasets/knownDatasets.ts";

test("knownDatasets state a source for licence or redistribution, and grant nothing without a limit or a reason", () => {
  for (const { id, licence, sources, redistribution } of knownDatasets) {
    expect(`${id} ${sources.licence ?? sources.redistribution ?? ""}`.length).toBeGreaterThan(id.length + 10);
    expect(licence.name).not.toBe("");
    expect(redistribution.note).not.toBe("");
    expect(redistribution.kind === "excerpt").toBe(redistribution.utterances !== null);
  }
  expect(knownDatasets.length).toBeGreaterThan(5);
});

test("knownDatasets label facts never call a rule's marks annotated, nor leave an aligned set without grid", () => {
  const jvs = knownDatasets.find(({ id }) => id === "jvs")!;
  expect(knownLabelSet(jvs, "labels-devoicing-by-rule")!.devoicingBasis).toBe("predicted");
  expect(knownLabelSet(jvs, "labels-long-marked")!.devoicingBasis).toBeUndefined();
  expect(knownLabelSet(knownDatasets.find(({ id }) => id === "jsut")!, "labels")).toMatchObject({
    devoicingBasis: null,
    timeGridMs: 10,
    timeFloorMs: 30,
  });
  expect(knownLabelSet(knownDatasets.find(({ id }) => id === "ita-labels")!, "labels")).toMatchObject({
    devoicingBasis: "annotated",
    timeGridMs: 5,
  });
  expect(knownLabelSet(null, "labels")).toBeNull();
});

test("recogniseKnown goes by ids and paths, not by the folder's name, and needs four in five", () => {
  const ids = Array.from({ length: 10 }, (_, index) => `BASIC5000_000${index}`);
  expect(recogniseKnown(ids, [])?.id).toBe("jsut");
  expect(recogniseKnown([...ids.slice(0, 7), "a", "b", "c"], [])).toBeNull();
  expect(recogniseKnown(["0_1", "0_2"], ["0_1.lab"])).toBeNull();
  expect(recogniseKnown(["ao_ie", "aioi_uo_ie2"], [])?.id).toBe("vowel-sequences");
  expect(recogniseKnown([], [])).toBeNull();
});
