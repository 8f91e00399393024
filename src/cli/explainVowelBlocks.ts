import { enoughVowels } from "../estimates/rateSafety.ts";
import type { VowelGroup, VowelSpace } from "../estimates/vowelSpace.ts";
import { thinRows } from "../messages/explain.ts";
import type { FormantTable } from "../storage/loadReferenceTables.ts";
import { type Block, interval, number, word } from "./printBlocks.ts";

/** Vowel space of one dataset and label set, with published tables after it. */
export function blocksOfVowelSpace(space: VowelSpace, published: readonly FormantTable[]): Block[] {
  const keys = { dataset: space.dataset, labelSet: space.labelSet, basis: space.basis };
  const head: Block = {
    heading: `Vowel space of ${space.dataset} (${space.labelSet})`,
    lines: space.reason === null ? [`${space.method}.`] : [`Cannot be estimated: ${space.reason}`],
    rows: [],
    keys,
    warnings: space.warnings,
  };
  if (space.reason !== null) return [head];
  return [
    head,
    ...space.groups.flatMap((group) => blocksOfGroup(group, keys)),
    ...published.map((table) => blockOfTable(table)),
  ];
}

function blocksOfGroup(group: VowelGroup, keys: Block["keys"]): Block[] {
  const own = { ...keys, group: group.group };
  return [
    {
      heading: `  ${group.group}, ${group.speakers} speaker${group.speakers === 1 ? "" : "s"}`,
      lines: [],
      rows: group.vowels.map((vowel) => ({
        vowel: word(vowel.vowel),
        length: word(vowel.length),
        "F1 Hz": number(vowel.f1Hz.estimate, 0),
        "F1 interval": interval(vowel.f1Hz, 0),
        "F1 spread": number(vowel.f1Hz.withinSpeakers, 0),
        "F2 Hz": number(vowel.f2Hz.estimate, 0),
        "F2 interval": interval(vowel.f2Hz, 0),
        "F2 spread": number(vowel.f2Hz.withinSpeakers, 0),
        "F1 z": number(vowel.f1Z?.estimate ?? null, 2),
        "F2 z": number(vowel.f2Z?.estimate ?? null, 2),
        vowels: number(vowel.tokens, 0),
        speakers: number(vowel.speakers, 0),
      })),
      keys: own,
      warnings: [...group.warnings, ...thin(group.vowels.map(({ tokens }) => tokens))],
    },
    {
      heading: `  ${group.group}, long minus short`,
      lines:
        group.longAgainstShort.length === 0 ? ["No speaker has both long and short vowels of a kind."] : [],
      rows: group.longAgainstShort.map((shift) => ({
        vowel: word(shift.vowel),
        "F1 semitones": number(shift.f1Semitones.estimate, 2),
        "F1 interval": interval(shift.f1Semitones, 2),
        "F2 semitones": number(shift.f2Semitones.estimate, 2),
        "F2 interval": interval(shift.f2Semitones, 2),
        long: number(shift.longTokens, 0),
        short: number(shift.shortTokens, 0),
        speakers: number(shift.speakers, 0),
      })),
      keys: { ...own, part: "long minus short" },
      warnings: thin(
        group.longAgainstShort.flatMap(({ longTokens, shortTokens }) => [longTokens, shortTokens]),
      ),
    },
  ];
}

function thin(tokens: readonly number[]): string[] {
  return tokens.some((count) => count < enoughVowels) ? [thinRows(enoughVowels)] : [];
}

function blockOfTable({ id, language, speakers, citation, url, vowels }: FormantTable): Block {
  return {
    heading: `  Published: ${language}, ${speakers}`,
    lines: [citation, ...(url === null ? [] : [url])],
    rows: vowels.map((vowel) => ({
      vowel: word(vowel.vowel),
      "F1 Hz": number(vowel.f1Hz, 0),
      "F2 Hz": number(vowel.f2Hz, 0),
      "F3 Hz": number(vowel.f3Hz, 0),
      seen: word(vowel.mark),
      note: { text: vowel.note ?? "", value: vowel.note ?? "" },
    })),
    keys: { published: id, group: speakers },
    warnings: [],
  };
}
