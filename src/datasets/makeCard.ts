import { unknownLicenceNote } from "../messages/datasets.ts";
import type { DatasetFile } from "./datasetFile.ts";
import type { KnownDataset } from "./knownDatasets.ts";
import type { DatasetCard, LabelSetCard, Utterance } from "./types.ts";

export interface CardParts {
  readonly id: string;
  /** Name of the folder, used when nothing better is known. */
  readonly folderName: string;
  readonly file: DatasetFile | null;
  readonly known: KnownDataset | null;
  readonly layout: string;
  readonly recognisedBy: string;
  readonly utterances: readonly Utterance[];
  readonly labelSets: readonly LabelSetCard[];
  readonly readingSource: string | null;
  readonly audioHours: number | null;
}

/** Short name of a dataset: dataset.json, else the known one, else the folder's name in lower-case letters and digits. */
export function datasetId(file: DatasetFile | null, known: KnownDataset | null, folderName: string): string {
  return file?.id ?? known?.id ?? (slug(file?.name ?? folderName) || "dataset");
}

/** The card: dataset.json wins over what is known, what is known over the careful defaults. */
export function makeCard(parts: CardParts): DatasetCard {
  const { file, known, utterances } = parts;
  const said = known ?? {
    name: parts.folderName,
    version: null,
    licence: { name: "unknown", url: null },
    citation: null,
    homePage: null,
    attribution: [],
    redistribution: { kind: "none" as const, utterances: null, note: unknownLicenceNote },
  };
  const readings = utterances.filter(({ reading }) => reading !== null).length;
  const redistribution =
    file?.redistribution ?? (file?.licence === undefined ? said.redistribution : keptHere(said, known));
  return {
    id: parts.id,
    name: file?.name ?? said.name,
    version: file?.version ?? said.version,
    licence: {
      name: file?.licence?.name ?? said.licence.name,
      url: file?.licence === undefined ? said.licence.url : (file.licence.url ?? null),
    },
    citation: file?.citation ?? said.citation,
    homePage: file?.homePage ?? said.homePage,
    redistribution: { ...redistribution, utterances: redistribution.utterances ?? null },
    attribution: file?.attribution ?? said.attribution,
    layout: parts.layout,
    recognisedBy: parts.recognisedBy,
    synthetic: file?.synthetic ?? false,
    notice: file?.notice ?? null,
    speakers: new Set(utterances.map(({ speaker }) => speaker)).size,
    utterances: utterances.length,
    audioHours: parts.audioHours,
    readings: { utterances: readings, source: readings === 0 ? null : parts.readingSource },
    labelSets: parts.labelSets,
  };
}

/** A licence alone does not say that recordings may be passed on; an unknown dataset keeps them until that is said. */
function keptHere(
  said: Pick<DatasetCard, "redistribution">,
  known: KnownDataset | null,
): DatasetCard["redistribution"] {
  if (known !== null) return said.redistribution;
  return {
    kind: "none",
    utterances: null,
    note: "dataset.json does not say what may be passed on (redistribution), so no recording leaves this machine.",
  };
}

function slug(name: string): string {
  return name
    .normalize("NFKD")
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, "-")
    .replace(/^-|-$/g, "");
}
