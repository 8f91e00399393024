import { kanaOfSound, type Sound } from "../../../src/findings/words/sound.ts";
import { interfaceText } from "../../../src/interface/interfaceText.ts";
import { type Choice, Choices } from "../choices.ts";
import { one } from "../chosenSet.ts";
import { element } from "../element.ts";
import { Hearing } from "../words/hearing.ts";
import { beatRow } from "./beatRow.ts";
import type { LookUpCorpus } from "./lookUpCorpus.ts";
import { radioRow } from "./radioRow.ts";
import { type ReadWord, readWord } from "./readWord.ts";
import { vowelCards } from "./vowelCards.ts";
import { wordField } from "./wordField.ts";

/** The way of saying that is chosen, where there are several. */
function wayOf(read: ReadWord, as: string): Sound | null {
  if (read.kind !== "ways") return null;
  return (read.ways.find((way) => way.as === as) ?? read.ways[0])!.sound;
}

/** Word, way of saying it and accent, all in the address. */
function lookUpChoices({ isSaid }: LookUpCorpus): Choices {
  const text = interfaceText().lookUp;
  const word: Choice = { name: "word", label: text.label, kind: "text", options: [], initial: "" };
  return new Choices((values) => {
    const read = readWord(values.word ?? "", isSaid);
    const ways = read.kind === "ways" ? read.ways.flatMap(({ as }) => as ?? []) : [];
    const as = one(
      "as",
      text.readings,
      ways.map((value) => ({ value, label: text.readAs[value] })),
      ways[0] ?? "",
    );
    const sound = wayOf(read, values.as ?? "");
    const beats = sound === null ? [] : [...sound].map((unit, mora) => ({ unit, mora }));
    const accents = [
      { value: "unknown", label: text.accentNames.unknown },
      { value: "0", label: text.accentNames.flat },
      ...beats.map(({ unit, mora }) => ({
        value: `${mora + 1}`,
        label: text.afterBeat(mora + 1, kanaOfSound(unit)),
      })),
    ];
    return [word, as, one("accent", text.accent, accents, "unknown")];
  });
}

/** The page that looks a word up: its beats, its vowels, and where to hear the like. */
export function lookUpPage(corpus: LookUpCorpus | null): HTMLElement {
  if (corpus === null) return element("p", {}, interfaceText().words.noWords);
  const choices = lookUpChoices(corpus);
  const hearing = new Hearing(corpus.addressOf);
  const answer = element("div", { class: "looked-up" });
  const follow = () => {
    const start = performance.now();
    const held = (document.activeElement as HTMLElement | null)?.dataset.key;
    answer.replaceChildren(...answerTo(choices, corpus, hearing));
    if (held !== undefined) answer.querySelector<HTMLElement>(`[data-key="${CSS.escape(held)}"]`)?.focus();
    performance.measure("look-up", { start, end: performance.now() });
  };
  choices.onChange(follow);
  follow();
  return element("div", { class: "look-up-page" }, wordField(choices), answer);
}

function answerTo(choices: Choices, corpus: LookUpCorpus, hearing: Hearing): HTMLElement[] {
  const text = interfaceText().lookUp;
  const read = readWord(choices.get("word"), corpus.isSaid);
  if (read.kind === "empty") return [];
  if (read.kind === "kanji")
    return [
      element(
        "div",
        { class: "cannot-read", role: "status" },
        element("p", {}, text.kanji(read.text)),
        element("pre", {}, element("code", {}, text.command(read.text))),
      ),
    ];
  if (read.kind === "odd")
    return [element("p", { class: "cannot-read", role: "status" }, text.notKana(read.odd))];
  const sound = wayOf(read, choices.get("as"))!;
  const chosen = choices.get("accent");
  const accent = chosen === "unknown" ? null : Number(chosen);
  const { basis, predicted } = corpus.devoicing;
  return [
    ...(read.ways.length > 1 ? [radioRow(choices, "as")] : []),
    ...beatRow(sound, accent, corpus),
    radioRow(choices, "accent"),
    ...(basis === null
      ? [element("p", { class: "notice" }, predicted > 0 ? text.onlyPredicted : text.noEvidence)]
      : []),
    ...vowelCards(sound, accent, corpus, hearing),
  ];
}
