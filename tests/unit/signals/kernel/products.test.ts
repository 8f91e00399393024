import { describe, expect, it } from "vitest";
import { createJavascriptProducts } from "../../../../src/signals/kernel/javascriptProducts.ts";
import { createProducts, type Products } from "../../../../src/signals/kernel/products.ts";
import { createWasmProducts } from "../../../../src/signals/kernel/wasmProducts.ts";
import { seededRandom } from "../../../../src/statistics/seededRandom.ts";

const length = 2000;
const both = [createJavascriptProducts(length), createWasmProducts(length)!] as const;

function fill({ numbers }: Products): void {
  const random = seededRandom(7);
  for (let i = 0; i < numbers.length; i++) numbers[i] = random.uniform() - 0.5;
}

/** What both leave in their workspaces after the same call. */
function afterwards(call: (products: Products) => void, of: "numbers" | "singles" = "numbers") {
  return both.map((products) => {
    fill(products);
    call(products);
    return Array.from(products[of]);
  });
}

describe("createProducts", () => {
  it("takes WebAssembly where there is some", () => {
    expect(both[1]?.name).toBe("wasm");
    expect(createProducts(4).name).toBe("wasm");
    expect(createProducts(4).numbers).toHaveLength(4);
    expect(createProducts(4).singles).toHaveLength(8);
  });

  it.each(both.map((products) => [products.name, products] as const))(
    "%s: dot gives Σ i² = n(n + 1)(2n + 1)/6 for counts that four divides and that it does not",
    (_, products) => {
      products.numbers.forEach((_, i) => {
        products.numbers[i] = i;
      });
      for (const n of [0, 1, 3, 4, 5, 118, 320])
        expect(products.dot(0, 0, n + 1)).toBe((n * (n + 1) * (2 * n + 1)) / 6);
      expect(products.dot(1, 3, 2)).toBe(1 * 3 + 2 * 4);
    },
  );

  it.each(both.map((products) => [products.name, products] as const))(
    "%s: weightedProducts gives Σ w[n]·x[n + s]·x[n + t], added one by one",
    (_, products) => {
      fill(products);
      const { numbers } = products;
      const [count, size, stride] = [50, 13, 16];
      const expected = Array.from({ length: size }, (_, s) =>
        Array.from({ length: s + 1 }, (_, t) => {
          let sum = 0;
          for (let n = 0; n < count; n++) sum += numbers[200 + n]! * numbers[n + s]! * numbers[n + t]!;
          return sum;
        }),
      );
      products.weightedProducts(0, 200, count, size, 600);
      const found = expected.map((row, s) => row.map((_, t) => numbers[600 + s * stride + t]));
      expect(found).toEqual(expected);
    },
  );

  it.each(both.map((products) => [products.name, products] as const))(
    "%s: slidingDots moves the second stretch on, and lagDots both about the middle",
    (_, products) => {
      fill(products);
      const { numbers } = products;
      products.slidingDots(10, 200, 7, 3, 900);
      const sliding = [0, 1, 2].flatMap((k) => [
        products.dot(10, 200 + k, 7),
        products.dot(200 + k, 200 + k, 7),
      ]);
      expect(Array.from(numbers.subarray(900, 906))).toEqual(sliding);
      products.lagDots(0, 20, 6, 2, 4, 950);
      const lags = [products.dot(6, 8, 6), products.dot(5, 8, 6), products.dot(5, 9, 6)];
      expect(Array.from(numbers.subarray(950, 953))).toEqual(lags);
    },
  );

  it("gives the same bits in JavaScript and WebAssembly", () => {
    for (const width of [80, 81, 83]) {
      const [javascript, wasm] = afterwards((one) => one.lagDots(0, 149, width, 5, 66, 500));
      expect(wasm).toEqual(javascript);
    }
    const sliding = afterwards((one) => one.slidingDots(0, 400, 321, 5, 900));
    expect(sliding[1]).toEqual(sliding[0]);
    const [javascript, wasm] = afterwards((one) => one.filterEvery(0, 52, 60, 4, 100, 1000), "singles");
    expect(wasm).toEqual(javascript);
    const changed = javascript!.slice(1000, 1100);
    fill(both[0]);
    expect(changed).not.toEqual(Array.from(both[0].singles.subarray(1000, 1100)));
  });
});
