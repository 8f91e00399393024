import { labelAt, type TokenTable } from "../../../estimates/tokenTable.ts";
import type { ExampleSound } from "../verdict.ts";
import type { Candidate } from "./candidate.ts";

const most = 3;

/** The clearest candidates for and against, each of another speaker as long as there are several. */
export function chooseExamples(
  candidates: readonly Candidate[],
  table: TokenTable,
): { readonly clearest: readonly ExampleSound[]; readonly mostContrary: readonly ExampleSound[] } {
  const side = (sign: 1 | -1) =>
    ofDifferentSpeakers(
      candidates
        .filter(({ clarity }) => sign * clarity > 0)
        .sort((a, b) => sign * (b.clarity - a.clarity) || a.row - b.row),
      table,
    ).map((candidate) => soundOf(candidate, table));
  return { clearest: side(1), mostContrary: side(-1) };
}

/** Sorted candidates in rounds: first the best of every speaker, then the second best. */
function ofDifferentSpeakers(sorted: readonly Candidate[], { labels }: TokenTable): Candidate[] {
  const chosen: Candidate[] = [];
  const heard = new Map<number, number>();
  for (let round = 0; chosen.length < most && round < most; round++)
    for (const candidate of sorted) {
      if (chosen.length === most) break;
      const speaker = labels.speaker.codes[candidate.row]!;
      if (chosen.includes(candidate) || (heard.get(speaker) ?? 0) > round) continue;
      heard.set(speaker, (heard.get(speaker) ?? 0) + 1);
      chosen.push(candidate);
    }
  return chosen;
}

function soundOf({ row, shows, value }: Candidate, { labels, numbers }: TokenTable): ExampleSound {
  const text = (name: "speaker" | "utterance" | "phone" | "before" | "after") =>
    labelAt(labels[name], row) ?? "";
  return {
    ...{ speaker: text("speaker"), utterance: text("utterance"), index: numbers.index[row]! },
    ...{
      phone: text("phone"),
      before: text("before"),
      after: text("after"),
      word: labelAt(labels.word, row),
    },
    ...{ startMs: numbers.startMs[row]!, endMs: numbers.endMs[row]! },
    ...{ shows, value },
  };
}
