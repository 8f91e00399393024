import { crossedRateOfCounts } from "../../estimates/crossedRate.ts";
import type { DevoicingCell, DevoicingEvidence } from "./devoicingEvidence.ts";
import { isDevoiceableEnvironment } from "./devoicingEvidence.ts";
import { type DevoicingModel, devoicingModel, type Levels, type Predicted } from "./devoicingModel.ts";
import { afterGroups, beforeGroups, environmentOf, otherPlaces, type Surroundings } from "./environment.ts";
import { modelStrength, shrinkToModel } from "./shrinkToModel.ts";

/** How likely vowels of one environment are devoiced in this corpus. All null where nothing can be said. */
export interface Chance {
  readonly estimate: number | null;
  readonly low: number | null;
  readonly high: number | null;
  /** Vowels of exactly this environment that were heard; 0: the model speaks from its parts. */
  readonly tokens: number;
  readonly devoiced: number;
  readonly speakers: number;
  /** Vowels heard that are alike: of this quality, and like it before a pause or between consonants; without a model after the same kind of consonant too. */
  readonly alike: number;
  /** `model`: regression and what was heard; `share`: of those alike; `too-few`: fewer alike than `leastAlike`; `unknown`: no evidence. */
  readonly how: "model" | "share" | "too-few" | "unknown";
}

/** Below this many vowels alike nothing is said: what was heard of /u/, or before a pause, does not speak for the rest (our choice, no published source). */
export const leastAlike = 5;

/** The chance of every environment, small enough to travel with a page. */
export interface DevoicingTable {
  readonly dataset: string | null;
  readonly labelSet: string | null;
  readonly basis: string | null;
  readonly level: number;
  readonly speakers: number;
  /** Devoiceable vowels behind it. */
  readonly tokens: number;
  readonly interaction: boolean;
  /** False when the corpus does not say where accents lie: the accent then changes nothing. */
  readonly accentKnown: boolean;
  /** Marks predicted by rule that were left out; with `basis` null they were all there was. */
  readonly predicted: number;
  readonly chances: Readonly<Record<string, Chance>>;
}

/** Nothing is known. */
export const unknownChance: Chance = {
  ...{ estimate: null, low: null, high: null },
  ...{ tokens: 0, devoiced: 0, speakers: 0, alike: 0, how: "unknown" },
};

/**
 * Chances of devoicing from the evidence of one corpus: the regression's, drawn towards what was heard in the very environment, where devoiceable vowels are enough to fit it
 * and each consonant kind of the environment was heard `leastAlike` times, else the share of the vowels alike (same quality, and like it before a
 * pause or between consonants, and after the same kind of consonant); the share of their class for other vowels. Where fewer than `leastAlike` were heard, and without
 * evidence, the chance is unknown. Intervals of shares allow tokens of one speaker, and of one word, to be alike.
 */
export function devoicingTable(evidence: DevoicingEvidence | null, level = 0.95): DevoicingTable {
  const cells = evidence?.cells ?? [];
  const devoiceable = cells.filter(({ environment }) => isDevoiceableEnvironment(environment));
  const model = devoicingModel(devoiceable, level);
  const kinds = sharesBy(devoiceable, kindOf, level);
  const narrowKinds = sharesBy(devoiceable, narrowKindOf, level);
  const isKnown = knownConsonants(devoiceable);
  const byEnvironment = groupBy(cells, ({ environment }) => environment);
  const accents = accentShares(devoiceable);
  const strength = model === null ? 0 : strengthOf(model, devoiceable);
  const chances: Record<string, Chance> = {};
  for (const levels of allLevels()) {
    const name = nameOf(levels);
    const own = shareOf(cellsOf(byEnvironment, levels, accents), level);
    const predicted = model !== null && isKnown(levels) ? predictAnyAccent(model, levels) : null;
    const kind =
      (predicted === null ? narrowKinds.get(narrowKindOf(levels)) : kinds.get(kindOf(levels))) ??
      unknownChance;
    const { tokens, devoiced, speakers } = own;
    const counts = { tokens, devoiced, speakers, alike: kind.tokens };
    if (kind.tokens < leastAlike) {
      chances[name] = { ...unknownChance, ...counts, how: cells.length > 0 ? "too-few" : "unknown" };
      continue;
    }
    const mixed = mixAccents(chances, levels, accents);
    if (mixed !== null) chances[name] = { ...mixed, ...counts, how: "model" };
    else if (predicted !== null)
      chances[name] = { ...towardsHeard(predicted, own, strength), ...counts, how: "model" };
    else chances[name] = { ...kind, ...counts };
  }
  for (const place of otherPlaces) chances[place] = shareOf(byEnvironment.get(place) ?? [], level);
  return {
    dataset: evidence?.dataset ?? null,
    labelSet: evidence?.labelSet ?? null,
    basis: evidence?.basis ?? null,
    level,
    speakers: new Set(cells.map(({ speaker }) => speaker)).size,
    tokens: devoiceable.reduce((sum, { tokens }) => sum + tokens, 0),
    interaction: model?.interaction ?? false,
    accentKnown: accents.yes > 0 && accents.no > 0,
    predicted: evidence?.predicted ?? 0,
    chances,
  };
}

/** Kinds of devoiceable vowels of which the corpus marks too few to say anything, whatever consonant they follow. */
export function fewAlike(
  table: DevoicingTable,
): { readonly vowel: string; readonly place: "pause" | "between" }[] {
  return ["i", "u"].flatMap((vowel) =>
    (["between", "pause"] as const).flatMap((place) => {
      const after = place === "pause" ? "pause" : "stop";
      const few = beforeGroups.every((before) => {
        const name = nameOf({ vowel, before, after, accent: "no", row: "alone" });
        return table.chances[name]?.how === "too-few";
      });
      return few ? [{ vowel, place }] : [];
    }),
  );
}

/** The chance of one vowel. */
export function chanceOf(table: DevoicingTable, surroundings: Surroundings): Chance {
  return table.chances[environmentOf(surroundings)] ?? unknownChance;
}

function* allLevels(): Generator<Levels> {
  for (const vowel of ["i", "u"])
    for (const before of beforeGroups)
      for (const after of afterGroups)
        for (const accent of ["yes", "no", "unknown"])
          for (const row of ["alone", "in-a-row"]) yield { vowel, before, after, accent, row };
}

/** Vowels of exactly this environment; where the accent of word or corpus is unknown, whatever their accent. */
function cellsOf(
  cells: ReadonlyMap<string, readonly DevoicingCell[]>,
  levels: Levels,
  accents: { readonly yes: number; readonly no: number },
): DevoicingCell[] {
  const anyAccent = levels.accent === "unknown" || accents.yes + accents.no === 0;
  const wanted = anyAccent ? ["yes", "no", "unknown"] : [levels.accent];
  return wanted.flatMap((accent) => cells.get(nameOf({ ...levels, accent })) ?? []);
}

/** Vowel and whether it stands before a pause: what evidence must not be carried across. */
const kindOf = ({ vowel, after }: Pick<Levels, "vowel" | "after">) =>
  `${vowel} ${after === "pause" ? "pause" : "between"}`;

/** Kinds alike with no model to say what the consonant before does: it must be of the same kind too. */
const narrowKindOf = (levels: Pick<Levels, "vowel" | "before" | "after">) =>
  `${kindOf(levels)} ${levels.before}`;

const nameOf = ({ vowel, before, after, accent, row }: Levels) =>
  `${vowel} ${before} ${after} ${accent} ${row}`;

/** Whether both kinds of consonant around a vowel were met with `leastAlike` vowels at all, so that a model knows them. */
function knownConsonants(cells: readonly DevoicingCell[]): (levels: Levels) => boolean {
  const tokens = new Map<string, number>();
  for (const cell of cells)
    for (const key of [`before ${cell.before}`, `after ${cell.after}`])
      tokens.set(key, (tokens.get(key) ?? 0) + cell.tokens);
  return ({ before, after }) =>
    [`before ${before}`, `after ${after}`].every((key) => (tokens.get(key) ?? 0) >= leastAlike);
}

/** An accent the corpus does not have is replaced by what it has: the rate where accents are unknown. */
function predictAnyAccent(model: DevoicingModel, levels: Levels): Predicted | null {
  return model.predict(levels) ?? model.predict({ ...levels, accent: "unknown" });
}

/**
 * Where the corpus knows all accents, the chance of a word whose accent is unknown: accented and unaccented vowels in
 * their proportion, with an interval that holds both. Null elsewhere.
 */
function mixAccents(
  chances: Readonly<Record<string, Chance>>,
  levels: Levels,
  accents: ReturnType<typeof accentShares>,
): Predicted | null {
  if (levels.accent !== "unknown" || accents.unknown > 0) return null;
  const [yes, no] = ["yes", "no"].map((accent) => chances[nameOf({ ...levels, accent })]);
  if (yes?.how !== "model" || no?.how !== "model") return null;
  const share = accents.yes / (accents.yes + accents.no);
  return {
    estimate: share * yes.estimate! + (1 - share) * no.estimate!,
    low: Math.min(yes.low!, no.low!),
    high: Math.max(yes.high!, no.high!),
  };
}

/** How many tokens the model's word is worth beside those of an environment itself. */
function strengthOf(model: DevoicingModel, cells: readonly DevoicingCell[]): number {
  const groups = [...groupBy(cells, ({ environment }) => environment).values()];
  return modelStrength(
    groups.flatMap((own) => {
      const expected = model.predict(own[0]!)?.estimate;
      if (expected === undefined) return [];
      const sum = (of: "tokens" | "devoiced") => own.reduce((total, cell) => total + cell[of], 0);
      return [{ tokens: sum("tokens"), devoiced: sum("devoiced"), expected }];
    }),
  );
}

function towardsHeard(
  predicted: Predicted,
  { estimate, low, high, tokens }: Chance,
  strength: number,
): Predicted {
  if (estimate === null || low === null || high === null) return predicted;
  return shrinkToModel(predicted, { estimate, low, high }, tokens, strength);
}

function accentShares(cells: readonly DevoicingCell[]) {
  const shares = { yes: 0, no: 0, unknown: 0 };
  for (const { accent, tokens } of cells) shares[accent] += tokens;
  return shares;
}

function sharesBy(
  cells: readonly DevoicingCell[],
  keyOf: (cell: DevoicingCell) => string,
  level: number,
): ReadonlyMap<string, Chance> {
  return new Map([...groupBy(cells, keyOf)].map(([key, alike]) => [key, shareOf(alike, level)]));
}

function shareOf(cells: readonly DevoicingCell[], level: number): Chance {
  const rate = crossedRateOfCounts(cells, level);
  if (rate === null) return unknownChance;
  const { estimate, low, high, tokens, speakers } = rate;
  const devoiced = cells.reduce((sum, cell) => sum + cell.devoiced, 0);
  return { estimate, low, high, tokens, devoiced, speakers, alike: tokens, how: "share" };
}

function groupBy<T>(items: readonly T[], keyOf: (item: T) => string): Map<string, T[]> {
  const groups = new Map<string, T[]>();
  for (const item of items) {
    const key = keyOf(item);
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [item]);
    else group.push(item);
  }
  return groups;
}
