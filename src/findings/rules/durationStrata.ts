import type { Basis } from "../../basis.ts";
import type { Cells } from "../../estimates/cells.ts";
import type { Cut, Dim } from "../../estimates/dimensions.ts";
import { type Filter, filterRestrictions } from "../../estimates/filter.ts";
import type { LogSums, Stratum } from "../../estimates/pairedRatio.ts";
import { labelOf, partition, runsOf, sumByPart } from "../../estimates/partition.ts";
import { selectCells } from "../../estimates/selection.ts";

/** Tokens of one cut that found a partner. */
export interface DurationCut extends LogSums {
  readonly atFloor: number;
}

export interface DurationGroup {
  readonly dataset: string;
  readonly labelSet: string;
  readonly basis: Basis;
  readonly by: Cut;
  /** First cut as `long`, second as `short`, paired within speaker and the columns asked for. */
  readonly strata: readonly Stratum[];
  readonly first: DurationCut;
  readonly second: DurationCut;
}

interface Piece extends DurationCut {
  /** Codes of the columns compared within. */
  readonly match: string;
  readonly speaker: number;
}

const apart: readonly Dim[] = ["dataset", "labelSet", "timeBasis"];

/** Strata of two cuts, one group a corpus and value of `column`; what has no partner on the other side is left out. */
export function durationStrata(
  cells: Cells,
  first: Filter,
  second: Filter,
  within: readonly Dim[],
  column: Dim | null,
): DurationGroup[] {
  const keys = column === null ? apart : [...apart, column];
  const others = pieces(cells, second, keys, within);
  return [...pieces(cells, first, keys, within)].flatMap(([key, { by, pieces: own }]) => {
    const partners = others.get(key);
    if (partners === undefined) return [];
    const label = (dim: Dim) => String(by[dim]);
    return [
      {
        ...{ dataset: label("dataset"), labelSet: label("labelSet"), basis: label("timeBasis") as Basis, by },
        ...pairUp(own, partners.pieces),
      },
    ];
  });
}

function pairUp(own: readonly Piece[], partners: readonly Piece[]) {
  const partnerOf = new Map(partners.map((piece) => [`${piece.match} ${piece.speaker}`, piece]));
  const numbers = new Map<string, number>();
  const strata: Stratum[] = [];
  const [first, second] = [noTokens(), noTokens()];
  for (const piece of own) {
    const partner = partnerOf.get(`${piece.match} ${piece.speaker}`);
    if (partner === undefined) continue;
    if (!numbers.has(piece.match)) numbers.set(piece.match, numbers.size);
    strata.push({ speaker: piece.speaker, phone: numbers.get(piece.match)!, long: piece, short: partner });
    add(first, piece);
    add(second, partner);
  }
  return { strata, first, second };
}

function pieces(cells: Cells, filter: Filter, keys: readonly Dim[], within: readonly Dim[]) {
  const selection = selectCells(cells, filterRestrictions(filter));
  const matched = within.filter((dim) => !keys.includes(dim));
  const parts = partition(cells, selection, [
    ...keys,
    ...matched,
    ...(keys.includes("speaker") ? [] : ["speaker" as const]),
  ]);
  const [tokens, atFloor] = [sumByPart(parts, cells.tokens), sumByPart(parts, cells.atFloor)];
  const [logs, squares] = [sumByPart(parts, cells.sumLogMs), sumByPart(parts, cells.sumSquareLogMs)];
  const width = parts.dims.length;
  const groups = new Map<string, { readonly by: Cut; readonly pieces: Piece[] }>();
  for (const [from, to] of runsOf(parts, keys.length)) {
    const code = (part: number, dim: Dim) => parts.codes[part * width + parts.dims.indexOf(dim)]!;
    const by = Object.fromEntries(keys.map((dim) => [dim, labelOf(cells, parts, from, dim)]));
    const own: Piece[] = [];
    for (let part = from; part < to; part++)
      if (tokens[part]! > 0)
        own.push({
          match: matched.map((dim) => code(part, dim)).join(" "),
          speaker: code(part, "speaker"),
          ...{ tokens: tokens[part]!, atFloor: atFloor[part]! },
          ...{ sumLogMs: logs[part]!, sumSquareLogMs: squares[part]! },
        });
    groups.set(keys.map((dim) => code(from, dim)).join(" "), { by, pieces: own });
  }
  return groups;
}

function noTokens() {
  return { tokens: 0, atFloor: 0, sumLogMs: 0, sumSquareLogMs: 0 };
}

function add(into: ReturnType<typeof noTokens>, piece: Piece): void {
  into.tokens += piece.tokens;
  into.atFloor += piece.atFloor;
  into.sumLogMs += piece.sumLogMs;
  into.sumSquareLogMs += piece.sumSquareLogMs;
}
