import type { Basis } from "../../../src/basis.ts";
import { ipaOf, soundName } from "../../../src/findings/soundNames.ts";
import { interfaceText } from "../../../src/interface/interfaceText.ts";
import { flagAt, type ListenTable, labelAt, numberAt } from "../../../src/publish/readListen.ts";
import type { CorpusSet } from "../corpus.ts";
import { devoicedAt } from "./tokenMorae.ts";

function neighbour(phone: string | null): string {
  const words = interfaceText().listen;
  if (phone === "cl") return words.doubled;
  return phone === null || phone === "pause" ? words.pause : ipaOf(phone);
}

/** `doubled k between a and i`. */
export function placeInWords(table: ListenTable, row: number): string {
  const words = interfaceText().listen;
  const length = labelAt(table, "length", row) as keyof typeof words.kinds | null;
  const kind = length !== null && length in words.kinds ? `${words.kinds[length]} ` : "";
  const sound = `${kind}${soundName(labelAt(table, "phone", row)!)}`;
  return words.between(
    sound,
    neighbour(labelAt(table, "before", row)),
    neighbour(labelAt(table, "after", row)),
  );
}

/** `devoiced, 97 %`; of a consonant its duration. */
export function saidInWords(table: ListenTable, row: number): string {
  const words = interfaceText().listen;
  if (labelAt(table, "kind", row) === "consonant") return durationInWords(table, row);
  const devoiced = devoicedAt(table, row);
  if (devoiced === null) return words.unknown;
  const measured = labelAt(table, "devoicedBasis", row) === "measured";
  return words.said(devoiced, measured ? numberAt(table, "devoicedProbability", row) : null);
}

export function durationInWords(table: ListenTable, row: number): string {
  return interfaceText().listen.duration(
    table.numbers.durationMs[row]!,
    flagAt(table, "atFloor", row) === true,
  );
}

/** Who or what placed the edges, and how surely the sound itself shows them. */
export function edgesInWords(table: ListenTable, row: number, { card, labels }: CorpusSet): string {
  const { edges, soundAlone } = interfaceText().listen;
  const error = numberAt(table, "durationErrorMs", row);
  const placed = edges(labels.timeBasis, card.synthetic);
  return error === null ? placed : `${placed}; ${soundAlone(error)}`;
}

/** Who set the marks of a label set: what a person said, what was made so, or either, where readers corrected what was made. */
export type Made = "byPerson" | "byMaker" | "byEither";

export function madeBy({ card, labels }: CorpusSet, corrected: boolean): Made {
  if (!card.synthetic || labels.devoicingBasis !== "annotated") return "byPerson";
  return corrected ? "byEither" : "byMaker";
}

/** What was decided with how near the boundary it was, as a sentence of the card. */
export function decisionInWords(table: ListenTable, row: number, made: Made): string {
  const words = interfaceText().listen;
  const said = saidInWords(table, row);
  if (labelAt(table, "kind", row) === "consonant") return said;
  const basis = labelAt(table, "devoicedBasis", row) as Basis | null;
  if (basis === "predicted") return `${said}, ${words.byRule}`;
  if (devoicedAt(table, row) === null) return said;
  const probability = numberAt(table, "devoicedProbability", row);
  if (basis === "annotated") return `${said}, ${words[made]}`;
  return probability === null ? said : `${said}, ${words.margin(probability)}`;
}
