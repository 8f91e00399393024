import { soundName } from "../../src/findings/soundNames.ts";
import { interfaceText } from "../../src/interface/interfaceText.ts";

/** A value of a column as the pictures name it. */
export function valueName(column: string, value: string | null): string {
  const words = interfaceText().controls.values;
  if (value === null) return words.unknown;
  if (column === "phone" || column === "before" || column === "after") return soundName(value);
  if (column === "accented" || column === "devoiceableNeighbour")
    return words[column][value === "true" ? "true" : "false"];
  return column === "position" ? (words.position[value] ?? value) : value;
}
