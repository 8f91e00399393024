import { noResponseVariation, tooFewTokens, valueNotFinite } from "../../messages/models.ts";
import type { Design } from "./designMatrix.ts";

export interface ResponseOptions {
  /** Tokens of each row, when the response holds means of cells. Default 1 each. */
  readonly tokens?: ArrayLike<number>;
  /** Sum of squared deviations of the tokens from their row's mean; with it cells give the same errors as tokens. Default 0. */
  readonly withinSumOfSquares?: ArrayLike<number>;
}

export interface Response {
  readonly values: Float64Array;
  readonly counts: Float64Array;
  readonly within: Float64Array;
  readonly tokens: number;
}

/** Response, tokens and variation inside cells of the design rows, or the reason why they cannot be modelled. */
export function responseOfRows(
  design: Design,
  response: ArrayLike<number>,
  options: ResponseOptions,
): Response | { readonly reason: string } {
  const { rows } = design;
  const values = Float64Array.from(rows, (row) => response[row]!);
  const counts = Float64Array.from(rows, (row) => options.tokens?.[row] ?? 1);
  const within = Float64Array.from(rows, (row) => options.withinSumOfSquares?.[row] ?? 0);
  let tokens = 0;
  let inside = 0;
  for (let i = 0; i < values.length; i++) {
    if (!Number.isFinite(values[i]!)) return { reason: valueNotFinite("The value", rows[i]!, values[i]!) };
    if (!(counts[i]! > 0 && Number.isFinite(counts[i]!)))
      return { reason: valueNotFinite("The count of tokens (above 0)", rows[i]!, counts[i]!) };
    if (!(within[i]! >= 0 && Number.isFinite(within[i]!)))
      return { reason: valueNotFinite("The sum of squares within (0 or more)", rows[i]!, within[i]!) };
    tokens += counts[i]!;
    inside += within[i]!;
  }
  if (tokens <= design.coefficients.length)
    return { reason: tooFewTokens(tokens, design.coefficients.length) };
  if (inside === 0 && values.every((value) => value === values[0]))
    return { reason: noResponseVariation(values[0]!) };
  return { values, counts, within, tokens };
}
