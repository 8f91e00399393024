import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { audioChannelsDiffer, audioLengthUnknown } from "../../../src/messages/audio.ts";
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

test("readAudio(flac) refuses by name a header whose channels are not those of the sound, and one without a length", async () => {
  const sound = readFileSync(join(folder, "demo-01/demo-01-001.flac"));
  // RFC 9639, section 8.2: three bits of byte 20 are the channels less one, bytes 21 (low half) to 25 the total samples
  const channels = Buffer.from(sound);
  channels[20] = (channels[20]! & 0xf1) | (7 << 1);
  const endless = Buffer.from(sound).fill(0, 22, 26);
  endless[21] = endless[21]! & 0xf0;
  await expect(readAudio(channels, "a.flac")).rejects.toThrow(audioChannelsDiffer(1, 8).message);
  await expect(readAudio(endless, "a.flac")).rejects.toThrow(audioLengthUnknown().message);
});
