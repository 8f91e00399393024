import { expect, test } from "vitest";
import { decide, notableShare } from "../../../../src/findings/rules/decide.ts";

const none = { holding: 0, contrary: 0 };
const some = (which: "holding" | "contrary", share = notableShare) => ({ ...none, [which]: share });

test("decide follows the whole corpus where nothing notable differs", () => {
  expect(decide("holds", none, none)).toBe("borne out");
  expect(decide("fails", none, none)).toBe("contradicted");
  expect(decide("small", none, none)).toBe("too small to matter");
  expect(decide("open", none, none)).toBe("undecided");
  expect(decide("holds", some("contrary", 0.09), some("contrary", 0.09))).toBe("borne out");
});

test("decide bears out in part where environments or speakers certainly differ", () => {
  expect(decide("holds", some("contrary"), none)).toBe("borne out in part");
  expect(decide("holds", none, some("contrary"))).toBe("borne out in part");
  for (const place of ["fails", "small", "open"] as const) {
    expect(decide(place, some("holding"), none)).toBe("borne out in part");
    expect(decide(place, none, some("holding"))).toBe("borne out in part");
    expect(decide(place, some("contrary"), some("contrary"))).not.toBe("borne out in part");
  }
});
