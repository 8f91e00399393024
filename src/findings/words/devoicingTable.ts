import { clusteredRate } from "../../estimates/clusteredRate.ts";
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
  /** `model`: regression and what was heard; `share`: of the class as a whole; `unknown`: no evidence. */
  readonly how: "model" | "share" | "unknown";
}

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
  ...{ tokens: 0, devoiced: 0, speakers: 0, how: "unknown" },
};

/**
 * Chances of devoicing from the evidence of one corpus: the regression's, drawn towards what was heard in the very environment, where devoiceable vowels are enough to fit it
 * and each level of the environment was heard, else the share of all devoiceable vowels; the share of their class for
 * other vowels. Without evidence every chance is unknown.
 */
export function devoicingTable(evidence: DevoicingEvidence | null, level = 0.95): DevoicingTable {
  const cells = evidence?.cells ?? [];
  const devoiceable = cells.filter(({ environment }) => isDevoiceableEnvironment(environment));
  const model = devoicingModel(devoiceable, level);
  const overall = shareOf(devoiceable, level);
  const byEnvironment = groupBy(cells, ({ environment }) => environment);
  const accents = accentShares(devoiceable);
  const strength = model === null ? 0 : strengthOf(model, devoiceable);
  const chances: Record<string, Chance> = {};
  for (const levels of allLevels()) {
    const name = nameOf(levels);
    const own = shareOf(cellsOf(byEnvironment, levels, accents), level);
    const predicted = model === null ? null : predictAnyAccent(model, levels);
    const counts = { tokens: own.tokens, devoiced: own.devoiced, speakers: own.speakers };
    const mixed = mixAccents(chances, levels, accents);
    if (mixed !== null) chances[name] = { ...mixed, ...counts, how: "model" };
    else if (predicted !== null)
      chances[name] = { ...towardsHeard(predicted, own, strength), ...counts, how: "model" };
    else chances[name] = { ...overall, ...counts };
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

const nameOf = ({ vowel, before, after, accent, row }: Levels) =>
  `${vowel} ${before} ${after} ${accent} ${row}`;

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

function shareOf(cells: readonly DevoicingCell[], level: number): Chance {
  if (cells.length === 0) return unknownChance;
  const speakers = [...groupBy(cells, ({ speaker }) => speaker).values()];
  const sum = (of: "tokens" | "devoiced") =>
    speakers.map((own) => own.reduce((total, cell) => total + cell[of], 0));
  const [tokens, devoiced] = [sum("tokens"), sum("devoiced")];
  const { estimate, low, high } = clusteredRate(tokens, devoiced, level);
  const total = (counts: readonly number[]) => counts.reduce((one, other) => one + other, 0);
  return {
    ...{ estimate, low, high },
    ...{ tokens: total(tokens), devoiced: total(devoiced), speakers: speakers.length, how: "share" },
  };
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
