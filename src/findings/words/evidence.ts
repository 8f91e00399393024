import type { DevoicingTable } from "./devoicingTable.ts";
import type { HeardIndex } from "./heardIndex.ts";
import type { LengthEvidence } from "./lengthEvidence.ts";

/** What the corpus tells about words: chances, length ratios, and who said what. */
export interface Evidence {
  readonly devoicing: DevoicingTable;
  readonly lengths: LengthEvidence;
  readonly heard: HeardIndex;
}
