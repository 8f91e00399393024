import * as v from "valibot";
import known from "../../data/reference/known-datasets.json" with { type: "json" };
import { bases } from "../basis.ts";

const basis = v.picklist(bases);
const labelSet = v.strictObject({
  match: v.string(),
  timeBasis: v.optional(basis),
  timeGridMs: v.optional(v.nullable(v.number())),
  timeFloorMs: v.optional(v.nullable(v.number())),
  devoicingBasis: v.optional(v.nullable(basis)),
  accentBasis: v.optional(v.nullable(basis)),
  note: v.string(),
});

const schema = v.strictObject({
  about: v.string(),
  datasets: v.array(
    v.strictObject({
      id: v.string(),
      name: v.string(),
      version: v.nullable(v.string()),
      recognise: v.strictObject({ ids: v.optional(v.string()), paths: v.optional(v.array(v.string())) }),
      speaker: v.optional(v.string()),
      licence: v.strictObject({ name: v.string(), url: v.nullable(v.string()) }),
      citation: v.nullable(v.string()),
      homePage: v.nullable(v.string()),
      attribution: v.array(v.string()),
      redistribution: v.strictObject({
        kind: v.picklist(["all", "excerpt", "none"]),
        utterances: v.nullable(v.number()),
        note: v.string(),
      }),
      labelSets: v.array(labelSet),
      /** Where each fact comes from, by field. */
      sources: v.record(v.string(), v.string()),
    }),
  ),
});

export type KnownDataset = v.InferOutput<typeof schema>["datasets"][number];
/** Facts about a label set of a known dataset; `match` is a pattern for its id. */
export type KnownLabelSet = Omit<KnownDataset["labelSets"][number], "match">;

const share = 0.8;

/** Published open datasets with what is known of them, each fact with its source beside it. */
export const knownDatasets: readonly KnownDataset[] = v.parse(schema, known).datasets;

/** The known dataset these are: at least 80 % of the ids fit its pattern, and each of its path patterns fits some file. */
export function recogniseKnown(ids: readonly string[], paths: readonly string[]): KnownDataset | null {
  return (
    knownDatasets.find(({ recognise }) => {
      const idPattern = recognise.ids === undefined ? null : new RegExp(recognise.ids);
      const idsFit =
        idPattern === null ||
        (ids.length > 0 && ids.filter((id) => idPattern.test(id)).length >= share * ids.length);
      return (
        idsFit && (recognise.paths ?? []).every((path) => paths.some((name) => new RegExp(path).test(name)))
      );
    }) ?? null
  );
}

export function knownLabelSet(dataset: KnownDataset | null, id: string): KnownLabelSet | null {
  const found = dataset?.labelSets.find(({ match }) => new RegExp(match).test(id));
  if (found === undefined) return null;
  const { match: _, ...facts } = found;
  return facts;
}
