import { type ChainOnPath, chainOf } from "./chain.ts";
import { scoreMixtures } from "./gaussians.ts";
import { type AcousticModel, scoringOf } from "./model.ts";
import type { Network } from "./network.ts";
import { softAlign } from "./softAlignment.ts";
import { viterbi } from "./viterbi.ts";

/** A phone of the chosen path. Times in frames, with fractions. */
export interface Span {
  /** Node of the graph. */
  readonly node: number;
  readonly start: number;
  readonly end: number;
  /** Where its first state ends: of stops, the closure. */
  readonly firstStateEnd: number;
  /** Standard deviation of its start and end, in frames. */
  readonly startSpread: number;
  readonly endSpread: number;
  /** Frames of the best path, a whole number, and the fewest it could have had. */
  readonly pathFrames: number;
  readonly floorFrames: number;
}

export interface Decoded {
  readonly spans: readonly Span[];
  /** Log likelihood of each frame in its state on the best path. */
  readonly frameScores: Float32Array;
}

/** Frames' weight when boundaries are placed; see `softAlign`. */
const placingScale = 0.5;
/**
 * Frames' weight when doubt about boundaries is measured. With .04 the confidence of an interval agreed with the share
 * of intervals whose edges both lay within 20 ms, on synthetic reference speech, clean and noisy (.03 too low, .1 too high).
 */
const doubtScale = 0.04;
const reach = 10;

/**
 * The best way through a network, then each boundary where the forward–backward pass along it puts half the
 * probability, between frames where need be. Null when the recording is too short for its phones or has a phone
 * that the model never heard, nor any like it.
 */
export function decode(model: AcousticModel, network: Network, x: Float32Array): Decoded | null {
  const scoring = scoringOf(network, model.inventory, model.frames);
  if (scoring === null) return null;
  const frames = x.length / model.bank.dims;
  const columns = scoring.wanted.length;
  const scores = new Float32Array(frames * columns);
  scoreMixtures(model.bank, x, scoring.wanted, scores);
  const best = viterbi(network, scoring.transitions, scores, columns, frames);
  if (!Number.isFinite(best.score)) return null;
  const chain = chainOf(best.states, scoring.transitions);
  const frameScores = Float32Array.from(
    best.states,
    (s, t) => scores[t * columns + scoring.transitions.column[s]!]!,
  );
  const { end } = stateEnds(chain, scores, columns, placingScale);
  const { spread } = stateEnds(chain, scores, columns, doubtScale);
  return { spans: spansOf(network, chain, { end, spread }), frameScores };
}

/** Median and standard deviation of the time at which each place of the chain is left, in frames. */
function stateEnds(chain: ChainOnPath, scores: Float32Array, columns: number, scale: number) {
  const places = chain.states.length;
  const frames = chain.path.length;
  const soft = softAlign(chain, chain.path, reach, scores, columns, scale);
  const end = new Float64Array(places).fill(frames);
  const spread = new Float64Array(places);
  const first = new Float64Array(places);
  const second = new Float64Array(places);
  const before = new Float64Array(places).fill(1);
  let settled = 0;
  for (let t = 0; t < frames; t++) {
    let passed = 0;
    for (let j = 0; j < soft.width; j++) {
      const place = soft.low[t]! + j;
      passed = Math.min(1, passed + soft.occupancy[t * soft.width + j]!);
      // `passed`: the probability that this place is not yet left in frame t, whose middle is t + ½.
      if (before[place]! >= 0.5 && passed < 0.5)
        end[place] = t - 0.5 + (before[place]! - 0.5) / (before[place]! - passed);
      const leaving = before[place]! - passed;
      first[place]! += leaving * t;
      second[place]! += leaving * t * t;
      before[place] = passed;
    }
    for (; settled < soft.low[t]!; settled++) settle(settled, t);
  }
  function settle(place: number, t: number): void {
    if (before[place]! <= 0) return;
    if (before[place]! >= 0.5) end[place] = t;
    first[place]! += before[place]! * t;
    second[place]! += before[place]! * t * t;
    before[place] = 0;
  }
  for (let place = 0; place < places; place++)
    spread[place] = Math.sqrt(Math.max(0, second[place]! - first[place]! ** 2));
  return { end, spread };
}

function spansOf(
  network: Network,
  chain: ChainOnPath,
  { end, spread }: ReturnType<typeof stateEnds>,
): Span[] {
  const places = chain.states.length;
  const count = new Int32Array(places);
  for (const place of chain.path) count[place]!++;
  const spans: Span[] = [];
  let from = 0;
  for (let place = 0; place < places; place++) {
    const node = network.node[chain.states[place]!]!;
    if (place + 1 < places && network.node[chain.states[place + 1]!]! === node) continue;
    let pathFrames = 0;
    for (let p = from; p <= place; p++) pathFrames += count[p]!;
    spans.push({
      node,
      start: from === 0 ? 0 : end[from - 1]!,
      end: end[place]!,
      firstStateEnd: end[from]!,
      startSpread: from === 0 ? 0 : spread[from - 1]!,
      endSpread: place === places - 1 ? 0 : spread[place]!,
      pathFrames,
      floorFrames: place - from + 1,
    });
    from = place + 1;
  }
  return spans;
}
