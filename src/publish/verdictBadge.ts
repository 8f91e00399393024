import { verdicts as order, type Verdict } from "../findings/rules/verdict.ts";
import { interfaceText } from "../interface/interfaceText.ts";
import { type Html, html } from "./html.ts";
import type { ShownVerdict } from "./readVerdicts.ts";

/** A sign for each verdict, so that verdicts differ by more than colour. */
const signs: Readonly<Record<Verdict, string>> = {
  "borne out": "✓",
  "borne out in part": "◐",
  contradicted: "✕",
  "too small to matter": "≈",
  undecided: "?",
  "too little evidence": "…",
  "not measurable": "–",
};

/** As it stands in addresses and class names: `borne-out-in-part`. */
export function verdictSlug(verdict: Verdict): string {
  return verdict.replaceAll(" ", "-");
}

/** The verdict with its sign; the words alone carry the meaning. */
export function verdictBadge(
  verdict: Verdict,
  words: string = interfaceText().verdicts.names[verdict],
): Html {
  return html`<span class="verdict ${verdictSlug(verdict)}"><span class="sign" aria-hidden="true">${signs[verdict]}</span>${words}</span>`;
}

/** Where a verdict stands in the order of the page: what several speakers show first, what is too thin last. */
export function rankOf({ verdict, scope }: Pick<ShownVerdict, "verdict" | "scope">): number {
  const rank = order.indexOf(verdict);
  if (verdict === "too little evidence" || verdict === "not measurable") return 2 * order.length + rank;
  return scope === "one speaker" ? order.length + rank : rank;
}
