import { clusteredBy, mixedBy, noPointsOf } from "../../messages/explain.ts";
import type { Design } from "../../statistics/models/designMatrix.ts";
import { fitLinear } from "../../statistics/models/fitLinear.ts";
import { fitLogistic } from "../../statistics/models/fitLogistic.ts";
import { fitMixedLinear } from "../../statistics/models/fitMixedLinear.ts";
import { fitMixedLogistic } from "../../statistics/models/fitMixedLogistic.ts";
import type { MixedFit } from "../../statistics/models/mixedFit.ts";
import { clusteredErrors, type Groupings, interceptsOf } from "./clusterings.ts";
import { type EffectOptions, effectsOf } from "./effects.ts";
import type { Model, VarianceShare } from "./explanation.ts";

export interface ModelData {
  readonly design: Design;
  readonly groupings: Groupings;
  /** Outcome of each row of the columns: 0 or 1 where devoiced is modelled, else log duration. */
  readonly outcome: Float64Array;
  readonly options: EffectOptions;
}

/** Speakers below which their spread, over which percentage points are averaged, cannot be told. */
const leastForPoints = 3;

const none = { effects: [], variance: [], warnings: [] } as const;

/** One regression of all tokens, with the errors that speakers and words ask for. */
export function clusteredModel({ design, groupings, outcome, options }: ModelData): Model {
  const ones = new Float64Array(outcome.length).fill(1);
  const fitted =
    options.devoiced !== null
      ? fitLogistic(design, outcome, ones, { onSeparation: "firth" })
      : fitLinear(design, outcome);
  const kind = "clustered";
  const units = ["speaker", groupings.items.unit];
  const plain = clusteredBy(units, false);
  if (fitted.status !== "ok")
    return { kind, ...none, status: fitted.status, reason: fitted.reason, method: plain };
  const errors = clusteredErrors(fitted.fit, groupings);
  if (errors.status !== "ok")
    return { kind, ...none, status: errors.status, reason: errors.reason, method: plain };
  const { effects, notices } = effectsOf(fitted.fit, errors.fit.covariances, options);
  const firth = "method" in fitted.fit && fitted.fit.method === "Firth";
  return {
    kind,
    status: "ok",
    reason: null,
    method: clusteredBy(errors.fit.units, firth),
    effects,
    variance: [],
    warnings: unique([...fitted.notices, ...errors.notices, ...notices]),
  };
}

/** The same terms with random intercepts for speaker and word, as far as the tokens can tell them. */
export function mixedModel({ design, groupings, outcome, options }: ModelData): Model {
  const kind = "mixed";
  const { intercepts, notices: leftOut } = interceptsOf(groupings, design.rows);
  const units = Object.keys(intercepts);
  if (units.length === 0) {
    const reason = leftOut.join(" ");
    return { kind, ...none, status: "cannot be estimated", reason, method: mixedBy(["speaker"], "none") };
  }
  const fitted =
    options.devoiced !== null
      ? fitMixedLogistic(design, outcome, new Float64Array(outcome.length).fill(1), intercepts)
      : fitMixedLinear(design, outcome, intercepts, { method: "REML" });
  const method = mixedBy(units, options.devoiced !== null ? "Laplace approximation" : "REML");
  if (fitted.status !== "ok")
    return {
      kind,
      ...none,
      status: fitted.status,
      reason: fitted.reason,
      method,
      warnings: unique([...fitted.notices, ...leftOut]),
    };
  const { effects, notices } = effectsOf(fitted.fit, [fitted.fit], options);
  const speakers = fitted.fit.groupings.find(({ unit }) => unit === "speaker")?.groups ?? leastForPoints;
  const unspread = options.devoiced !== null && speakers < leastForPoints;
  return {
    kind,
    status: "ok",
    reason: null,
    method,
    effects: unspread ? effects.map((effect) => ({ ...effect, percentagePoints: null })) : effects,
    variance: variancesOf(fitted.fit),
    warnings: unique([
      ...fitted.notices,
      ...leftOut,
      ...notices,
      ...(unspread ? [noPointsOf(speakers)] : []),
    ]),
  };
}

function variancesOf(fit: MixedFit): VarianceShare[] {
  return [
    ...fit.groupings.map(({ unit, groups, standardDeviation, share }) => ({
      of: unit,
      groups,
      standardDeviation,
      share,
    })),
    {
      of: "single vowel",
      groups: null,
      standardDeviation: Math.sqrt(fit.residualVariance),
      share: fit.residualShare,
    },
  ];
}

function unique(texts: readonly string[]): string[] {
  return [...new Set(texts)];
}
