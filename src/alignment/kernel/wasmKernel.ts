import type { MixtureBank } from "../gaussians.ts";
import { gaussiansWasm } from "./gaussiansWasm.ts";
import type { Kernel, ScoreComponent } from "./kernel.ts";

interface Exports {
  score(x: number, frames: number, dims: number, a: number, b: number, c: number, out: number): void;
}

const pageBytes = 65_536;
/** Frames that the kernel takes at once. */
const block = 8;

/** Two 64-bit lanes at a time, where the engine knows WebAssembly and its SIMD; null elsewhere. */
export function createWasmKernel(): Kernel | null {
  if (typeof WebAssembly === "undefined") return null;
  const memory = new WebAssembly.Memory({ initial: 16 });
  let exports: Exports;
  try {
    const bytes = Uint8Array.from(atob(gaussiansWasm), (char) => char.charCodeAt(0));
    const instance = new WebAssembly.Instance(new WebAssembly.Module(bytes), { env: { memory } });
    exports = instance.exports as unknown as Exports;
  } catch {
    return null;
  }
  let loaded: MixtureBank | null = null;

  // Layout, in numbers of 8 bytes: a, b, x (a row a dimension, frames padded to the block), out.
  function load(bank: MixtureBank, x: Float32Array): ScoreComponent {
    const { dims, a, b, c } = bank;
    const frames = x.length / dims;
    const padded = Math.ceil(frames / block) * block;
    const xAt = 2 * a.length;
    const outAt = xAt + dims * padded;
    const missing = (outAt + padded) * 8 - memory.buffer.byteLength;
    if (missing > 0) memory.grow(Math.ceil(missing / pageBytes));
    const numbers = new Float64Array(memory.buffer);
    if (loaded !== bank) {
      numbers.set(a);
      numbers.set(b, a.length);
      loaded = bank;
    }
    for (let d = 0; d < dims; d++) {
      const row = xAt + d * padded;
      for (let t = 0, i = d; t < frames; t++, i += dims) numbers[row + t] = x[i]!;
      numbers.fill(0, row + frames, row + padded);
    }
    const sums = numbers.subarray(outAt, outAt + frames);
    return (component) => {
      const at = component * dims;
      exports.score(xAt * 8, padded, dims, at * 8, (a.length + at) * 8, c[component]!, outAt * 8);
      return sums;
    };
  }
  return { name: "wasm", load };
}
