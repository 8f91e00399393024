import { ipaOf } from "../../../src/findings/soundNames.ts";
import { type Attested, attestedNear } from "../../../src/findings/words/attested.ts";
import { type Chance, chanceOf, leastAlike } from "../../../src/findings/words/devoicingTable.ts";
import { vowelsOf, type WordVowel } from "../../../src/findings/words/environment.ts";
import { heardAs } from "../../../src/findings/words/reasons.ts";
import { kanaOfSound, type Sound } from "../../../src/findings/words/sound.ts";
import { interfaceText } from "../../../src/interface/interfaceText.ts";
import { element } from "../element.ts";
import { evidencePicture, shareTicks } from "../words/evidencePicture.ts";
import type { Hearing } from "../words/hearing.ts";
import type { LookUpCorpus } from "./lookUpCorpus.ts";

/** Words to hear for each vowel. */
const mostNear = 4;

/** One card a vowel: its chance, why, what the accent would change, and the nearest words to hear. */
export function vowelCards(
  sound: Sound,
  accent: number | null,
  corpus: LookUpCorpus,
  hearing: Hearing,
): HTMLElement[] {
  const text = interfaceText().lookUp;
  const vowels = vowelsOf(sound, accent);
  if (vowels.length === 0) return [];
  return [
    element("h2", {}, text.vowel),
    element("p", { class: "alone" }, text.alone),
    element(
      "div",
      { class: "vowel-cards" },
      ...vowels.map((vowel) => vowelCard(sound, vowel, corpus, hearing)),
    ),
  ];
}

function vowelCard(sound: Sound, vowel: WordVowel, corpus: LookUpCorpus, hearing: Hearing): HTMLElement {
  const text = interfaceText().lookUp;
  const kana = kanaOfSound(sound[vowel.mora]!);
  const chance = chanceOf(corpus.devoicing, vowel);
  const near = attestedNear(sound, vowel, corpus.said, mostNear);
  return element(
    "section",
    { class: "vowel-card" },
    element(
      "h3",
      {},
      element("span", { lang: "ja" }, kana),
      " ",
      element(
        "small",
        {},
        `/${vowel.vowel}/ ${text.between(nameOf(heardAs(vowel.before, vowel.vowel)), nameOf(vowel.after))}`,
      ),
    ),
    ...chanceLine(chance),
    element("p", {}, whyOf(vowel).join(" ")),
    ...behind(chance, corpus),
    vowel.devoiceable ? accentLine(kana, vowel, corpus) : null,
    element("h4", {}, text.nearest),
    near.length === 0
      ? element("p", { class: "none" }, text.noNearest)
      : element(
          "div",
          {},
          element("p", { class: "behind" }, text.eachWord),
          element("ul", { class: "near" }, ...near.map((one) => nearItem(one, vowel.mora, hearing))),
        ),
  );
}

const nameOf = (phone: string) => {
  const text = interfaceText().lookUp;
  return phone === "pause" ? text.pause : phone === "cl" ? text.doubled : `[${ipaOf(phone)}]`;
};

function chanceLine({ estimate, low, high }: Chance): HTMLElement[] {
  const text = interfaceText().lookUp;
  if (estimate === null || low === null || high === null) return [];
  const said = `${text.chance(text.percent(estimate))} (${interfaceText().words.range(low, high)})`;
  return [
    element(
      "div",
      { class: "evidence-row" },
      evidencePicture({ at: estimate, low, high }, shareTicks, said),
      element("span", { class: "said", "aria-hidden": "true" }, said),
    ),
  ];
}

function whyOf({ vowel, long, after, devoiceable, accented, neighbour }: WordVowel): string[] {
  const { why, ...text } = interfaceText().lookUp;
  if (long) return [why.long];
  if (vowel !== "i" && vowel !== "u") return [why.low];
  if (!devoiceable) return [why.voice];
  return [
    after === "pause" ? why.pause : why.both,
    ...(accented === true ? [text.accented] : []),
    ...(neighbour ? [text.neighbour] : []),
  ];
}

function behind(
  { tokens, devoiced, speakers, estimate, alike, how }: Chance,
  { devoicing }: LookUpCorpus,
): HTMLElement[] {
  const text = interfaceText().lookUp;
  if (how === "too-few") return [element("p", { class: "behind" }, text.tooFew(alike, leastAlike))];
  if (estimate === null) return [];
  const basis = interfaceText().words.basis[devoicing.basis as "measured" | "annotated"] ?? "";
  const line =
    tokens > 0
      ? text.heard(devoiced, tokens, speakers, basis)
      : text.notHeard(how === "share" ? alike : devoicing.tokens, devoicing.speakers, alike);
  const unlikeHeard =
    tokens === 0
      ? []
      : how === "model"
        ? [text.expectedByModel(devoicing.tokens - tokens)]
        : alike > tokens
          ? [text.expectedByAlike(alike)]
          : [];
  return [element("p", { class: "behind" }, [line, ...unlikeHeard].join(" "))];
}

function accentLine(kana: string, vowel: WordVowel, { devoicing }: LookUpCorpus): HTMLElement {
  const text = interfaceText().lookUp;
  const on = chanceOf(devoicing, { ...vowel, accented: true }).estimate;
  const off = chanceOf(devoicing, { ...vowel, accented: false }).estimate;
  const known = devoicing.accentKnown && on !== null && off !== null;
  return element(
    "p",
    { class: "accent-moves" },
    element("strong", {}, `${text.accentMoves}: `),
    known ? text.withAccent(kana, text.percent(on), text.percent(off)) : text.accentUnknownHere(kana),
  );
}

function nearItem(one: Attested, own: number, hearing: Hearing): HTMLElement {
  const text = interfaceText().lookUp;
  const { surface, kana, mora, likeness, tokens, devoiced, speakers, clips } = one;
  const markOf = (clip: Attested["clips"][number]) =>
    clip.devoiced.includes(mora) ? true : clip.voiced.includes(mora) ? false : null;
  return element(
    "li",
    {},
    element("span", { class: "what", lang: "ja" }, [...new Set([surface, kana])].join(" ")),
    element(
      "span",
      { class: "remarks" },
      `${text.likeness[likeness]}; ${text.attested(devoiced, tokens, speakers)}`,
    ),
    element(
      "span",
      { class: "hearing" },
      ...clips.map((clip, at) =>
        hearing.button(clip, kana, markOf(clip), `near-${own}-${kana}-${mora}-${at}`),
      ),
    ),
  );
}
