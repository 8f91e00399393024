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

  test("unpacks once for looks that follow one another, and anew once others were looked at", () => {
    const packed = new Packed([1, 2, 3]);
    const first = packed.value;
    expect(packed.value).toBe(first);
    const others = Array.from({ length: 20 }, (_, i) => new Packed([i]).value);
    expect(others.flat()).toEqual(Array.from({ length: 20 }, (_, i) => i));
    expect(packed.value).not.toBe(first);
    expect(packed.value).toEqual(first);
  });
});
