import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { readAudio } from "../../../src/storage/readAudio.ts";

const folder = join(import.meta.dirname, "../../../data/demo/audio");

test("readAudio(flac) gives every sample that the file's header promises, to the last block", async () => {
  const files = readdirSync(folder, { recursive: true, encoding: "utf8" })
    .filter((file) => file.endsWith(".flac"))
    .sort();
  for (const file of files.filter((_, i) => i % 10 === 0)) {
    const bytes = readFileSync(join(folder, file));
    // RFC 9639, section 8.2: total samples are the low 36 bits of bytes 21 to 25 of the stream
    const samples = (bytes[21]! & 0x0f) * 2 ** 32 + bytes.readUInt32BE(22);
    expect((await readAudio(bytes, file)).samples.length, file).toBe(samples);
  }
});

test("readAudio(flac) gives the same samples whatever was decoded before: a tag behind the sound, a damaged file", async () => {
  const [first, second] = readdirSync(folder, { recursive: true, encoding: "utf8" })
    .filter((file) => file.endsWith(".flac"))
    .sort()
    .map((file) => readFileSync(join(folder, file)));
  const alone = (await readAudio(second!, "second.flac")).samples;
  const tag = Buffer.alloc(128, 0x20);
  tag.write("TAGtitle");
  const tagged = Buffer.concat([first!, tag]);
  const damaged = Buffer.from(first!).fill(0x55, first!.length >> 1);
  for (const before of [tagged, damaged, first!]) {
    await readAudio(before, "first.flac").catch(() => {});
    expect((await readAudio(second!, "second.flac")).samples).toEqual(alone);
    const [one, other] = await Promise.all([
      readAudio(second!, "second.flac"),
      readAudio(second!, "second.flac"),
    ]);
    expect(one.samples).toEqual(alone);
    expect(other.samples).toEqual(alone);
  }
});
