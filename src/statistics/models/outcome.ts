/**
 * What came of fitting a model. `ok` holds finite numbers only. `not converged` still shows where the search
 * stopped, with the reason; nothing of it should be reported as an estimate. `notices` are for the reader: what
 * was left out, what is thin, what to doubt.
 */
export type Outcome<Fit> =
  | { readonly status: "ok"; readonly fit: Fit; readonly notices: readonly string[] }
  | {
      readonly status: "not converged";
      readonly fit: Fit;
      readonly reason: string;
      readonly notices: readonly string[];
    }
  | CannotBeEstimated;

export interface CannotBeEstimated {
  readonly status: "cannot be estimated";
  readonly reason: string;
  readonly notices: readonly string[];
}

export function cannotBeEstimated(reason: string, notices: readonly string[] = []): CannotBeEstimated {
  return { status: "cannot be estimated", reason, notices };
}
