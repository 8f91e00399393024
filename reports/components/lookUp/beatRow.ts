import { type Chance, chanceOf } from "../../../src/findings/words/devoicingTable.ts";
import { vowelsOf } from "../../../src/findings/words/environment.ts";
import {
  geminateUnit,
  kanaOfSound,
  longUnit,
  nasalUnit,
  type Sound,
} from "../../../src/findings/words/sound.ts";
import { transcribe } from "../../../src/findings/words/transcribe.ts";
import { interfaceText } from "../../../src/interface/interfaceText.ts";
import { element } from "../element.ts";
import type { LookUpCorpus } from "./lookUpCorpus.ts";

/** Likely one or the other only where the whole interval says so. */
function kindOfChance({ low, high }: Chance): "whispered" | "voiced" | "open" {
  return low! > 0.5 ? "whispered" : high! < 0.5 ? "voiced" : "open";
}

/** The word as a row of beats, each filled as high as its vowel is likely whispered; above it romanisation and IPA. */
export function beatRow(sound: Sound, accent: number | null, { devoicing }: LookUpCorpus): HTMLElement[] {
  const text = interfaceText().lookUp;
  const vowels = new Map(vowelsOf(sound, accent).map((vowel) => [vowel.mora, vowel]));
  const chances = new Map([...vowels].map(([mora, vowel]) => [mora, chanceOf(devoicing, vowel)]));
  const whispered = [...chances].filter(([, { estimate }]) => (estimate ?? 0) > 0.5).map(([mora]) => mora);
  const { kana, romaji, ipa } = transcribe(sound, new Set(whispered));
  const beats = [...sound].map((unit, mora) => {
    const chance = chances.get(mora);
    const estimate = chance?.estimate ?? null;
    const kind = estimate === null ? null : kindOfChance(chance!);
    const shown =
      chance === undefined
        ? [element("span", { class: "kind" }, text.kinds[kindOf(unit)])]
        : estimate === null
          ? [element("span", { class: "kind" }, text.unknown)]
          : [
              element("strong", {}, text.percent(estimate)),
              element("span", {}, interfaceText().words.range(chance.low!, chance.high!)),
              element("span", { class: "kind" }, text[kind!]),
            ];
    const beat = element(
      "li",
      { class: `beat ${kind ?? "plain"}${accent === mora + 1 ? " falls" : ""}` },
      element("span", { class: "box", lang: "ja" }, element("span", {}, kanaOfSound(unit))),
      ...shown,
    );
    beat.style.setProperty("--chance", String(estimate ?? 0));
    return beat;
  });
  return [
    element(
      "p",
      { class: "said-so" },
      element("span", { lang: "ja", class: "kana" }, kana),
      " ",
      romaji,
      " ",
      element("span", { class: "ipa" }, `[${ipa}]`),
      ` · ${text.beats(sound.length)}`,
    ),
    element("ol", { class: "beats", "aria-label": text.row(kana, sound.length) }, ...beats),
  ];
}

function kindOf(unit: string): "long" | "geminate" | "nasal" {
  return unit === longUnit
    ? "long"
    : unit === geminateUnit
      ? "geminate"
      : unit === nasalUnit
        ? "nasal"
        : "long";
}
