/** How far a piece of work is. `total` may grow while it runs. */
export interface Progress {
  /** What is being done, in words a reader knows. */
  readonly task: string;
  readonly done: number;
  readonly total: number;
  /** What is counted: `utterances`, `pages`. */
  readonly unit: string;
  /** How much of the time it takes is over, 0 to 1, where that is not done out of total. */
  readonly share?: number;
}

export type OnProgress = (progress: Progress) => void;
