import { type Provenance, provenanceElement } from "../../../src/publish/cite/provenance.ts";

let known: Provenance | null = null;

/** Where the numbers of this page come from, as its head says. */
export function pageProvenance(): Provenance {
  known ??= JSON.parse(
    document.getElementById(provenanceElement)?.textContent ?? "null",
  ) as Provenance | null;
  if (known === null) throw new Error("the page does not say where its numbers come from");
  return known;
}
