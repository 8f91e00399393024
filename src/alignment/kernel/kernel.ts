import type { MixtureBank } from "../gaussians.ts";

/** Scores one component for all loaded frames: log weight plus log density a frame. The array is reused. */
export type ScoreComponent = (component: number) => Float64Array;

/** A way to do the arithmetic. All kernels give the same bits. */
export interface Kernel {
  readonly name: "wasm" | "javascript";
  /** Loads frames (rows of `bank.dims` values). What it returns is good until the next call. */
  load(bank: MixtureBank, x: Float32Array): ScoreComponent;
}
