import type { Mora } from "../phonology/kana.ts";
import type { Alignment } from "./alignUtterance.ts";
import type { Interval } from "./interval.ts";
import type { LabelPhone } from "./labelPhone.ts";
import type { SpokenReading } from "./readingParts.ts";
import { toIntervals } from "./toIntervals.ts";

/** Intervals of an utterance that the project's aligner placed, for the reading that it found to be spoken. */
export function alignedIntervals(
  alignment: Alignment,
  { morae, partAt }: SpokenReading,
  accentOfMora: readonly (boolean | null)[] | null,
): Interval[] {
  const phones = alignment.phones.map(
    ({ phone, variant, source, startMs, endMs, atFloor, confidence }, i): LabelPhone => {
      const doubled = phone !== "pause" && partAt(source).morae > 1;
      const long = doubled && isLengthened(morae, partAt(source).mora);
      return {
        phone,
        long,
        devoiced: false,
        startMs,
        endMs,
        accented: null,
        line: i + 1,
        aligned: { atFloor, confidence, devoiced: variant === "devoiced", twoVowels: doubled && !long },
      };
    },
  );
  const moraOfPhone = alignment.phones.flatMap(({ phone, source }) =>
    phone === "pause" ? [] : [partAt(source).mora],
  );
  return toIntervals(phones.filter(lasts), {
    morae,
    moraOfPhone,
    accentOfMora,
    marksLength: false,
    marksDevoicing: false,
  });
}

function isLengthened(morae: readonly Mora[], mora: number): boolean {
  return morae[mora + 1]?.kind === "long";
}

/** A pause at the recording's edge may be empty; nothing else is. */
function lasts({ phone, startMs, endMs }: LabelPhone): boolean {
  return phone !== "pause" || endMs > startMs;
}
