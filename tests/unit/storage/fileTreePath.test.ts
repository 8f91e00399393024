import { expect, test } from "vitest";
import { compareCodePoints, insidePath } from "../../../src/storage/fileTreePath.ts";

test.each([
  ["a/b.wav", "a/b.wav"],
  ["./a//b.wav", "a/b.wav"],
  ["a\\b.wav", "a/b.wav"],
  ["a/../b.wav", "b.wav"],
  ["か\u3099.wav", "が.wav"],
  ["a/", "a"],
])("insidePath(%j) is %j", (written, path) => {
  expect(insidePath(written)).toBe(path);
});

test.each(["", ".", "..", "../a", "a/../../b", "/a", "\\a", "C:\\a", "c:/a", "..\\a", "a\0b"])(
  "insidePath(%j) refuses",
  (written) => {
    expect(insidePath(written)).toBeNull();
  },
);

test("compareCodePoints puts U+FF21 before U+20000, as UTF-8 bytes do", () => {
  const words = ["\u{20000}", "\uff21", "a", "ab", "", "B", "\ud7ff", "\ue000"];
  const byBytes = [...words].sort((a, b) => Buffer.compare(Buffer.from(a), Buffer.from(b)));
  expect([...words].sort(compareCodePoints)).toEqual(byBytes);
});
