import { readFile } from "node:fs/promises";
import * as v from "valibot";
import { contrasts } from "../estimates/lengthContrast.ts";

const mark = v.picklist(["read", "read-secondary", "memory"]);
const band = v.object({
  id: v.string(),
  contrast: v.picklist(contrasts),
  low: v.number(),
  high: v.number(),
  what: v.string(),
  mark,
  sources: v.array(v.object({ value: v.string(), citation: v.string(), url: v.nullable(v.string()), mark })),
});

/** Published values to compare with, each with its sources and with how far the source was seen. */
export type ReferenceBand = v.InferOutput<typeof band>;

export async function readReferenceBands(): Promise<ReferenceBand[]> {
  const file = new URL("../../data/reference/length-ratios.json", import.meta.url);
  return v.parse(v.array(band), JSON.parse(await readFile(file, "utf8")));
}
