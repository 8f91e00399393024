import type { OpenCandidate, OpenWord } from "../../../src/findings/words/openListing.ts";
import { type Target, targets } from "../../../src/findings/words/targets.ts";
import { interfaceText } from "../../../src/interface/interfaceText.ts";
import { element } from "../element.ts";
import { evidenceRows, remarksOf } from "./candidateEvidence.ts";
import type { WordsCorpus } from "./wordsCorpus.ts";

/** The picks as a sheet for the printer: on paper it is all there is of the page. */
export function handoutSheet(picked: readonly OpenCandidate[], corpus: WordsCorpus): HTMLElement {
  const text = interfaceText().words;
  const { notices, citations, software } = corpus;
  return element(
    "div",
    { class: "handout" },
    element("h1", {}, text.handout),
    ...notices.map((notice) => element("p", { class: "notice" }, notice)),
    ...targets.flatMap((target) => {
      const own = picked.filter((one) => one.target === target);
      return own.length === 0 ? [] : [setTable(target, own, corpus)];
    }),
    element("p", {}, text.sheet),
    element("p", {}, text.care),
    element("h2", {}, text.sources),
    ...[...citations, software].map((line) => element("p", { class: "source" }, line)),
  );
}

function setTable(target: Target, own: readonly OpenCandidate[], corpus: WordsCorpus): HTMLElement {
  const text = interfaceText().words;
  const { word, romaji, ipa, accent, meaning } = text.columns;
  const glossed = own.some(({ words }) => words.some(({ gloss }) => gloss !== null));
  const names = ["", word, romaji, ipa, accent, ...(glossed ? [meaning] : [])];
  return element(
    "section",
    {},
    element("h2", {}, text.targets[target].about),
    element(
      "table",
      {},
      element("thead", {}, element("tr", {}, ...names.map((name) => element("th", { scope: "col" }, name)))),
      ...own.map((one, at) =>
        element(
          "tbody",
          {},
          ...one.words.map((spoken, i) => wordRow(spoken, i === 0 ? `${at + 1}` : "", glossed)),
          element(
            "tr",
            { class: "evidence" },
            element("td", {}),
            element("td", { colspan: names.length - 1 }, ...evidenceLine(one, corpus)),
          ),
        ),
      ),
    ),
  );
}

function wordRow({ kana, surface, romaji, ipa, accents, gloss }: OpenWord, number: string, glossed: boolean) {
  const text = interfaceText().words;
  return element(
    "tr",
    {},
    element("td", {}, number),
    element(
      "td",
      { lang: "ja" },
      element("span", { class: "kana" }, kana),
      surface === kana ? null : ` ${surface}`,
    ),
    element("td", {}, romaji),
    element("td", { class: "ipa" }, `[${ipa}]`),
    element("td", {}, accents === null ? text.accentUnknown : accents.join(", ")),
    glossed ? element("td", {}, gloss ?? "") : null,
  );
}

function evidenceLine(one: OpenCandidate, { devoicing }: WordsCorpus): string[] {
  const rows = evidenceRows(one, devoicing).map((row) =>
    [...row.querySelectorAll(".said, .behind")].map((part) => part.textContent).join("; "),
  );
  return [[...rows.filter((line) => line !== ""), ...remarksOf(one)].join(" · ")];
}
