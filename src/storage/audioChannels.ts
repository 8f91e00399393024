import { type AudioWording, audioChannelsCancel } from "../messages/audio.ts";

/** A channel this much quieter than the loudest holds no speech of its own. */
const nearSilentDb = 20;

export interface Mono {
  readonly samples: Float32Array;
  /** How one channel was made of several, in a few words. */
  readonly channelRule: string;
  readonly warnings: readonly AudioWording[];
}

/**
 * One channel of several: the loudest when all others are at least 20 dB quieter, or when averaging would cancel them
 * out; else the average.
 */
export function toMono(channelData: readonly Float32Array[]): Mono {
  if (channelData.length === 1) return { samples: channelData[0]!, channelRule: "mono", warnings: [] };
  const powers = channelData.map(power);
  const loudest = powers.indexOf(Math.max(...powers));
  const others = Math.max(...powers.filter((_, channel) => channel !== loudest));
  const name = `channel ${loudest + 1} of ${channelData.length}`;
  if (others < powers[loudest]! * 10 ** (-nearSilentDb / 10))
    return {
      samples: channelData[loudest]!,
      channelRule: `${name}, the others being near silent`,
      warnings: [],
    };
  const samples = average(channelData);
  if (power(samples) < others * 10 ** (-nearSilentDb / 10))
    return {
      samples: channelData[loudest]!,
      channelRule: `${name}, the channels cancelling each other out`,
      warnings: [audioChannelsCancel()],
    };
  return { samples, channelRule: `average of ${channelData.length} channels`, warnings: [] };
}

function average(channelData: readonly Float32Array[]): Float32Array {
  const samples = new Float32Array(channelData[0]!.length);
  for (const channel of channelData)
    for (let index = 0; index < samples.length; index++) samples[index]! += channel[index]!;
  for (let index = 0; index < samples.length; index++) samples[index]! /= channelData.length;
  return samples;
}

function power(samples: Float32Array): number {
  let sum = 0;
  for (let index = 0; index < samples.length; index++) sum += samples[index]! * samples[index]!;
  return sum / samples.length;
}
