import { spawnSync } from "node:child_process";
import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { environmentOf, groupOf } from "../../../src/findings/words/environment.ts";
import { isDevoiceable } from "../../../src/phonology/environment.ts";
import { describeWithData } from "../../helpers/sharedData.ts";
import { tempFolder } from "../../helpers/tempFolder.ts";

const dictionary = "/var/lib/mecab/dic/open-jtalk/naist-jdic";
const installed = existsSync(dictionary) && spawnSync("open_jtalk", []).error === undefined;
if (!installed) console.log("skipped: text rule against Open JTalk: open_jtalk is not installed");

interface Label {
  readonly phone: string;
  readonly own: string;
  readonly onNucleus: boolean;
}

/** Phones of Open JTalk's full-context labels; upper case is devoiced by its rule, A: the distance to the nucleus. */
function labelsOf(trace: string): Label[] {
  const part = trace.slice(trace.indexOf("[Output label]"), trace.indexOf("[Global parameter]"));
  return part
    .split("\n")
    .filter((line) => /^\d/u.test(line))
    .map((line) => {
      const own = /-([^+]+)\+/u.exec(line)![1]!;
      const phone =
        own === "sil" || own === "pau" ? "pause" : /^[AIUEO]$/u.test(own) ? own.toLowerCase() : own;
      return { phone, own, onNucleus: /\/A:0\+/u.test(line) };
    });
}

/** Why the two rules differ; null when nothing of this explains it. */
function whyNot(labels: readonly Label[], i: number, ours: boolean): string | null {
  const [before, after] = [labels[i - 1]!.phone, labels[i + 1]!.phone];
  const devoiced = (at: number) => /^[IU]$/u.test(labels[at]?.own ?? "");
  if (!ours)
    return /^[dm][ea]sU$/u.test(
      labels
        .slice(i - 3, i + 1)
        .map(({ own }) => own)
        .join(""),
    )
      ? "です and ます before any sound"
      : null;
  if (labels[i]!.onNucleus) return "not on the accent nucleus";
  if (devoiced(i - 2) || devoiced(i + 2)) return "never two in a row";
  if (after === "cl" || before === "cl") return "not beside a doubled consonant";
  if (after === "pause") return "before a pause only です and ます";
  const fricatives = ["sibilant", "breath"];
  return fricatives.includes(groupOf(before)!) && fricatives.includes(groupOf(after)!)
    ? "not between like fricatives"
    : null;
}

/**
 * The rule that proposes environments (never evidence) against the devoicing rule of Open JTalk (Debian open-jtalk,
 * naist-jdic) on sentences of the ITA set (Unlicense). Theirs is narrower by design: it predicts, ours only says where
 * devoicing may occur.
 */
describeWithData("the text rule of devoicing", ["ita-labels", "voices"], ([ita, voices]) => {
  test.skipIf(!installed)(
    "differs from Open JTalk's only for reasons that are known, environment by environment",
    () => {
      const folder = tempFolder();
      const sentences = readFileSync(join(ita!, "transcript.txt"), "utf8").trim().split("\n").slice(0, 60);
      const table = new Map<string, { agree: number; reasons: Map<string, number> }>();
      const unexplained: string[] = [];
      let vowels = 0;
      let agree = 0;
      for (const line of sentences) {
        writeFileSync(join(folder, "text"), line.slice(line.indexOf(":") + 1, line.lastIndexOf(",")));
        const [trace, text, voice] = [
          join(folder, "trace"),
          join(folder, "text"),
          join(voices!, "mei.htsvoice"),
        ];
        spawnSync("open_jtalk", ["-x", dictionary, "-m", voice, "-ot", trace, "-ow", "/dev/null", text]);
        const labels = labelsOf(readFileSync(trace, "utf8"));
        for (const [i, { phone, own, onNucleus }] of labels.entries()) {
          if (phone !== "i" && phone !== "u") continue;
          const [before, after] = [labels[i - 1]!.phone, labels[i + 1]!.phone];
          const ours = isDevoiceable(before, phone, after);
          const theirs = own !== phone;
          vowels++;
          const where = environmentOf({
            vowel: phone,
            long: false,
            before,
            after,
            accented: onNucleus,
            neighbour: false,
          });
          const name = where.split(" ").slice(1, 3).join(" > ") || where;
          const row = table.get(name) ?? { agree: 0, reasons: new Map<string, number>() };
          table.set(name, row);
          if (ours === theirs) {
            agree++;
            row.agree++;
            continue;
          }
          const reason = whyNot(labels, i, ours);
          if (reason === null)
            unexplained.push(
              `${name}: ${labels
                .slice(i - 2, i + 3)
                .map((one) => one.own)
                .join(" ")}`,
            );
          else row.reasons.set(reason, (row.reasons.get(reason) ?? 0) + 1);
        }
      }
      const lines = [...table].sort().map(([name, row]) => {
        const reasons = [...row.reasons].map(([reason, n]) => `${n} ${reason}`).join(", ");
        return `${name.padEnd(24)} agree ${String(row.agree).padStart(4)}${reasons === "" ? "" : `; differ: ${reasons}`}`;
      });
      console.log(
        `${vowels} vowels /i/ and /u/ in ${sentences.length} sentences, ${agree} agree\n${lines.join("\n")}`,
      );
      expect(vowels).toBeGreaterThan(400);
      expect(agree / vowels).toBeGreaterThan(0.9);
      expect(unexplained).toEqual([]);
    },
    300_000,
  );
});
