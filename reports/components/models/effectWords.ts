import type { Effect } from "../../../src/estimates/explain/explanation.ts";
import { soundName } from "../../../src/findings/soundNames.ts";
import { interfaceText } from "../../../src/interface/interfaceText.ts";

/** A level of a term as the pictures name it. */
export function levelName(term: string, level: string): string {
  if (term === "vowel") return soundName(level);
  return interfaceText().whatMatters.levels[term]?.[level] ?? level;
}

/** An effect as the pictures name it: `after: pause`, `speech rate: 1 mora/s more`. */
export function effectName({ term, level, unit }: Pick<Effect, "term" | "level" | "unit">): string {
  const words = interfaceText().whatMatters;
  const name = words.terms[term] ?? term;
  if (level === null) return words.perUnit(name, words.units[unit ?? ""] ?? unit ?? "");
  return words.row(name, levelName(term, level));
}

/** What an effect is held against: `stop`; null for a number. */
export function referenceName({ term, reference }: Effect): string | null {
  return reference === null ? null : levelName(term, reference);
}

/** The same in a sentence: `against stop`. */
export function againstWhat(effect: Effect): string | null {
  const name = referenceName(effect);
  return name === null ? null : interfaceText().whatMatters.against(name);
}

/** `−38.9`, `+7.4`, `0.0`. */
export function signedPoints(points: number): string {
  const size = Math.abs(points).toFixed(1);
  return Number(size) === 0 ? size : `${points < 0 ? "−" : "+"}${size}`;
}
