import { mkdirSync, symlinkSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { outInsideDataset } from "../../../src/messages/results.ts";
import { refuseInsideDataset } from "../../../src/storage/refuseInsideDataset.ts";
import { tempFolder } from "../../helpers/tempFolder.ts";

test("refuseInsideDataset(out) refuses the dataset, what is in it and links into it, whether it is there yet or not", () => {
  const folder = tempFolder({ "data/list.txt": "", "elsewhere/a": "" });
  const data = join(folder, "data");
  symlinkSync(data, join(folder, "alias"));
  symlinkSync(join(folder, "elsewhere"), join(data, "away"));
  mkdirSync(join(folder, "data-results"));
  const refused = ["data", "data/results", "data/..results", "alias/results/new", "data/../alias"];
  for (const out of refused.map((one) => join(folder, one)))
    expect(() => refuseInsideDataset(out, [{ folder: data }]), out).toThrow(outInsideDataset(out, data));
  const taken = ["data-results", "elsewhere/new", "data/away/new", "data/../new"];
  for (const out of taken.map((one) => join(folder, one)))
    expect(() => refuseInsideDataset(out, [{ folder: data }]), out).not.toThrow();
  expect(() => refuseInsideDataset(data, [{ folder: join(folder, "alias") }])).toThrow();
});
