import { existsSync } from "node:fs";
import { join } from "node:path";
import { Command } from "commander";
import * as v from "valibot";
import { UserError } from "../../../src/messages/userError.ts";
import { badOption, voiceMissing } from "./messages.ts";
import { speakers } from "./speakers.ts";

const number = (wanted: string) => v.pipe(v.string(), v.transform(Number), v.number(wanted));
const whole = (least: number, wanted: string) =>
  v.pipe(number(wanted), v.integer(wanted), v.minValue(least, wanted));
const readers = `a whole number from 1 to ${speakers.length}`;

const schema = v.object({
  voices: v.string(),
  out: v.string(),
  seed: whole(0, "a whole number from 0"),
  utterances: v.optional(whole(1, "a whole number from 1")),
  speakers: v.pipe(whole(1, readers), v.maxValue(speakers.length, readers)),
  format: v.picklist(["flac", "wav"], "flac or wav"),
  degraded: v.optional(v.string()),
  snr: number("a number of dB"),
  rt60: v.pipe(number("seconds, up to 5"), v.gtValue(0, "more than 0 s"), v.maxValue(5, "at most 5 s")),
});
export type Options = v.InferOutput<typeof schema>;

/** Reads the command line. Throws UserError for a value that cannot be used or a voice that is not there. */
export function readOptions(argv: readonly string[], demoFolder: string): Options {
  const given = new Command("demo:make")
    .description("Makes the built-in demo, or a larger corpus of synthetic speech with known phone times.")
    .requiredOption(
      "--voices <dir>",
      "folder with mei.htsvoice and tohoku-{neutral,happy,sad,angry}.htsvoice",
    )
    .option("--out <dir>", "where to write", demoFolder)
    .option("--seed <n>", "the same seed gives the same bytes", "1")
    .option("--utterances <n>", "so many combined sentences instead of the demo's own")
    .option("--speakers <n>", "how many of the readers", String(speakers.length))
    .option("--format <flac|wav>", "audio format", "flac")
    .option("--degraded <dir>", "also write a twin with a room and noise (with --format wav)")
    .option("--snr <db>", "speech to noise of the twin", "20")
    .option("--rt60 <sec>", "reverberation time of the twin", "0.3")
    .parse(argv)
    .opts();
  const parsed = v.safeParse(schema, given);
  if (!parsed.success) {
    const [{ path, message }] = parsed.issues;
    const name = String(path?.[0].key);
    throw new UserError(badOption(name, String(given[name]), message));
  }
  const { degraded, format } = parsed.output;
  if (degraded !== undefined && format !== "wav") {
    throw new UserError(badOption("format", format, "wav when --degraded is given"));
  }
  for (const { voice } of speakers.slice(0, parsed.output.speakers)) {
    const file = join(parsed.output.voices, `${voice}.htsvoice`);
    if (!existsSync(file)) throw new UserError(voiceMissing(file));
  }
  return parsed.output;
}
