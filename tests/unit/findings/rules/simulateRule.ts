import type { Cells } from "../../../../src/estimates/cells.ts";
import { type CellToken, cellsFromTokens } from "../../../../src/estimates/cellsFromTokens.ts";
import type { Filter } from "../../../../src/estimates/filter.ts";
import type { JudgedRule } from "../../../../src/findings/rules/ruleSchema.ts";
import { isOfTokens } from "../../../../src/findings/rules/tokenContrasts.ts";
import { expandSelector } from "../../../../src/phonology/phoneClasses.ts";
import type { SeededRandom } from "../../../../src/statistics/seededRandom.ts";
import { plainToken } from "../../estimates/sampleTokens.ts";

/** What the invented corpus is built to do; on the edge, the true value is the limit between holding and not. */
export type Truth = "satisfies" | "breaks" | "edge";

export interface Size {
  readonly speakers: number;
  /** Tokens a speaker in each cut of the rule. */
  readonly tokens: number;
}

/** Speakers differ: their rates on the logit scale, their ratios and their tempo on the log scale. */
const spread = { logit: 0.4, logRatio: 0.05, logTempo: 0.2, logToken: 0.35 };

/** An invented corpus whose true value lies well inside the rule's region, well outside it, or on its edge. */
export function simulateRule(rule: JudgedRule, truth: Truth, size: Size, random: SeededRandom): Cells {
  const { contrast } = rule;
  if (isOfTokens(contrast)) throw new Error(`${rule.id} is judged by tokens`);
  const value = trueValue(rule, truth);
  const tokens: CellToken[] = [];
  for (let k = 0; k < size.speakers; k++) {
    const speaker = `s${String(k + 1).padStart(2, "0")}`;
    const lean = spread.logit * random.normal();
    const tempo = Math.log(60) + spread.logTempo * random.normal();
    const ratio = Math.log(value) + spread.logRatio * random.normal();
    const devoice = (where: Filter, rate: number) => {
      const own = 1 / (1 + Math.exp(-(Math.log(rate / (1 - rate)) + lean)));
      for (let i = 0; i < size.tokens; i++)
        tokens.push({ ...tokenIn(rule, where, "vowel", random), speaker, devoiced: random.uniform() < own });
    };
    const last = (where: Filter, kind: string, logMs: number) => {
      for (let i = 0; i < size.tokens; i++)
        tokens.push({
          ...tokenIn(rule, where, kind, random),
          ...{ speaker, devoiced: null, devoicedBasis: null },
          durationMs: Math.exp(logMs + spread.logToken * random.normal()),
        });
    };
    if (contrast.kind === "rate") devoice(contrast.of.where, value);
    else if (contrast.kind === "rate-difference") {
      devoice(contrast.first.where, 0.45 + value / 2);
      devoice(contrast.second.where, 0.45 - value / 2);
    } else if (contrast.kind === "duration-ratio") {
      last(contrast.first.where, contrast.first.where.kind ?? "vowel", tempo + ratio);
      last(contrast.second.where, contrast.second.where.kind ?? "vowel", tempo);
    } else {
      const geminate = contrast.of === "gemination";
      const around = geminate
        ? { phone: "t,k,s", before: "a,o", after: "a,o" }
        : { phone: "a,i,u", before: "k,t,m", after: contrast.surroundings === "pause" ? "pause" : "k,t,m" };
      const kind = geminate ? "consonant" : "vowel";
      last({ ...around, ...contrast.where, length: geminate ? "geminate" : "long" }, kind, tempo + ratio);
      last({ ...around, ...contrast.where, length: geminate ? "single" : "short" }, kind, tempo);
    }
  }
  return cellsFromTokens(tokens);
}

function trueValue({ contrast, holds }: JudgedRule, truth: Truth): number {
  if (truth === "edge")
    return holds.when === "between"
      ? holds.from
      : holds.value * (holds.when === "about" ? 1 + holds.margin : 1);
  const good = truth === "satisfies";
  if (holds.when === "between") return good ? Math.sqrt(holds.from * holds.to) : holds.to * 1.25;
  if (holds.when === "about") return good ? holds.value : holds.value * (1 + holds.margin) * 1.25;
  const up = (holds.when === "more-than") === good;
  if (contrast.kind === "rate") return up ? holds.value + 0.6 * (1 - holds.value) : holds.value * 0.3;
  if (contrast.kind === "rate-difference") return holds.value + (up ? 0.3 : -0.3);
  return up ? holds.value * 1.3 : holds.value / 1.3;
}

/** A token that the filter lets through: each field one of the first few values it allows, where the rule looks. */
function tokenIn({ exceptions }: JudgedRule, where: Filter, kind: string, random: SeededRandom): CellToken {
  const pick = (asked: string | readonly string[] | undefined, otherwise: readonly string[]) => {
    const allowed = asked === undefined ? otherwise : expandSelector([asked].flat().join(","));
    return allowed[random.below(Math.min(3, allowed.length))]!;
  };
  return {
    ...plainToken,
    kind,
    phone: pick(where.vowel ?? where.phone, ["a", "e", "o"]),
    before: pick(where.before, ["k", "t", "m"]),
    after: pick(where.after, ["k", "t", "m"]),
    length: (where.length as string | undefined) ?? "short",
    position: exceptions.includes("position") && random.uniform() < 0.5 ? "initial" : "medial",
    accented: where.accented ?? (exceptions.includes("accented") && random.uniform() < 0.5),
    devoiceableNeighbour: where.devoiceableNeighbour ?? false,
    timeBasis: "annotated",
    devoicedBasis: "annotated",
  };
}
