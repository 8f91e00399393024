import {
  audioChannelsDiffer,
  audioDamaged,
  audioLongerThanHeader,
  audioNoSamples,
  audioTooLong,
  audioTruncated,
  audioUnpacksTooFar,
} from "../messages/audio.ts";
import type { AudioHeader } from "./audioHeader.ts";
import { mostValues } from "./audioLimits.ts";
import { AudioRefused } from "./audioRefused.ts";

/** So small that even a file made to unpack to gigabytes gives at most some 300 MB before it is looked at again. */
const sliceBytes = 1 << 12;
/** No speech coder needs less than this; what goes on so for ten minutes holds no speech. */
const leastBytesPerSec = 50;
const longQuietSec = 600;

interface Decoded {
  readonly channelData: Float32Array[];
  readonly samplesDecoded: number;
  readonly errors: readonly { readonly message: string }[];
}

interface Tolerance {
  readonly missing: number;
  readonly extra: number;
}

export interface SliceDecoder {
  readonly ready: Promise<void>;
  decode(bytes: Uint8Array): Decoded | Promise<Decoded>;
  flush?(): Promise<Decoded>;
  free(): void;
}

/**
 * Decodes piece by piece and holds the result against the header: fewer samples are a file that is not whole, more are
 * a wrong header, and neither is speech to measure. `tolerance`, in frames, allows for coders whose length is not exact;
 * what they give beyond the promised length is cut off.
 */
export async function decodeInSlices(
  decoder: SliceDecoder,
  bytes: Uint8Array,
  header: AudioHeader,
  name: string,
  tolerance: Tolerance = { missing: 0, extra: 0 },
): Promise<Float32Array[]> {
  const { sampleRateHz, channels, durationSec, exact } = header;
  const promised = exact ? Math.round(durationSec * sampleRateHz) : Number.POSITIVE_INFINITY;
  const pieces: Float32Array[][] = [];
  let frames = 0;
  const take = ({ channelData, samplesDecoded, errors }: Decoded, bytesRead: number): void => {
    if (errors.length > 0) throw new AudioRefused(name, audioDamaged(errors[0]!.message));
    if (samplesDecoded > 0 && channelData.length < channels)
      throw new AudioRefused(name, audioChannelsDiffer(channelData.length, channels));
    frames += samplesDecoded;
    if (frames > promised + tolerance.extra) throw new AudioRefused(name, audioLongerThanHeader(durationSec));
    if (frames * channels > mostValues)
      throw new AudioRefused(name, audioTooLong(frames / sampleRateHz, channels, mostValues));
    const sec = frames / sampleRateHz;
    if (sec > longQuietSec && bytesRead < leastBytesPerSec * sec)
      throw new AudioRefused(name, audioUnpacksTooFar(bytesRead, sec));
    if (samplesDecoded > 0) pieces.push(channelData.slice(0, channels));
  };
  try {
    await decoder.ready;
    for (let start = 0; start < bytes.length; start += sliceBytes)
      take(await decoder.decode(bytes.subarray(start, start + sliceBytes)), start + sliceBytes);
    if (decoder.flush !== undefined) take(await decoder.flush(), bytes.length);
  } catch (error) {
    if (error instanceof AudioRefused) throw error;
    throw new AudioRefused(name, audioDamaged(error instanceof Error ? error.message : String(error)));
  } finally {
    decoder.free();
  }
  if (exact && frames < promised - tolerance.missing)
    throw new AudioRefused(name, audioTruncated(durationSec, frames / sampleRateHz));
  if (frames === 0) throw new AudioRefused(name, audioNoSamples());
  return joinPieces(pieces, channels, Math.min(frames, promised));
}

function joinPieces(pieces: readonly Float32Array[][], channels: number, frames: number): Float32Array[] {
  return Array.from({ length: channels }, (_, channel) => {
    const samples = new Float32Array(frames);
    let offset = 0;
    for (const piece of pieces) {
      const part = piece[channel]!.subarray(0, frames - offset);
      samples.set(part, offset);
      offset += part.length;
    }
    return samples;
  });
}
