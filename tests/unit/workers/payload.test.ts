import { describe, expect, test } from "vitest";
import { orderInPayload } from "../../../src/workers/payload.ts";

describe("orderInPayload(data)", () => {
  test("gives the text of the order", () => {
    expect(orderInPayload({ order: "{}" })).toBe("{}");
  });

  test.each([
    null,
    undefined,
    "{}",
    [],
    {},
    { order: 1 },
    { order: "x".repeat(10_000_001) },
    { order: "", more: 1 },
  ])("refuses what carries none (%#), and says why", (data) => {
    expect(() => orderInPayload(data)).toThrow(/^this job carries no order: .{5}/);
  });
});
