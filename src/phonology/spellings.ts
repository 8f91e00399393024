import type { Mora } from "./kana.ts";
import type { Phone, Vowel } from "./phones.ts";

/** Consonants that label sets without the rarer phones write instead. Seen in the JVS and ITA label sets. */
const plainer: Readonly<Partial<Record<Phone, readonly Phone[]>>> = {
  v: ["b"],
  vy: ["by"],
  ty: ["ch"],
  tsy: ["ch", "ts"],
};

/** The consonant written as a vowel of its own, as クィ in three phones k u i. */
const unfolded: Readonly<Partial<Record<Phone, readonly Phone[]>>> = {
  kw: ["k", "u"],
  gw: ["g", "u"],
  w: ["u"],
};

const byKana: Readonly<Record<string, readonly (readonly Phone[])[]>> = {
  ヂ: [
    ["d", "i"],
    ["dy", "i"],
  ],
  ヂャ: [["dy", "a"]],
  ヂュ: [["dy", "u"]],
  ヂョ: [["dy", "o"]],
  ヅ: [["d", "u"]],
  ティ: [["ty", "i"]],
  ディ: [["dy", "i"]],
  イェ: [["i", "e"]],
  ヲ: [["w", "o"]],
  // The particles, where a transcript keeps their letter and the labels follow the speech.
  ハ: [["w", "a"]],
  ヘ: [["e"]],
};

/** ー after エ or オ, written by its usual kana イ or ウ. */
const longVowel: Readonly<Partial<Record<Vowel, Phone>>> = { e: "i", o: "u" };

function others({ kana, phones, kind, vowel }: Mora): readonly (readonly Phone[])[] {
  if (kind === "long") {
    const written = vowel === null ? undefined : longVowel[vowel];
    return written ? [[written]] : [];
  }
  const [consonant, second] = phones;
  if (consonant === undefined || second === undefined) return byKana[kana] ?? [];
  const split = kana.length > 1 ? unfolded[consonant] : undefined;
  return [
    ...(byKana[kana] ?? []),
    ...(plainer[consonant] ?? []).map((plain): Phone[] => [plain, second]),
    ...(split ? [[...split, second]] : []),
  ];
}

const cache = new Map<string, readonly (readonly Phone[])[]>();

/** Every phone string by which label sets write a mora, the project's own first. */
export function spellingsOf(mora: Mora): readonly (readonly Phone[])[] {
  const key = `${mora.kana}${mora.phones.join(" ")}`;
  const known = cache.get(key);
  if (known) return known;
  const spellings = [mora.phones, ...others(mora)];
  cache.set(key, spellings);
  return spellings;
}
