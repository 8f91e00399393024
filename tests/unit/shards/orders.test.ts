import { describe, expect, test } from "vitest";
import { type Order, parseOrder, writeOrder } from "../../../src/shards/orders.ts";

const key = "0123456789abcdef".repeat(4);
const align: Order = {
  ...{ kind: "align", cache: "/results/.cache", key, hear: key, read: key, model: key, at: [0, 3] },
  normalisations: [["__proto__", { mean: Float64Array.of(0.1, -0), scale: Float64Array.of(1, 1 / 3) }]],
};

describe("parseOrder(writeOrder(order))", () => {
  test("gives the same order to the last bit, whatever a speaker is called", () => {
    const order = parseOrder(writeOrder(align)) as typeof align;
    expect(order).toEqual(align);
    expect(Object.is(order.normalisations[0]![1].mean[1], -0)).toBe(true);
  });

  test.each<[string, (order: Record<string, unknown>) => unknown]>([
    ["no JSON", () => "{"],
    ["a kind that there is not", (order) => JSON.stringify({ ...order, kind: "erase" })],
    ["a key that is a path", (order) => JSON.stringify({ ...order, key: "../../etc/passwd" })],
    ["a path with NUL", (order) => JSON.stringify({ ...order, cache: "/results\0/x" })],
    ["a place before the first", (order) => JSON.stringify({ ...order, at: [-1] })],
    ["a part left out", ({ model: _, ...rest }) => JSON.stringify(rest)],
    [
      "numbers that are none",
      (order) => JSON.stringify({ ...order, normalisations: [["a", { mean: [1] }]] }),
    ],
    [
      "an array of a strange kind",
      (order) => JSON.stringify({ ...order, x: { $array: "Function", bytes: "" } }),
    ],
    [
      "an array by the name of something built in",
      (order) => JSON.stringify({ ...order, x: { $array: "constructor", bytes: "" } }),
    ],
    [
      "an array whose bytes are too few for its kind",
      (order) => JSON.stringify({ ...order, x: { $array: "Float64Array", bytes: "AAAA" } }),
    ],
  ])("refuses %s", (_, spoil) => {
    expect(() => parseOrder(String(spoil(JSON.parse(writeOrder(align)))))).toThrow(/^this is no order: ./);
  });
});
