import { expect, test } from "vitest";
import { everyNthRecording } from "../../../../src/estimates/explain/everyNthRecording.ts";
import { tokenTableOfRows } from "../../../../src/estimates/tokenTable.ts";
import { everyNth } from "../../../../src/messages/explain.ts";

const row = { dataset: "d", labelSet: "l", speaker: "s", kind: "vowel", phone: "i" };
const table = tokenTableOfRows(Array.from({ length: 12 }, (_, i) => ({ ...row, utterance: `u${i >> 1}` })));
const rows = Uint32Array.from({ length: 12 }, (_, i) => i);

test("everyNthRecording keeps whole recordings and says how many", () => {
  expect(everyNthRecording(table, rows, 12)).toEqual({ rows, warnings: [] });
  const got = everyNthRecording(table, rows, 5);
  expect([...got.rows]).toEqual([0, 1, 6, 7]);
  expect(got.warnings).toEqual([everyNth(3, 4, 12)]);
});
