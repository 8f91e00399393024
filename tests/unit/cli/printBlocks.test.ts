import { expect, test } from "vitest";
import { ratio, ratioInterval } from "../../../src/cli/printBlocks.ts";

test("ratio is never shown as naught, and keeps its value", () => {
  expect(ratio(0.0001, 2)).toEqual({ text: "< 0.005", value: 0.0001 });
  expect(ratio(0.005, 2).text).toBe("0.01");
  expect(ratio(0, 2).text).toBe("0.00");
  expect(ratio(0.0003, 3).text).toBe("< 0.0005");
});

test("ratioInterval shows both bounds alike, and an open one as a dash", () => {
  expect(ratioInterval({ low: 0.00001, high: 1.5 }, 2).text).toBe("< 0.005 to 1.50");
  expect(ratioInterval({ low: null, high: 1.5 }, 2).text).toBe("–");
});
