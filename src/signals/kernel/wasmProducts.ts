import type { Products } from "./products.ts";
import { productsWasm } from "./productsWasm.ts";

interface Exports {
  dot(p: number, q: number, count: number): number;
  lagDots(x: number, span: number, width: number, lagMin: number, lagMax: number, out: number): void;
  slidingDots(p: number, q: number, width: number, count: number, out: number): void;
  weightedProducts(x: number, w: number, count: number, size: number, out: number): void;
  filterEvery(taps: number, length: number, x: number, step: number, count: number, out: number): void;
}

const pageBytes = 65_536;

let compiled: WebAssembly.Module | null | undefined;

/** Compiled once; null where the engine does not know WebAssembly or its SIMD. */
function compiledModule(): WebAssembly.Module | null {
  if (compiled !== undefined) return compiled;
  try {
    compiled = new WebAssembly.Module(Uint8Array.from(atob(productsWasm), (char) => char.charCodeAt(0)));
  } catch {
    compiled = null;
  }
  return compiled;
}

/** Two 64-bit or four 32-bit lanes at a time; null where the engine has none. */
export function createWasmProducts(length: number): Products | null {
  const code = compiledModule();
  if (code === null) return null;
  const pages = Math.max(1, Math.ceil((length * 8) / pageBytes));
  const memory = new WebAssembly.Memory({ initial: pages, maximum: pages });
  const exports = new WebAssembly.Instance(code, { env: { memory } }).exports as unknown as Exports;
  return {
    name: "wasm",
    numbers: new Float64Array(memory.buffer, 0, length),
    singles: new Float32Array(memory.buffer, 0, 2 * length),
    dot: (p, q, count) => exports.dot(p * 8, q * 8, count),
    lagDots: (x, span, width, lagMin, lagMax, out) =>
      exports.lagDots(x * 8, span, width, lagMin, lagMax, out * 8),
    slidingDots: (p, q, width, count, out) => exports.slidingDots(p * 8, q * 8, width, count, out * 8),
    weightedProducts: (x, w, count, size, out) =>
      exports.weightedProducts(x * 8, w * 8, count, size, out * 8),
    filterEvery: (taps, taken, x, step, count, out) =>
      exports.filterEvery(taps * 4, taken, x * 4, step, count, out * 4),
  };
}
