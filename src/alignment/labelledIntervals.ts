import type { LabelSetCard } from "../datasets/types.ts";
import { labelReadingDiffers } from "../messages/labels.ts";
import { firstDifference, matchPhonesToMorae, type PhoneDifference } from "../phonology/matchPhones.ts";
import { isPause } from "../phonology/phones.ts";
import type { UtteranceReading } from "../phonology/readUtterance.ts";
import type { Interval } from "./interval.ts";
import type { LabelPhone, LabelProblem } from "./labelPhone.ts";
import { readLabels } from "./readLabels.ts";
import { toIntervals } from "./toIntervals.ts";

export interface LabelledIntervals {
  /** Empty when the label file cannot be used. */
  readonly intervals: readonly Interval[];
  /** Lines of the label file that were used, pauses included. */
  readonly phones: number;
  /** Null when there is no reading, or no usable label. */
  readonly readingFits: boolean | null;
  readonly problems: readonly LabelProblem[];
}

/** Reads one label file and joins its phones by the reading. A reading that does not fit is reported and not used. */
export function labelledIntervals(
  text: string,
  labelSet: LabelSetCard,
  reading: UtteranceReading | null,
): LabelledIntervals {
  const { phones, problems } = readLabels(text, labelSet.format);
  if (phones.length === 0) return { intervals: [], phones: 0, readingFits: null, problems };
  const spoken = phones.filter(({ phone }) => !isPause(phone));
  const moraOfPhone = reading === null ? null : matchPhonesToMorae(spoken, reading.morae);
  const fits = moraOfPhone !== null;
  const intervals = toIntervals(phones, {
    morae: fits ? reading!.morae : null,
    moraOfPhone,
    accentOfMora: fits ? reading!.accentOfMora : null,
    marksLength: labelSet.lengthFrom === "label",
    marksDevoicing: labelSet.devoicingBasis !== null,
  });
  if (reading === null || fits)
    return { intervals, phones: phones.length, readingFits: reading === null ? null : true, problems };
  return {
    intervals,
    phones: phones.length,
    readingFits: false,
    problems: [...problems, differs(spoken, reading)],
  };
}

function differs(spoken: readonly LabelPhone[], reading: UtteranceReading): LabelProblem {
  const difference = firstDifference(spoken, reading.morae)!;
  const line = spoken[Math.min(difference.index, spoken.length - 1)]?.line ?? 1;
  return { line, fatal: false, ...labelReadingDiffers(describe(difference, reading)) };
}

function describe({ expected, found, mora }: PhoneDifference, { morae }: UtteranceReading): string {
  const near =
    mora === null
      ? "after its end"
      : `at ${morae
          .slice(Math.max(0, mora - 2), mora + 3)
          .map(({ kana }) => kana)
          .join("")}`;
  return `the label has ${found ?? "nothing more"}, the reading ${expected ?? "nothing more"} ${near}`;
}
