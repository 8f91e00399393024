import { interfaceText } from "../../src/interface/interfaceText.ts";
import { retold } from "../../src/interface/retold.ts";
import type { ReferenceBand } from "../../src/publish/referenceBands.ts";
import { element } from "./element.ts";

/** What the band behind a picture is, with each source and how far it was seen; of one from memory, that none is drawn. */
export function bandNote({ low, high, what, mark, sources }: ReferenceBand): HTMLElement {
  const words = interfaceText().figures;
  const items = sources.map(({ value, citation, url, mark }) =>
    element(
      "li",
      {},
      element("span", { lang: "en" }, `${value}: ${citation}. `),
      url !== null && element("a", { href: url, rel: "external" }, words.address),
      ` (${words.seen[mark]})`,
    ),
  );
  return element(
    "details",
    { class: "band-note" },
    element(
      "summary",
      {},
      mark !== "memory" && element("span", { class: "band-key", "aria-hidden": "true" }),
      mark === "memory"
        ? words.fromMemory(low, high, retold(what))
        : words.band(low, high, retold(what), words.seen[mark]),
    ),
    element("ul", {}, ...items),
  );
}
