import type { OpenCandidate } from "../../../src/findings/words/openListing.ts";
import { interfaceText } from "../../../src/interface/interfaceText.ts";
import type { Choices } from "../choices.ts";
import { element } from "../element.ts";
import { copyText } from "../keep/copyText.ts";
import { saveFile } from "../keep/saveFile.ts";
import { handoutSheet } from "./handoutSheet.ts";
import type { Picks } from "./picks.ts";
import { pickFormats, picksFile } from "./savePicks.ts";
import { nameOf } from "./wordItem.ts";
import type { WordsCorpus } from "./wordsCorpus.ts";

const papers = ["A4", "Letter"] as const;

/** What was picked, with the means to take it along. The sheet for the printer stands in it and shows on paper only. */
export function picksPanel(picks: Picks, choices: Choices, corpus: WordsCorpus): HTMLElement {
  const text = interfaceText().words;
  const body = element("div", { class: "picks-body" });
  const status = element("p", { class: "picks-status", role: "status" });
  const size = document.createElement("style");
  document.head.append(size);
  const draw = () => {
    const { chosen, lost } = picks;
    status.textContent = [
      chosen.length === 0 ? text.noPicks : text.pickCount(chosen.length),
      ...(lost > 0 ? [text.lost(lost)] : []),
    ].join(" ");
    body.replaceChildren(...(chosen.length === 0 ? [] : pickedParts(chosen, picks, corpus, status, size)));
  };
  let drawn: string | null = null;
  const follow = () => {
    if (drawn === choices.get("picks")) return;
    drawn = choices.get("picks");
    const held = (document.activeElement as HTMLElement | null)?.dataset.key;
    draw();
    if (held !== undefined) body.querySelector<HTMLElement>(`[data-key="${CSS.escape(held)}"]`)?.focus();
  };
  choices.onChange(follow);
  follow();
  return element(
    "section",
    { class: "picks", "aria-labelledby": "picks-heading" },
    element("h2", { id: "picks-heading" }, text.picks),
    status,
    body,
  );
}

function pickedParts(
  chosen: readonly OpenCandidate[],
  picks: Picks,
  corpus: WordsCorpus,
  status: HTMLElement,
  size: HTMLStyleElement,
): HTMLElement[] {
  const text = interfaceText().words;
  const button = (label: string, key: string, click: () => void) =>
    element("button", { type: "button", class: "tool", "data-key": key, click }, label);
  const paper = element(
    "select",
    { name: "paper", "aria-label": text.paper, "data-key": "paper", autocomplete: "off" },
    ...papers.map((name) => element("option", { value: name }, name)),
  );
  const print = () => {
    size.textContent = `@page { size: ${paper.value}; margin: 15mm; }`;
    window.print();
  };
  const copy = async () => {
    status.textContent = (await copyText(location.href)) ? text.linkCopied : text.linkNotCopied;
  };
  return [
    element(
      "ol",
      { class: "picked" },
      ...chosen.map((one) =>
        element(
          "li",
          {},
          element("span", { lang: "ja" }, nameOf(one)),
          element(
            "button",
            {
              ...{ type: "button", class: "drop", "data-key": `drop-${one.id}` },
              ...{ "aria-label": text.drop(nameOf(one)), click: () => picks.set(one.id, false) },
            },
            "×",
          ),
        ),
      ),
    ),
    element(
      "div",
      { class: "picks-tools" },
      element("span", {}, text.save),
      ...pickFormats.map((format) =>
        button(format, `save-${format}`, () =>
          saveFile(`drill-words.${format.toLowerCase()}`, picksFile(format, chosen, corpus)),
        ),
      ),
    ),
    element("div", { class: "picks-tools" }, button(text.print, "print", print), paper),
    element(
      "div",
      { class: "picks-tools" },
      button(text.copyLink, "copy", copy),
      button(text.clear, "clear", () => picks.clear()),
    ),
    handoutSheet(chosen, corpus),
  ];
}
