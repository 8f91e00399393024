import { soundName } from "../../src/findings/soundNames.ts";

/** A value of a column as the pictures name it. */
export function valueName(column: string, value: string | null): string {
  if (value === null) return "unknown";
  if (column === "phone" || column === "before" || column === "after") return soundName(value);
  if (column === "accented") return value === "true" ? "accented" : "not accented";
  if (column === "devoiceableNeighbour") return value === "true" ? "beside another" : "alone";
  return value;
}
