import { type Command, InvalidArgumentError, Option } from "commander";
import { attestedNear } from "../findings/words/attested.ts";
import { fewAlike } from "../findings/words/devoicingTable.ts";
import { type DrillWords, defaultDrillOptions, drillWords } from "../findings/words/drillWords.ts";
import { vowelsOf } from "../findings/words/environment.ts";
import { fewForTarget } from "../findings/words/fewForTarget.ts";
import { handout } from "../findings/words/handout.ts";
import { lookUp } from "../findings/words/lookUp.ts";
import { indexSaid, saidWords } from "../findings/words/saidWords.ts";
import { kanaOfSound } from "../findings/words/sound.ts";
import { soundsOfKana } from "../findings/words/soundsOfKana.ts";
import { type Target, targets } from "../findings/words/targets.ts";
import { defaultWeights, type Part, parts, type Weights } from "../findings/words/weights.ts";
import { UserError } from "../messages/userError.ts";
import * as messages from "../messages/words.ts";
import { software } from "../software.ts";
import { type LoadedWords, loadWords } from "./loadWords.ts";
import { printable } from "./printable.ts";
import { printNotes } from "./printEstimates.ts";
import { printLookUp, printSets, wordTable } from "./printWords.ts";
import { writeClips } from "./writeWordClips.ts";

interface WordFlags {
  readonly target: readonly Target[];
  readonly pairs: number;
  readonly maxMorae: number;
  readonly minSpeakers: number;
  readonly heardOnly: boolean;
  readonly listOnly: boolean;
  readonly heldOut: number;
  readonly seed: number;
  readonly weight: Weights;
  readonly list?: string;
  readonly accents?: string;
  readonly dataset?: string;
  readonly level: number;
  readonly lookUp?: string;
  readonly accent?: number;
  readonly format: "text" | "csv" | "tsv" | "json" | "html";
  readonly clips?: string;
  readonly audio?: string;
  readonly paper: "A4" | "Letter";
}

/** Longer than any word; what is far longer takes seconds to look up (our choice, no published source). */
const mostCharacters = 100;

export function registerWords(program: Command): void {
  const { size, maxMorae, minSpeakers, heldOutShare, seed } = defaultDrillOptions;
  program
    .command("words")
    .summary("drill words and pairs, chosen by the corpus's evidence")
    .description(
      "Chooses words and minimal pairs for a lesson from the dictionary, the corpus and your own list, each with the evidence that stands behind it; or looks one word up.",
    )
    .argument("<results>", "results folder that `morascope run … --out` wrote")
    .addOption(
      new Option("--target <names>", `what to drill, joined by commas: ${targets.join(", ")}`)
        .argParser(targetList)
        .default(targets as readonly Target[], "all"),
    )
    .option("--pairs <n>", "words, pairs or triplets of each target", whole(1), size)
    .option("--max-morae <n>", "morae of the longest word", whole(1), maxMorae)
    .option(
      "--min-speakers <n>",
      "speakers to hear, of the words or of the same environment",
      whole(0),
      minSpeakers,
    )
    .option("--heard-only", "only words that so many speakers said themselves", false)
    .option("--list-only", "only words of your own list (--list)", false)
    .option(
      "--held-out <share>",
      "share of words and of speakers to keep for a later test",
      share,
      heldOutShare,
    )
    .option("--seed <n>", "another seed, another set; the same seed, the same set", whole(0), seed)
    .addOption(
      new Option(
        "--weight <part=number>",
        `how much a part of the score counts, may be repeated: ${parts.map((part) => `${part}=${defaultWeights[part]}`).join(", ")}`,
      )
        .argParser(weight)
        .default(defaultWeights, "as listed"),
    )
    .option(
      "--list <file>",
      "your words: word, tab, reading in kana, and if known tab and accent, gloss, level",
    )
    .option(
      "--accents <file>",
      "a lexicon of accents: word, tab, reading, tab, mora after which the pitch falls",
    )
    .option("--dataset <name>", "dataset whose evidence counts (default: the one with most)")
    .option("--level <share>", "confidence level of the intervals", level, 0.95)
    .option("--look-up <word>", "show one word's beats and the chance of each vowel, instead of a set")
    .option("--accent <n>", "with --look-up: the mora after which the pitch falls, 0 for none", whole(0))
    .addOption(
      new Option("--format <kind>", "how to print; html is a sheet to print")
        .choices(["text", "csv", "tsv", "json", "html"])
        .default("text"),
    )
    .addOption(new Option("--paper <size>", "paper of the sheet").choices(["A4", "Letter"]).default("A4"))
    .option("--clips <file>", "also write the words' clips into this zip, as far as the licence allows")
    .option("--audio <folder>", "with --clips: the dataset's folder")
    .addHelpText(
      "after",
      "\nExamples:\n  morascope words results --target vowel-length --pairs 12 --max-morae 4 --min-speakers 3\n  morascope words results --look-up 菊 --accent 2\n",
    )
    .action(async (folder: string, flags: WordFlags) => {
      if (flags.clips !== undefined && flags.audio === undefined)
        throw new UserError(messages.clipsNeedAudio());
      const characters = [...(flags.lookUp ?? "")].length;
      if (characters > mostCharacters)
        throw new UserError(messages.lookUpTooLong(characters, mostCharacters));
      const loaded = await loadWords(folder, flags);
      if (flags.lookUp !== undefined) {
        process.stdout.write(printable(lookedUp(loaded, flags.lookUp, flags)));
        return;
      }
      const words = chooseWords(loaded, flags);
      if (flags.clips !== undefined) printNotes(await writeClips(words, loaded, flags.clips, flags.audio));
      process.stdout.write(printed(words, loaded, flags));
    });
}

function chooseWords({ material, notices, notes }: LoadedWords, flags: WordFlags): DrillWords {
  const words = drillWords(material, {
    targets: flags.target,
    size: flags.pairs,
    maxMorae: flags.maxMorae,
    minSpeakers: flags.minSpeakers,
    heardOnly: flags.heardOnly,
    listOnly: flags.listOnly,
    heldOutShare: flags.heldOut,
    seed: flags.seed,
    weights: flags.weight,
  });
  const few = fewAlike(material.evidence.devoicing);
  const { heardOnly, listOnly } = flags;
  const given = { heardOnly, listOnly, minSpeakers: flags.minSpeakers > 0, list: flags.list !== undefined };
  printNotes([
    ...notices,
    ...notes,
    ...words.sets.flatMap(({ target, items, uncovered }) => [
      ...(items.length < flags.pairs
        ? [
            messages.tooFewForSet(target, items.length, flags.pairs, {
              few: fewForTarget(target, few),
              given,
            }),
          ]
        : []),
      ...(uncovered.length > 0 ? [messages.environmentsLeft(target, uncovered.length)] : []),
    ]),
  ]);
  return words;
}

function printed(words: DrillWords, { citations, notices, notes }: LoadedWords, flags: WordFlags): string {
  if (flags.format === "json") return `${JSON.stringify({ ...words, citations, notices, notes }, null, 2)}\n`;
  if (flags.format === "html") return handout(words, { paper: flags.paper, citations, notices, software });
  if (flags.format === "text") return printable(printSets(words));
  return wordTable(words, flags.format, { dataset: words.devoicing.dataset, citations, notices });
}

function lookedUp({ material, notices, notes }: LoadedWords, text: string, flags: WordFlags): string {
  const { lexicon, evidence } = material;
  const known = lexicon.bySurface.get(text) ?? [];
  const sounds =
    known.length > 0
      ? known.map(({ sound }) => sound)
      : soundsOfKana(text, (sound) => lexicon.bySound.has(sound));
  if (sounds.length === 0) throw new UserError(messages.wordUnknown(text));
  printNotes([...notices, ...notes]);
  const said = indexSaid(saidWords(evidence.heard));
  const words = sounds.map((sound, at) => {
    const accent = flags.accent ?? known[at]?.accents?.[0] ?? null;
    const word = lookUp(sound, accent, evidence.devoicing);
    const near = vowelsOf(sound, accent).map((vowel) => ({
      kana: kanaOfSound(sound[vowel.mora]!),
      attested: attestedNear(sound, vowel, said, 4),
    }));
    return { word, near };
  });
  if (flags.format === "json") return `${JSON.stringify({ surface: text, readings: words }, null, 2)}\n`;
  return words.map(({ word, near }) => printLookUp(text, word, near)).join("\n");
}

const whole = (least: number) => (text: string) => {
  const value = Number(text);
  if (text.trim() === "" || !Number.isInteger(value) || value < least)
    throw new InvalidArgumentError(`It must be a whole number from ${least} on.`);
  return value;
};

function share(text: string): number {
  const value = Number(text);
  if (!(text.trim() !== "" && value >= 0 && value < 1))
    throw new InvalidArgumentError("It must be from 0 to below 1, e.g. 0.25.");
  return value;
}

function level(text: string): number {
  const value = Number(text);
  if (!(value >= 0.5 && value < 1))
    throw new InvalidArgumentError("It must be at least 0.5 and below 1, e.g. 0.95.");
  return value;
}

function targetList(text: string): readonly Target[] {
  return text.split(",").map((name) => {
    const found = targets.find((target) => target === name.trim());
    if (found === undefined) throw new InvalidArgumentError(messages.targetUnknown(name.trim(), targets));
    return found;
  });
}

function weight(text: string, so: Weights): Weights {
  const [, part, number] = /^([a-z]+)=(\d+(?:\.\d+)?)$/u.exec(text) ?? [];
  if (!parts.includes(part as Part)) throw new InvalidArgumentError(messages.weightUnreadable(text, parts));
  return { ...so, [part as Part]: Number(number) };
}
