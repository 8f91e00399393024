import { expect, test } from "vitest";
import { unknownPhoneSelector } from "../../../src/messages/phonology.ts";
import { UserError } from "../../../src/messages/userError.ts";
import { expandSelector, matchesPhone, phoneClasses } from "../../../src/phonology/phoneClasses.ts";
import { phones } from "../../../src/phonology/phones.ts";

test("phoneClasses put every consonant but cl into exactly one manner class", () => {
  const manners = ["stop", "affricate", "fricative", "nasal", "liquid", "approximant", "geminate"] as const;
  for (const phone of phoneClasses.consonant)
    expect(
      manners.filter((name) => phoneClasses[name].includes(phone)),
      phone,
    ).toHaveLength(1);
});

test("phoneClasses split all phones into voiced, voiceless, the closure of geminates and pause", () => {
  const { voiced, voiceless, geminate, pause } = phoneClasses;
  const all = [...voiced, ...voiceless, ...geminate, ...pause];
  expect([...all].sort()).toEqual([...phones].sort());
});

test("expandSelector(list) joins phones and classes, each once, in the order of the table", () => {
  expect(expandSelector("affricate, k,ch")).toEqual(["k", "ch", "ts", "tsy"]);
});

test("matchesPhone(phone, selector) accepts the phone itself, a class and pause", () => {
  expect(matchesPhone("t", "t")).toBe(true);
  expect(matchesPhone("t", "voiceless")).toBe(true);
  expect(matchesPhone("cl", "voiceless")).toBe(false);
  expect(matchesPhone("cl", "voiceless,geminate")).toBe(true);
  expect(matchesPhone("pause", "voiceless")).toBe(false);
  expect(matchesPhone("pause", "pause")).toBe(true);
  expect(matchesPhone("ts", "t")).toBe(false);
});

test.each(["voicless", "", "t,", "T"])("expandSelector(%j) names the choices", (selector) => {
  const bad = selector.split(",").at(-1)!;
  const message = unknownPhoneSelector(bad, Object.keys(phoneClasses), phones);
  expect(() => expandSelector(selector)).toThrow(new UserError(message));
  expect(message).toContain("fricative");
});
