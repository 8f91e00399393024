import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { UserError } from "../../../src/messages/userError.ts";
import { runCommand } from "./commands.ts";
import { type LabelPhone, parseLabel } from "./label.ts";
import { dictionaryMissing } from "./messages.ts";

const dictionary = "/var/lib/mecab/dic/open-jtalk/naist-jdic";

/** What Open JTalk makes of a sentence: how each word is pronounced, and its phones in context. */
export interface Analysis {
  /** Katakana as pronounced, a word each; a comma, full stop or question mark is `、`. */
  readonly words: readonly string[];
  readonly phones: readonly LabelPhone[];
}

/** Analyses one sentence. Durations are those the voice would use by itself. */
export function analyse(text: string, voiceFile: string, scratch: string): Analysis {
  if (!existsSync(dictionary)) {
    throw new UserError(dictionaryMissing(dictionary));
  }
  const [input, trace] = [join(scratch, "text.txt"), join(scratch, "analysis.txt")];
  writeFileSync(input, `${text}\n`);
  runCommand("open_jtalk", ["-x", dictionary, "-m", voiceFile, "-ot", trace, input]);
  const sections = readFileSync(trace, "utf8").split(/^\[(.+)\]$/m);
  const section = (name: string) => lines(sections[sections.indexOf(name) + 1] ?? "");
  return {
    words: section("Text analysis result").map((line) => line.split(",")[9]!.replaceAll("’", "")),
    phones: section("Output label").map(parseLabel),
  };
}

function lines(text: string): string[] {
  return text.split("\n").filter((line) => line !== "");
}
