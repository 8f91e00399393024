import type { Scale } from "../findings/rules/region.ts";
import type { Extent } from "./effectScale.ts";

/** Bounds for a picture: a ratio that may be as small as 0 is open there, as results write what is open above. */
export function openRatio({ estimate, low, high }: Extent, scale: Scale): Extent {
  return { estimate, low: scale === "ratio" && low === 0 ? null : low, high };
}
