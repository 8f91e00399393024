import { validate } from "datapackage";
import { expect, test } from "vitest";
import { datapackage } from "../../../src/publish/datapackage.ts";
import type { RunRecord } from "../../../src/runPipeline.ts";
import { inventCard } from "../../pages/fixtures/cards.ts";

// The schema is the one that the Frictionless library `datapackage` ships (profile data-package).

const record = {
  software: { name: "morascope", version: "0.1.0" },
  createdAt: "2026-01-02T03:04:05.000Z",
  datasets: [
    inventCard({ id: "one", name: "One", homePage: "https://example.org/one", version: "2" }, { id: "ear" }),
    inventCard({ id: "two", name: "Two", notice: "Invented." }, { id: "ear" }),
  ],
} as unknown as RunRecord;

test("datapackage.json of a run is valid for the Frictionless schema", async () => {
  const { valid, errors } = await validate(datapackage(record));
  expect(errors.map(({ message }) => message)).toEqual([]);
  expect(valid).toBe(true);
});

test("the check refuses a package without resources, and a resource without path", async () => {
  const described = datapackage(record) as { resources: { path?: string }[] };
  expect((await validate({ ...described, resources: [] })).valid).toBe(false);
  const [first, ...rest] = described.resources;
  const { path: _, ...unplaced } = first!;
  expect((await validate({ ...described, resources: [unplaced, ...rest] })).valid).toBe(false);
});
