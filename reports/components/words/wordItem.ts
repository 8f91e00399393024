import type { OpenCandidate, OpenWord } from "../../../src/findings/words/openListing.ts";
import { interfaceText } from "../../../src/interface/interfaceText.ts";
import { element } from "../element.ts";
import { evidenceRows, remarksOf } from "./candidateEvidence.ts";
import type { Hearing } from "./hearing.ts";
import type { Picks } from "./picks.ts";
import type { WordsCorpus } from "./wordsCorpus.ts";
import { wordBlock } from "./wordText.ts";

export const nameOf = ({ words }: OpenCandidate) => words.map(({ kana }) => kana).join("・");

/** One candidate: what it is, what it rests on, where to hear it, and the box to pick it. */
export function wordItem(
  candidate: OpenCandidate,
  { devoicing }: WordsCorpus,
  picks: Picks,
  hearing: Hearing,
): HTMLElement {
  const text = interfaceText().words;
  const { words, focus, target, neighbour, id } = candidate;
  // What is whispered matters where a vowel is in question, not where a length is.
  const about = candidate.chances.length > 0;
  const heard = ({ kana, clips }: OpenWord) =>
    clips.map((clip, at) =>
      hearing.button(clip, kana, about ? clip.devoiced : null, `hear-${id}-${kana}-${at}`),
    );
  return element(
    "div",
    { class: "word-item", "data-id": id },
    pickBox(candidate, picks),
    element(
      "div",
      { class: "words" },
      ...words.map((word, at) => wordBlock(word, focus[at] ?? null, target, heard(word))),
      neighbour === null
        ? null
        : element(
            "p",
            { class: "neighbour" },
            `${text.voicedIn} `,
            element("span", { lang: "ja" }, [...new Set([neighbour.kana, neighbour.surface])].join(" ")),
            " ",
            element("span", { class: "ipa" }, `[${neighbour.ipa}]`),
          ),
    ),
    element(
      "div",
      { class: "why" },
      ...evidenceRows(candidate, devoicing),
      element("p", { class: "remarks" }, remarksOf(candidate).join(" · ")),
    ),
  );
}

function pickBox(candidate: OpenCandidate, picks: Picks): HTMLElement {
  const text = interfaceText().words;
  const { id } = candidate;
  const change = (event: Event) => picks.set(id, (event.target as HTMLInputElement).checked);
  return element(
    "label",
    { class: "pick" },
    element("input", {
      type: "checkbox",
      checked: picks.has(id),
      "data-pick": id,
      "aria-label": text.pick(nameOf(candidate)),
      autocomplete: "off",
      change,
    }),
    element("span", { class: "off", "aria-hidden": "true" }, text.pickShort),
    element("span", { class: "on", "aria-hidden": "true" }, text.picked),
  );
}
