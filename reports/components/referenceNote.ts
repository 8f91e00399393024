import type { ReferenceBand } from "../../src/publish/referenceBands.ts";
import { element } from "./element.ts";

const seen = {
  read: "source seen",
  "read-secondary": "seen in another work that quotes it",
  memory: "from memory, not confirmed",
} as const;

/** What the band behind a picture is, with each source and how far it was seen. */
export function bandNote({ low, high, what, mark, sources }: ReferenceBand): HTMLElement {
  const items = sources.map(({ value, citation, url, mark }) =>
    element(
      "li",
      {},
      `${value}: ${citation}. `,
      url !== null && element("a", { href: url, rel: "external" }, "Address"),
      ` (${seen[mark]})`,
    ),
  );
  return element(
    "details",
    { class: "band-note" },
    element(
      "summary",
      {},
      element("span", { class: "band-key", "aria-hidden": "true" }),
      `Band: ${low} to ${high}, published for ${what} (${seen[mark]})`,
    ),
    element("ul", {}, ...items),
  );
}
