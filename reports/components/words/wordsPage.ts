import type { OpenCandidate } from "../../../src/findings/words/openListing.ts";
import { interfaceText } from "../../../src/interface/interfaceText.ts";
import { element } from "../element.ts";
import { ChunkedList } from "./chunkedList.ts";
import { filterWords } from "./filterWords.ts";
import { Hearing } from "./hearing.ts";
import { Picks } from "./picks.ts";
import { picksPanel } from "./picksPanel.ts";
import { setPanel } from "./setPanel.ts";
import { wordItem } from "./wordItem.ts";
import { chosenTarget, filterNames, wordsChoices } from "./wordsChoices.ts";
import type { WordsCorpus } from "./wordsCorpus.ts";
import { wordsForm } from "./wordsForm.ts";

/** The page of drill words: filter, set, picks, and the list that follows them. */
export function wordsPage(corpus: WordsCorpus | null): HTMLElement {
  const text = interfaceText().words;
  if (corpus === null || corpus.candidates.length === 0) return element("p", {}, text.noWords);
  const choices = wordsChoices(corpus);
  const picks = new Picks(choices, corpus);
  const hearing = new Hearing(corpus.addressOf);
  const list = new ChunkedList<OpenCandidate>(text.list, (one) => wordItem(one, corpus, picks, hearing));
  const about = element("p", { class: "target-about" });
  const status = element("p", { class: "filter-status", role: "status" });
  let shown: readonly OpenCandidate[] = [];
  let drawn = "";
  const follow = () => {
    const key = filterNames.map((name) => choices.get(name)).join("\u0000");
    if (key !== drawn) {
      drawn = key;
      shown = filterWords(corpus.candidates, choices);
      list.show(shown);
      const target = chosenTarget(choices);
      const listed = corpus.candidates.filter((one) => one.target === target).length;
      about.textContent = text.heading(text.targets[target].about);
      status.textContent =
        listed === 0
          ? text.notFound
          : shown.length === 0
            ? text.none
            : text.shown(shown.length, listed, corpus.found[target] ?? listed);
    }
    for (const box of list.host.querySelectorAll<HTMLInputElement>("input[data-pick]"))
      box.checked = picks.has(box.dataset.pick!);
  };
  choices.onChange(follow);
  follow();
  return element(
    "div",
    { class: "words-page" },
    wordsForm(choices, corpus),
    element(
      "div",
      { class: "words-columns" },
      element(
        "div",
        { class: "words-aside" },
        picksPanel(picks, choices, corpus),
        setPanel(picks, () => shown),
      ),
      element("div", { class: "words-main" }, about, status, list.host),
    ),
    corpus.silent.length === 0
      ? null
      : element(
          "section",
          { class: "silent-words" },
          element("h2", {}, text.silent),
          element("ul", {}, ...corpus.silent.map((reason) => element("li", {}, reason))),
        ),
  );
}
