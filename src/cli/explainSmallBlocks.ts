import type { Colouring } from "../estimates/colouring.ts";
import type { DecisionError } from "../estimates/knownError.ts";
import { amount } from "../messages/amount.ts";
import { type Block, interval, number, word } from "./printBlocks.ts";

/** Consonant before /i/ against before /u/. */
export function blocksOfColouring(colouring: Colouring): Block[] {
  const { consonant, vowel, dataset, labelSet, basis, difference, reason, beforeI, beforeU } = colouring;
  return [
    {
      heading: `/${consonant}/ before ${vowel} /i/ minus before ${vowel} /u/, ${dataset} (${labelSet})`,
      lines: reason === null ? [`${colouring.method}.`] : [`Cannot be estimated: ${reason}`],
      rows:
        difference === null
          ? []
          : [
              {
                "difference Hz": number(difference.estimate, 0),
                interval: interval(difference, 0),
                "by intercepts": number(difference.mixed?.estimate ?? null, 0),
                "its interval": interval(difference.mixed, 0),
                "before i Hz": number(beforeI?.meanHz ?? null, 0),
                "before u Hz": number(beforeU?.meanHz ?? null, 0),
                i: number(beforeI?.tokens ?? null, 0),
                u: number(beforeU?.tokens ?? null, 0),
                speakers: number(colouring.speakers, 0),
                words: number(colouring.words, 0),
              },
            ],
      keys: { consonant, vowel, dataset, labelSet, basis: basis ?? "" },
      warnings: colouring.warnings,
    },
  ];
}

/** The devoicing decision against marks. */
export function blocksOfError(error: DecisionError): Block[] {
  const { dataset, labelSet, vowels, basis, sensitivity, specificity } = error;
  const keys = { dataset, labelSet, judged: vowels, basis };
  const heading = `Devoicing decision against marks, ${vowels} of ${dataset} (${labelSet})`;
  if (error.reason !== null)
    return [
      { heading, lines: [`Cannot be estimated: ${error.reason}`], rows: [], keys, warnings: error.warnings },
    ];
  const shares = [
    { what: "devoiced, called devoiced (sensitivity)", share: sensitivity },
    { what: "voiced, called voiced (specificity)", share: specificity },
  ];
  return [
    {
      heading,
      lines: [`${amount(error.tokens, "vowel")} of ${amount(error.speakers, "speaker")}. ${error.method}.`],
      rows: shares.map(({ what, share }) => ({
        what: word(what),
        share: number(share?.estimate ?? null, 4),
        interval: interval(share, 4),
        right: number(share?.correct ?? null, 0),
        of: number(share?.of ?? null, 0),
      })),
      keys: { ...keys, part: "shares" },
      warnings: error.warnings,
    },
    {
      heading: "  Is the stated probability right?",
      lines: [],
      rows: error.calibration.map((bin) => ({
        from: number(bin.from, 1),
        to: number(bin.to, 1),
        stated: number(bin.stated, 3),
        found: number(bin.found, 3),
        interval: interval(bin, 3),
        vowels: number(bin.tokens, 0),
      })),
      keys: { ...keys, part: "calibration" },
      warnings: [],
    },
    {
      heading: "  With another cut-off",
      lines: [],
      rows: error.cutOffs.map((cut) => ({
        "devoiced from": number(cut.probability, 2),
        sensitivity: number(cut.sensitivity, 4),
        specificity: number(cut.specificity, 4),
      })),
      keys: { ...keys, part: "cut-off" },
      warnings: [],
    },
  ];
}
