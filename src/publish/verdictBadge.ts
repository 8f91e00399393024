import { capital } from "../findings/format.ts";
import type { Verdict } from "../findings/rules/verdict.ts";
import { type Html, html } from "./html.ts";

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
export function verdictBadge(verdict: Verdict, words: string = capital(verdict)): Html {
  return html`<span class="verdict ${verdictSlug(verdict)}"><span class="sign" aria-hidden="true">${signs[verdict]}</span>${words}</span>`;
}
