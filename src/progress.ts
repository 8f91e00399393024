/** How far a piece of work is. `total` may grow while it runs. */
export interface Progress {
  /** What is being done, in words a reader knows. */
  readonly task: string;
  readonly done: number;
  readonly total: number;
  /** What is counted: `utterances`, `pages`. */
  readonly unit: string;
}

export type OnProgress = (progress: Progress) => void;
