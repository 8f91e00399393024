import type { TokenTable } from "./tokenTable.ts";

/** Centre of gravity of a consonant, Hz: of its frication, or of a stop's release; NaN where neither is measured. */
export function consonantCentreHz({ numbers }: TokenTable, row: number): number {
  const fricationHz = numbers.fricationCentreHz[row]!;
  return Number.isNaN(fricationHz) ? numbers.releaseCentreHz[row]! : fricationHz;
}
