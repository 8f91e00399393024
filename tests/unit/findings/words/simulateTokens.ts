import { type TokenTable, tokenColumnsNeeded } from "../../../../src/findings/words/corpusTable.ts";
import { seededRandom } from "../../../../src/statistics/seededRandom.ts";

export interface SimulatedRow {
  readonly speaker: string;
  readonly phone: string;
  readonly before: string;
  readonly after: string;
  readonly accented: boolean | null;
  readonly neighbour: boolean;
  readonly devoiced: boolean | null;
  readonly length?: string;
  readonly basis?: string | null;
  readonly word?: string | null;
}

/** A table of vowels of a corpus called `sim`, one utterance a speaker. */
export function tokenTable(rows: readonly SimulatedRow[]): TokenTable {
  const full = rows.map((row, index) => ({
    dataset: "sim",
    labelSet: "labels",
    speaker: row.speaker,
    utterance: `${row.speaker}-1`,
    index,
    phone: row.phone,
    kind: "vowel",
    length: row.length ?? "short",
    before: row.before,
    after: row.after,
    accented: row.accented,
    devoiceableNeighbour: row.neighbour,
    word: row.word === undefined ? `w${index % 500}` : row.word,
    startMs: 100 * index,
    endMs: 100 * index + 60,
    devoiced: row.devoiced,
    devoicedBasis: row.devoiced === null ? null : (row.basis ?? "measured"),
  }));
  return Object.fromEntries(
    tokenColumnsNeeded.map((name) => [name, full.map((row) => row[name])]),
  ) as unknown as TokenTable;
}

const befores = ["k", "t", "ch", "ts", "s", "sh", "h", "f"];
const afters = ["k", "t", "ch", "s", "sh", "h", "cl", "pause"];

/** True log odds: C1 and C2 act together where both are fricatives; an accent and a neighbour hold devoicing back. */
function logOdds(
  vowel: string,
  before: string,
  after: string,
  accented: boolean,
  neighbour: boolean,
): number {
  const fricative = (phone: string) => "s sh h f".split(" ").includes(phone);
  let odds = vowel === "i" ? 1.4 : 1.0;
  if (fricative(before)) odds += 0.9;
  if (after === "cl") odds -= 0.8;
  if (after === "pause") odds -= 1.2;
  if (fricative(after)) odds -= 0.9;
  if (fricative(before) && fricative(after)) odds -= 1.8;
  if (accented) odds -= 1.1;
  if (neighbour) odds -= 0.7;
  return odds;
}

/** Devoiceable vowels of speakers who differ by a standard deviation of `spread` in log odds, with known truth. */
export function simulateSpeakers(
  seed: number,
  speakers: number,
  each: number,
  spread: number,
): SimulatedRow[] {
  const random = seededRandom(seed);
  const pick = <T>(items: readonly T[]) => items[random.below(items.length)]!;
  return Array.from({ length: speakers }, (_, s) => {
    const own = spread * random.normal();
    return Array.from({ length: each }, (): SimulatedRow => {
      const [phone, before, after] = [pick(["i", "u"]), pick(befores), pick(afters)];
      const [accented, neighbour] = [random.uniform() < 0.25, random.uniform() < 0.2];
      const chance = 1 / (1 + Math.exp(-(logOdds(phone, before, after, accented, neighbour) + own)));
      return {
        speaker: `s${s}`,
        phone,
        before,
        after,
        accented,
        neighbour,
        devoiced: random.uniform() < chance,
      };
    });
  }).flat();
}
