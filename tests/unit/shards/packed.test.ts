import { describe, expect, test } from "vitest";
import { Packed } from "../../../src/shards/packed.ts";

describe("new Packed(value)", () => {
  test("gives back an equal value: objects, maps, typed arrays, every kind of text", () => {
    const value = {
      texts: ["", "ふくろう", "a\u0000b", "\ud842\udfb7"],
      map: new Map([[3, [{ startMs: 0.1, endMs: null }]]]),
      array: Float64Array.of(1 / 3, Number.NaN, -0),
    };
    expect(new Packed(value).value).toEqual(value);
  });

  test("does not hold what went in: a change of it later is not seen", () => {
    const list = [{ id: "a" }];
    const packed = new Packed(list);
    list[0]!.id = "b";
    expect(packed.value).toEqual([{ id: "a" }]);
  });

  test("unpacks once for looks that follow one another", () => {
    const packed = new Packed([1, 2, 3]);
    expect(packed.value).toBe(packed.value);
  });
});
