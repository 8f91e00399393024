import type { fewAlike } from "./devoicingTable.ts";
import type { Target } from "./targets.ts";

type Kinds = ReturnType<typeof fewAlike>;

/**
 * Of the kinds of vowels with too few marks those that a target's words need, and whether that is all it needs, so that
 * no word can be proposed until there are more marks.
 */
export function fewForTarget(target: Target, few: Kinds): { readonly kinds: Kinds; readonly all: boolean } {
  const needed = (["i", "u"] as const).flatMap((vowel) =>
    (["between", "pause"] as const).flatMap((place) =>
      needs(target, vowel, place) ? [{ vowel, place }] : [],
    ),
  );
  const kinds = few.filter((kind) =>
    needed.some(({ vowel, place }) => vowel === kind.vowel && place === kind.place),
  );
  return { kinds, all: kinds.length > 0 && kinds.length === needed.length };
}

function needs(target: Target, vowel: "i" | "u", place: "between" | "pause"): boolean {
  switch (target) {
    case "devoiced-i":
      return vowel === "i" && place === "between";
    case "devoiced-u":
      return vowel === "u" && place === "between";
    case "final":
      return place === "pause";
    case "kept-voiced":
    case "devoiced-pair":
      return true;
    default:
      return false;
  }
}
