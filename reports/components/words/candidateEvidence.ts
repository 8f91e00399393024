import { ipaOf } from "../../../src/findings/soundNames.ts";
import type { Chance, DevoicingTable } from "../../../src/findings/words/devoicingTable.ts";
import type { LengthRatio } from "../../../src/findings/words/lengthEvidence.ts";
import type { OpenCandidate } from "../../../src/findings/words/openListing.ts";
import { phonesOfUnit } from "../../../src/findings/words/sound.ts";
import { interfaceText } from "../../../src/interface/interfaceText.ts";
import { element } from "../element.ts";
import { evidencePicture, ratioPlace, ratioTicks, shareTicks } from "./evidencePicture.ts";

/** The pictures of what a candidate rests on, each with its numbers in words. */
export function evidenceRows(candidate: OpenCandidate, table: DevoicingTable): HTMLElement[] {
  const text = interfaceText().words;
  const rows = [
    ...candidate.chances.map((chance, at) => chanceRow(vowelOf(candidate, at), chance, table)),
    ...candidate.ratios.map((ratio, at) =>
      ratioRow(ratio, candidate.target === "gemination" || at === 1 ? "doubled" : "long"),
    ),
  ];
  return rows.length > 0 ? rows : [element("p", { class: "no-evidence" }, text.noEvidence)];
}

function vowelOf({ words, focus }: OpenCandidate, at: number): string {
  return phonesOfUnit(words[at]!.sound[focus[at]!]!).at(-1) ?? "";
}

function chanceRow(vowel: string, chance: Chance, table: DevoicingTable): HTMLElement {
  const text = interfaceText().words;
  const { estimate, low, high, tokens, devoiced, speakers, alike, how } = chance;
  if (estimate === null || low === null || high === null)
    return element("p", { class: "no-evidence" }, table.predicted > 0 ? text.onlyPredicted : text.noEvidence);
  const said = text.chance(vowel, text.percent(estimate), text.range(low, high));
  const behind =
    tokens > 0
      ? text.heardSame(devoiced, tokens, speakers)
      : text.notHeard(how === "share" ? alike : table.tokens, table.speakers, alike);
  return row(evidencePicture({ at: estimate, low, high }, shareTicks, said), said, behind);
}

function ratioRow(
  { phone, estimate, low, high, tokens, speakers, bound, devoicedShare }: LengthRatio,
  kind: "long" | "doubled",
): HTMLElement {
  const text = interfaceText().words;
  const sound = phone === "all" ? text.anySound[kind] : `[${ipaOf(phone)}]`;
  const show = (ratio: number) => ratio.toFixed(2);
  const said = text.ratio[kind](sound, show(estimate), text.between(show(low), show(high)), bound !== null);
  const mark = { at: ratioPlace(estimate), low: ratioPlace(low), high: ratioPlace(high) };
  return row(
    evidencePicture(mark, ratioTicks, said),
    said,
    text.behindRatio(tokens, speakers, devoicedShare ?? null),
  );
}

function row(picture: SVGElement, said: string, behind: string): HTMLElement {
  return element(
    "div",
    { class: "evidence-row" },
    picture,
    element("span", { class: "said", "aria-hidden": "true" }, said),
    element("span", { class: "behind" }, behind),
  );
}

/** What else is to be known of a candidate, in short parts. */
export function remarksOf({ words, heardSpeakers, accent, confounds }: OpenCandidate): string[] {
  const text = interfaceText().words;
  return [
    text.saidBy(heardSpeakers, words.length > 1),
    ...(accent === "same" ? [text.sameAccent] : []),
    ...confounds.map((name) => text.confounds[name]),
  ];
}
