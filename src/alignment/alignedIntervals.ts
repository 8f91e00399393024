import type { UtteranceReading } from "../phonology/readUtterance.ts";
import type { Alignment } from "./alignUtterance.ts";
import type { Interval } from "./interval.ts";
import type { LabelPhone } from "./labelPhone.ts";
import type { MoraPart } from "./moraeToParts.ts";
import { toIntervals } from "./toIntervals.ts";

/** Intervals of an utterance that the project's aligner placed; `parts` are those its graph was made of. */
export function alignedIntervals(
  alignment: Alignment,
  parts: readonly MoraPart[],
  { morae, accentOfMora }: UtteranceReading,
): Interval[] {
  const phones = alignment.phones.map(
    ({ phone, source, startMs, endMs, atFloor, confidence }, i): LabelPhone => {
      const part = parts[source];
      const doubled = part !== undefined && part.morae > 1;
      const long = doubled && morae[part.mora + 1]?.kind === "long";
      return {
        phone,
        long,
        devoiced: false,
        startMs,
        endMs,
        accented: null,
        line: i + 1,
        aligned: { atFloor, confidence, twoVowels: doubled && !long },
      };
    },
  );
  const moraOfPhone = alignment.phones.flatMap(({ phone, source }) =>
    phone === "pause" ? [] : [parts[source]!.mora],
  );
  return toIntervals(phones.filter(lasts), {
    morae,
    moraOfPhone,
    accentOfMora,
    marksLength: false,
    marksDevoicing: false,
  });
}

/** A pause at the recording's edge may be empty; nothing else is. */
function lasts({ phone, startMs, endMs }: LabelPhone): boolean {
  return phone !== "pause" || endMs > startMs;
}
