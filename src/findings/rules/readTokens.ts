import type { Dim } from "../../estimates/dimensions.ts";
import { type Source, sourcesOf } from "../../estimates/explain/sources.ts";
import { labelAt, type TokenTable } from "../../estimates/tokenTable.ts";
import type { Reading, ReadOptions } from "./reading.ts";
import type { TokenContrast } from "./tokenContrasts.ts";
import { readColouring } from "./tokens/readColouring.ts";
import { readDevoicedMora } from "./tokens/readDevoicedMora.ts";
import { readFormant } from "./tokens/readFormant.ts";
import { readLengthQuality } from "./tokens/readLengthQuality.ts";
import { readMoraCount } from "./tokens/readMoraCount.ts";
import { readSeparation } from "./tokens/readSeparation.ts";
import type { TokenAnswer } from "./tokens/tokenAnswer.ts";

/**
 * What single vowels and consonants say about a contrast: one reading a corpus, or a corpus and speaker. A corpus that
 * cannot speak about it has a reading without evidence that says why.
 */
export function readTokens(
  table: TokenTable,
  contrast: TokenContrast,
  column: Dim | null,
  { level }: ReadOptions,
): Reading[] {
  return sourcesOf(table).flatMap((source): Reading[] => {
    const parts = column === null ? [{ ...source, speaker: null }] : speakersOf(table, source);
    return parts.flatMap(({ speaker, ...own }): Reading[] => {
      const answer = readSource(table, own, contrast, level);
      const { dataset, labelSet } = source;
      const part = speaker === null ? null : { column: "speaker" as const, value: speaker };
      if (!("unreadable" in answer))
        return [
          { ...{ dataset, labelSet, part }, ...answer, evidence: true, judged: answer.interval, bound: null },
        ];
      return part === null ? [without(source, answer.unreadable)] : [];
    });
  });
}

function readSource(table: TokenTable, source: Source, contrast: TokenContrast, level: number): TokenAnswer {
  switch (contrast.kind) {
    case "formant":
      return readFormant(table, source, contrast, level);
    case "vowel-separation":
      return readSeparation(table, source, contrast, level);
    case "length-quality":
      return readLengthQuality(table, source, level);
    case "mora-count":
      return readMoraCount(table, source, contrast, level);
    case "devoiced-mora":
      return readDevoicedMora(table, source, level);
    case "colouring":
      return readColouring(table, source, contrast, level);
  }
}

function without({ dataset, labelSet }: Source, reason: string): Reading {
  return {
    ...{ dataset, labelSet, part: null, basis: "predicted", evidence: false, reason },
    ...{ estimate: null, interval: null, judged: null, bound: null },
    ...{ tokens: [0], speakers: 0, sides: [], method: "", warnings: [] },
  };
}

function speakersOf({ labels: { speaker } }: TokenTable, { rows, ...corpus }: Source) {
  const found = new Map<number, number[]>();
  for (const row of rows) {
    const own = found.get(speaker.codes[row]!);
    if (own) own.push(row);
    else found.set(speaker.codes[row]!, [row]);
  }
  return [...found.values()].map((own) => ({
    ...corpus,
    rows: Uint32Array.from(own),
    speaker: labelAt(speaker, own[0]!),
  }));
}
