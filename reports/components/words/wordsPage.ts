import type { OpenCandidate } from "../../../src/findings/words/openListing.ts";
import type { Target } from "../../../src/findings/words/targets.ts";
import { interfaceText } from "../../../src/interface/interfaceText.ts";
import { element } from "../element.ts";
import { ChunkedList } from "./chunkedList.ts";
import { filterWords } from "./filterWords.ts";
import { Hearing } from "./hearing.ts";
import { MoreButton, saveList } from "./listTools.ts";
import { Picks } from "./picks.ts";
import { picksPanel } from "./picksPanel.ts";
import { setPanel } from "./setPanel.ts";
import { wordItem } from "./wordItem.ts";
import { chosenTarget, filterNames, wordsChoices } from "./wordsChoices.ts";
import type { WordsCorpus } from "./wordsCorpus.ts";
import { wordsForm } from "./wordsForm.ts";

/** Words of a target that are shown before all are asked for: a lesson's worth, some screens long. */
export const shownFirst = 20;

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
  const reading = element("p", { class: "reading" }, text.reading);
  let shown: readonly OpenCandidate[] = [];
  let drawn = "";
  let target: Target | null = null;
  const drawList = () => {
    list.show(more.all ? shown : shown.slice(0, shownFirst));
    more.follow(shown.length, shownFirst);
  };
  const more = new MoreButton((all) => {
    drawList();
    const next = all ? shown[shownFirst] : undefined;
    const place =
      next === undefined
        ? null
        : list.host.querySelector<HTMLElement>(`[data-pick="${CSS.escape(next.id)}"]`);
    if (place !== null) place.focus();
    else about.scrollIntoView({ block: "start" });
  });
  const follow = () => {
    const key = filterNames.map((name) => choices.get(name)).join("\u0000");
    if (key !== drawn) {
      drawn = key;
      shown = filterWords(corpus.candidates, choices);
      if (target !== chosenTarget(choices)) more.reset();
      target = chosenTarget(choices);
      drawList();
      tools.hidden = shown.length === 0;
      reading.hidden = !shown.some(({ chances }) => chances.length > 0);
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
  const tools = saveList(corpus, () => shown);
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
      element("div", { class: "words-main" }, about, status, reading, list.host, more.host, tools),
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
