import type { MixtureBank } from "../gaussians.ts";
import type { Kernel, ScoreComponent } from "./kernel.ts";

/** Plain JavaScript; four frames share each load of a component's numbers. */
export const javascriptKernel: Kernel = { name: "javascript", load };

function load(bank: MixtureBank, x: Float32Array): ScoreComponent {
  const { dims, a, b, c } = bank;
  const frames = x.length / dims;
  const whole = frames - (frames % 4);
  const rows = Float64Array.from(x);
  const sums = new Float64Array(frames);
  return (component) => {
    const base = component * dims;
    const constant = c[component]!;
    for (let t = 0; t < whole; t += 4) {
      let i = t * dims;
      let s0 = constant;
      let s1 = constant;
      let s2 = constant;
      let s3 = constant;
      for (let d = base; d < base + dims; d++, i++) {
        const p = a[d]!;
        const q = b[d]!;
        const x0 = rows[i]!;
        const x1 = rows[i + dims]!;
        const x2 = rows[i + 2 * dims]!;
        const x3 = rows[i + 3 * dims]!;
        s0 += (p * x0 + q) * x0;
        s1 += (p * x1 + q) * x1;
        s2 += (p * x2 + q) * x2;
        s3 += (p * x3 + q) * x3;
      }
      sums[t] = s0;
      sums[t + 1] = s1;
      sums[t + 2] = s2;
      sums[t + 3] = s3;
    }
    for (let t = whole; t < frames; t++) {
      let sum = constant;
      for (let d = 0; d < dims; d++) {
        const value = rows[t * dims + d]!;
        sum += (a[base + d]! * value + b[base + d]!) * value;
      }
      sums[t] = sum;
    }
    return sums;
  };
}
