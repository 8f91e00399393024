import type { Source } from "../../../estimates/explain/sources.ts";
import { largestOf } from "../../../estimates/extremeOf.ts";
import type { TokenTable } from "../../../estimates/tokenTable.ts";
import { type LengthShift, lengthShiftsOf } from "../../../estimates/vowelSpaceGroups.ts";
import { vowelsBySpeaker } from "../../../estimates/vowelSpaceSpeakers.ts";
import {
  largestOfMany,
  noFormantsMeasured,
  noLongAndShort,
  valueUnknown,
  vowelsLeftOut,
} from "../../../messages/rules.ts";
import type { Interval } from "../../../statistics/interval.ts";
import { speakerDoubts } from "../readRates.ts";
import type { TokenAnswer } from "./tokenAnswer.ts";

/** Long vowels of a kind below which the kind is left out: it could only widen the interval. */
const leastLong = 20;

/** How far the long vowels that differ most in F1 or F2 lie from short ones of the same speaker, in semitones. */
export function readLengthQuality(table: TokenTable, { rows }: Source, level: number): TokenAnswer {
  const said = vowelsBySpeaker(table, rows);
  if (said.every(({ vowels }) => vowels.size === 0)) return { unreadable: noFormantsMeasured() };
  const shiftsAt = remembered((asked) => lengthShiftsOf(said, asked));
  const all = shiftsAt(level);
  const kept = all.filter(({ longTokens }) => longTokens >= leastLong).map(({ vowel }) => vowel);
  if (kept.length === 0) return thin(said, all, noLongAndShort(leastLong));
  const members = kept.flatMap((vowel) =>
    (["f1Semitones", "f2Semitones"] as const).map((formant) => {
      const shift = (asked: number) => shiftsAt(asked).find((one) => one.vowel === vowel)![formant];
      return {
        name: `the ${formant === "f1Semitones" ? "F1" : "F2"} of /${vowel}/`,
        estimate: Math.abs(shift(level).estimate),
        at: (asked: number): Interval => magnitude(shift(asked)),
      };
    }),
  );
  const found = largestOf(members, level)!;
  const own = all.filter(({ vowel }) => kept.includes(vowel));
  const count = (of: "longTokens" | "shortTokens") => own.reduce((total, shift) => total + shift[of], 0);
  const speakers = Math.max(...own.map((shift) => shift.speakers));
  const left = all.map(({ vowel }) => vowel).filter((vowel) => !kept.includes(vowel));
  return {
    ...{ basis: "measured", estimate: found.estimate, interval: { low: found.low, high: found.high } },
    ...{ tokens: [count("longTokens"), count("shortTokens")], speakers, sides: [], reason: null },
    detail: members[found.place]!.name,
    method: largestOfMany(members.length),
    warnings: [...speakerDoubts(speakers), ...(left.length > 0 ? [vowelsLeftOut(left, leastLong)] : [])],
  };
}

/** Too few, or none at all where labels do not tell long from short. */
function thin(
  said: ReturnType<typeof vowelsBySpeaker>,
  all: readonly LengthShift[],
  reason: string,
): TokenAnswer {
  const kinds = new Set(said.flatMap(({ vowels }) => [...vowels.keys()].map((key) => key.split(" ")[1])));
  if (!kinds.has("long")) return { unreadable: valueUnknown("length") };
  const count = (of: "longTokens" | "shortTokens") => all.reduce((total, shift) => total + shift[of], 0);
  return {
    ...{ basis: "measured", estimate: null, interval: null, detail: null, reason, method: "" },
    ...{ tokens: [count("longTokens"), count("shortTokens")], sides: [], warnings: [] },
    speakers: Math.max(0, ...all.map((shift) => shift.speakers)),
  };
}

/** Interval of a size from that of a signed value; without bounds nothing is known. */
function magnitude({ low, high }: { low: number | null; high: number | null }): Interval {
  if (low === null || high === null) return { low: 0, high: Number.POSITIVE_INFINITY };
  const [a, b] = [Math.abs(low), Math.abs(high)];
  return { low: low < 0 && high > 0 ? 0 : Math.min(a, b), high: Math.max(a, b) };
}

function remembered<T>(make: (level: number) => T): (level: number) => T {
  const known = new Map<number, T>();
  return (level) => {
    const found = known.get(level) ?? make(level);
    known.set(level, found);
    return found;
  };
}
