import { describe, expect, test } from "vitest";
import { readLabels } from "../../../src/alignment/readLabels.ts";

const rules = (text: string, format: Parameters<typeof readLabels>[1] = "start-end-phone") =>
  readLabels(text, format).problems.map(({ rule, line, fatal }) => ({ rule, line, fatal }));

describe("readLabels(text, format)", () => {
  test("reads seconds when any time has a decimal point", () => {
    const { phones, problems } = readLabels("0 0.285 sil\n0.285 0.56 e\n0.56 0.645 q\n", "start-end-phone");
    expect(problems).toEqual([]);
    expect(phones.map(({ phone, startMs, endMs }) => [phone, startMs, endMs])).toEqual([
      ["pause", 0, 285],
      ["e", 285, 560],
      ["cl", 560, 645],
    ]);
  });

  test("reads 100 ns units when all times are whole numbers", () => {
    const { phones } = readLabels("0 3000000 sil\n3000000 4099999 a", "start-end-phone");
    expect(phones.map(({ endMs }) => endMs)).toEqual([300, 409.9999]);
  });

  test("reads tabs, CRLF and blank lines as any other white space", () => {
    expect(readLabels("0.0\t0.1\tsilB\r\n\r\n0.1\t0.2\to:\r\n", "start-end-phone").phones).toMatchObject([
      { phone: "pause" },
      { phone: "o", long: true, startMs: 100, endMs: 200, line: 3 },
    ]);
  });

  test("takes upper-case vowels as devoiced", () => {
    const { phones } = readLabels("0.0 0.1 s\n0.1 0.2 U", "start-end-phone");
    expect(phones.map(({ phone, devoiced }) => [phone, devoiced])).toEqual([
      ["s", false],
      ["u", true],
    ]);
  });

  test("reads NIST CTM: start and duration, comments skipped", () => {
    const { phones, problems } = readLabels(";; made by hand\nr1 1 0.00 0.25 k 0.9\nr1 1 0.25 1 a\n", "ctm");
    expect(problems).toEqual([]);
    expect(phones.map(({ phone, startMs, endMs }) => [phone, startMs, endMs])).toEqual([
      ["k", 0, 250],
      ["a", 250, 1250],
    ]);
  });

  test("reads full-context lines: phone, accent nucleus, and null where flat and final accent look alike", () => {
    const context = (start: number, phone: string, a: string) =>
      `${start}00000 ${start + 1}00000 x^y-${phone}+a=b/A:${a}/B:xx-xx_xx`;
    const { phones } = readLabels(
      [
        context(0, "a", "-1+1+3"),
        context(1, "m", "0+2+2"),
        context(2, "e", "1+3+1"),
        context(3, "o", "0+3+1"),
      ].join("\n"),
      "full-context",
    );
    expect(phones.map(({ phone, accented }) => [phone, accented])).toEqual([
      ["a", false],
      ["m", true],
      ["e", false],
      ["o", null],
    ]);
  });

  test.each([
    ["0.0 0.1 a\n0.1 0.2\n", "label-columns", 2],
    ["0.0 zero a\n", "label-time-not-a-number", 1],
    ["NaN 0.1 a\n", "label-time-not-a-number", 1],
    ["0x1 0.1 a\n", "label-time-not-a-number", 1],
    ["0.0 Infinity a\n", "label-time-not-a-number", 1],
    ["-0.2 0.1 a\n", "label-time-negative", 1],
    ["0.0 0.1 a\n0.3 0.2 i\n", "label-times-reversed", 2],
    ["0.0 0.1 a\n0.1 0.1 i\n", "label-times-reversed", 2],
    ["0.0 0.2 a\n0.1 0.3 i\n", "label-times-overlap", 2],
    ["0.0 0.1 a\n0.1 0.2 ö\n", "label-phone-unknown", 2],
    ["", "label-empty", 1],
  ])("leaves the file out and names the line: %j is %s", (text, rule, line) => {
    expect(rules(text)).toContainEqual({ rule, line, fatal: true });
    expect(readLabels(text, "start-end-phone").phones).toEqual([]);
  });

  test("keeps a file with an unlabelled stretch, and says where it is", () => {
    expect(rules("0.0 0.1 a\n0.3 0.4 i\n")).toEqual([{ rule: "label-times-gap", line: 2, fatal: false }]);
    expect(readLabels("0.0 0.1 a\n0.3 0.4 i\n", "start-end-phone").phones).toHaveLength(2);
  });

  test("accepts times that differ by the rounding of the label file", () => {
    expect(rules("0 4099999 a\n4100000 5000000 i\n")).toEqual([]);
    expect(rules("0 4100001 a\n4100000 5000000 i\n")).toEqual([]);
  });
});

test.each(["1e999", "1e300", "86400.1"])(
  "readLabels(a time of %s) is refused and not taken for a very long sound",
  (time) => {
    const { phones, problems } = readLabels(`0 0.1 k\n0.1 ${time} a\n`, "start-end-phone");
    expect(phones).toEqual([]);
    expect(problems.map(({ rule, line }) => [rule, line])).toEqual([["label-time-not-a-number", 2]]);
  },
);

test("readLabels(a million bad lines) tells the first fifty and stops", () => {
  const { phones, problems } = readLabels("x\n".repeat(1_000_000), "start-end-phone");
  expect([phones.length, problems.length]).toEqual([0, 50]);
  const wrong = readLabels("0 0.1 k\n0.2 0.1 a\n".repeat(1000), "start-end-phone").problems;
  expect(wrong.filter(({ fatal }) => fatal).length).toBe(50);
});
