import { describe, expect, test } from "vitest";
import { english } from "../../../src/interface/english/index.ts";
import {
  type InterfaceText,
  inLanguage,
  interfaceText,
  localAddress,
  pageAddress,
  speak,
} from "../../../src/interface/interfaceText.ts";
import { japanese } from "../../../src/interface/japanese.ts";
import { languageOf, languages } from "../../../src/interface/languages.ts";
import { translated, untranslated } from "../../../src/interface/translation.ts";

describe("translated() and untranslated()", () => {
  const base = { a: { b: "one", c: (n: number) => `${n}` }, d: ["x"], e: "two" };
  test("take what is translated and English for the rest, and say what is missing", () => {
    const half = { a: { b: "eins" }, d: ["y", "z"] };
    const merged = translated<typeof base>(base, half);
    expect([merged.a.b, merged.a.c(3), merged.d, merged.e]).toEqual(["eins", "3", ["y", "z"], "two"]);
    expect(untranslated<typeof base>(base, half)).toEqual(["a.c", "e"]);
    expect(base.a.b).toBe("one");
  });
});

test("inLanguage() speaks the language inside and the one before outside, also after an error", () => {
  const english = interfaceText().navigation.skip;
  expect(inLanguage(languageOf("ja"), () => interfaceText().navigation.skip)).not.toBe(english);
  expect(() =>
    inLanguage(languageOf("ja"), () => {
      throw new Error("no");
    }),
  ).toThrow("no");
  expect(interfaceText().navigation.skip).toBe(english);
});

test("pageAddress() leads to the page in the language, whatever stands behind its name", () => {
  expect(pageAddress("/devoicing?vowel=u")).toBe("/devoicing?vowel=u");
  expect(inLanguage(languageOf("ja"), () => pageAddress("/devoicing?vowel=u"))).toBe("/ja/devoicing?vowel=u");
  expect(localAddress("#id", "ja")).toBe("#id");
  expect(languageOf("fr")).toBe(languages[0]);
});

test("speak() stays until another language is spoken", () => {
  speak(languageOf("ja"));
  expect(pageAddress("/")).toBe("/ja/");
  speak(languages[0]!);
  expect(pageAddress("/")).toBe("/");
});

/** Symbols, numbers and words of the trade that are the same in every language, and what another text stands in for. */
const alike = [
  /\.description$/, // site.descriptions gives them in each language
  /^cite\.(bibtex|csl)$/,
  /^listen\.(hundredMs|speeds\..*)$/,
  /^lookUp\.(placeholder|exampleWords|command|heading)$/,
  /^timing\.(steps\.columns\.share|rhythm\.part|rhythm\.measures\.\w+\.name)$/,
  /^vowelSpace\.chart\.(axes\.hz|columns)\.f[12]$/,
  /^words\.targets\..*\.example$/,
];

test("everything that differs between languages is in Japanese", () => {
  const missing = untranslated<InterfaceText>(english, japanese);
  expect(missing.filter((name) => !alike.some((pattern) => pattern.test(name)))).toEqual([]);
});
