import type {
  ComparedUtterance,
  OwnInterval,
  ReferenceLabel,
} from "../../../../src/estimates/agreement/comparedUtterance.ts";
import type { Phone } from "../../../../src/phonology/phones.ts";

/** `k 50` is a phone of 50 ms; an interval may add its length and a mark: `o 160 long`, `t 120 geminate`, `u 40 short d`. */
export function own(...words: readonly string[]): OwnInterval[] {
  let startMs = 0;
  return words.map((word) => {
    const [phone, duration, length, mark] = word.split(" ") as [Phone, string, string?, string?];
    const from = startMs;
    startMs += Number(duration);
    const heard = "aiueo".includes(phone) ? mark === "d" : null;
    return {
      ...{ phone, length: length ?? null, startMs: from, endMs: startMs },
      closureEndMs: length === "geminate" ? (from + startMs) / 2 : null,
      devoicedHeard: heard,
    };
  });
}

/** `k 50` is a label of 50 ms; an upper-case vowel is marked devoiced; `marks` says whether the set marks vowels. */
export function labels(marks: boolean, ...words: readonly string[]): ReferenceLabel[] {
  let startMs = 0;
  return words.map((word) => {
    const [name, duration] = word.split(" ") as [string, string];
    const from = startMs;
    startMs += Number(duration);
    const devoiced = "AIUEO".includes(name);
    const phone = (devoiced ? name.toLowerCase() : name) as Phone;
    return { phone, devoiced: marks ? devoiced : null, startMs: from, endMs: startMs };
  });
}

export function utterance(
  intervals: readonly OwnInterval[],
  reference: readonly ReferenceLabel[],
  id = "one",
): ComparedUtterance {
  return { utterance: id, own: intervals, reference };
}
