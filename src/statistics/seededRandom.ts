import { unsafeUniformIntDistribution } from "pure-rand/distribution/UnsafeUniformIntDistribution";
import { xoroshiro128plus } from "pure-rand/generator/XoroShiro";

/** Random numbers that depend on the seed alone, so that the same input gives the same bytes. */
export interface SeededRandom {
  /** Uniform in [0, 1), 32 bits. */
  uniform(): number;
  /** Whole number in [0, n). */
  below(n: number): number;
  /** Standard normal (Marsaglia's polar method). */
  normal(): number;
  /** Number of successes in `n` trials of chance `p`. */
  binomial(n: number, p: number): number;
}

export function seededRandom(seed: number): SeededRandom {
  const generator = xoroshiro128plus(seed);
  const uniform = () => (generator.unsafeNext() >>> 0) / 4294967296;
  const normal = () => {
    for (;;) {
      const x = 2 * uniform() - 1;
      const y = 2 * uniform() - 1;
      const r = x * x + y * y;
      if (r > 0 && r < 1) return x * Math.sqrt((-2 * Math.log(r)) / r);
    }
  };
  const binomial = (n: number, p: number) => {
    let successes = 0;
    for (let i = 0; i < n; i++) if (uniform() < p) successes++;
    return successes;
  };
  return { uniform, below: (n) => unsafeUniformIntDistribution(0, n - 1, generator), normal, binomial };
}
