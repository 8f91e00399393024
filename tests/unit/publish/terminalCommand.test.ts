import { expect, test } from "vitest";
import { explainCommand, ratesCommand, ratiosCommand } from "../../../src/publish/terminalCommand.ts";

test("ratesCommand names every field of the cut, and the level where it is not the usual one", () => {
  const filter = {
    dataset: "demo",
    labelSet: "labels",
    vowel: ["i", "u"],
    before: "voiceless",
    length: "short",
  };
  expect(ratesCommand(filter, ["after"], 0.95)).toBe(
    'npx morascope rates RESULTS --dataset demo --vowel "i,u" --before voiceless --length short --by after',
  );
  expect(ratesCommand({}, [], 0.9)).toBe("npx morascope rates RESULTS --length all --level 0.9");
});

test("ratesCommand quotes names so that no shell reads more than a word in them", () => {
  const of = (speaker: string) => ratesCommand({ speaker }, [], 0.95);
  expect(of("話者1")).toContain("--speaker 話者1 ");
  expect(of("speaker 01")).toContain('--speaker "speaker 01" ');
  expect(of("$(rm -r x)")).toContain("--speaker '$(rm -r x)' ");
  expect(of("it's `x`")).toContain("--speaker 'it'\\''s `x`' ");
  expect(of("a;b&c")).toContain('--speaker "a;b&c" ');
  expect(of("@x")).toContain('--speaker "@x" ');
  expect(of("%x%")).toContain('--speaker "%x%" ');
  expect(of("-x")).toContain('--speaker="-x" ');
});

test("commands are not given where the terminal could not make the cut", () => {
  expect(ratesCommand({ speaker: "a,b" }, [], 0.95)).toBeNull();
  expect(ratesCommand({ vowel: [] }, [], 0.95)).toBeNull();
  expect(ratesCommand({ accented: true }, [], 0.95)).toBeNull();
  expect(ratesCommand({ length: "unknown" }, [], 0.95)).toBeNull();
});

test("ratiosCommand and explainCommand name contrast, surroundings and question", () => {
  const options = { contrast: "vowel-length", surroundings: "pause", filter: { dataset: "d" } } as const;
  expect(ratiosCommand(options, ["phone"])).toBe(
    "npx morascope ratios RESULTS --contrast vowel-length --dataset d --surroundings pause --by phone",
  );
  expect(explainCommand("timing", "d e", 0.95)).toBe(
    'npx morascope explain RESULTS --what timing --dataset "d e"',
  );
});
