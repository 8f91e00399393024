import { interfaceText } from "../../../src/interface/interfaceText.ts";
import { labelAt } from "../../../src/publish/readListen.ts";
import { element } from "../element.ts";
import type { ListenCorpus } from "./listenCorpus.ts";
import { placeInWords, saidInWords } from "./soundWords.ts";
import { smallStrip } from "./strip.ts";
import { devoicedAt, tokenMorae } from "./tokenMorae.ts";

/** Sounds that are listed at first, and more each time they are asked for. */
export const listedAtOnce = 20;
const moraeInList = 3;

export interface TokenListOptions {
  readonly corpus: ListenCorpus;
  readonly rows: Int32Array;
  readonly shown: number;
  readonly chosen: number | null;
  readonly onChoose: (row: number) => void;
  readonly onMore: () => void;
  readonly isMarked: (row: number) => boolean;
}

/** Sounds that match, each as its row of morae; the chosen one is marked. */
export function tokenList(options: TokenListOptions): HTMLElement {
  const words = interfaceText().listen;
  const { rows, shown, onMore } = options;
  const left = rows.length - shown;
  return element(
    "section",
    { class: "token-list", "aria-label": words.list },
    element("p", { class: "found", role: "status" }, words.found(rows.length, shown)),
    element("ol", {}, ...Array.from(rows.slice(0, shown), (row) => element("li", {}, item(options, row)))),
    left > 0 &&
      element(
        "button",
        { type: "button", class: "tool", "data-key": "more-sounds", click: onMore },
        words.moreSounds(Math.min(listedAtOnce, left)),
      ),
  );
}

function item({ corpus, chosen, onChoose, isMarked }: TokenListOptions, row: number): HTMLElement {
  const { table, utterances } = corpus;
  const { speaker } = utterances[table.counts.place[row]!]!;
  const word = labelAt(table, "word", row);
  const devoiced = devoicedAt(table, row);
  const sign = devoiced === null ? "" : devoiced ? " ring" : " disc";
  return element(
    "button",
    {
      ...{ type: "button", class: "token-row", "data-row": row, "data-key": `row-${row}` },
      ...{ "aria-current": row === chosen ? "true" : null, click: () => onChoose(row) },
    },
    smallStrip(tokenMorae(corpus, row, moraeInList)),
    element(
      "span",
      { class: "row-words" },
      element("span", { class: "ipa" }, placeInWords(table, row)),
      word !== null && element("span", { lang: "ja" }, word),
    ),
    element(
      "span",
      { class: "row-words soft" },
      element(
        "span",
        {},
        sign !== "" && element("span", { class: `sign${sign}`, "aria-hidden": "true" }),
        saidInWords(table, row),
      ),
      element("span", {}, isMarked(row) ? `✎ ${speaker}` : speaker),
    ),
  );
}
