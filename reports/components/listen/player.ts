import { cutClip } from "../../../src/publish/cutClip.ts";
import { levelled } from "../../../src/publish/levelled.ts";

/** A decoded recording: as it is played, and at the rate it was measured at. */
export interface HeardRecording {
  readonly samples: Float32Array;
  readonly sampleRateHz: number;
  /** Mono, 16 kHz. */
  readonly measured: Float32Array;
}

export const measuredRateHz = 16_000;

/** Silence between two rounds of a loop, so that each is heard for itself. */
const restMs = 220;

export const speeds = [1, 0.75, 0.5] as const;

/** Fetches and decodes a recording of the site; brought to one loudness for the ear alone. Throws where it cannot be had. */
export async function fetchRecording(address: string): Promise<HeardRecording> {
  const answer = await fetch(address);
  if (!answer.ok) throw new Error(`${answer.status}`);
  const bytes = await answer.arrayBuffer();
  const sampleRateHz = new DataView(bytes).getUint32(24, true);
  const measured = await decode(bytes.slice(0), measuredRateHz);
  const samples = sampleRateHz === measuredRateHz ? measured : await decode(bytes, sampleRateHz);
  return { samples: levelled(samples, 0, samples.length), sampleRateHz, measured };
}

async function decode(bytes: ArrayBuffer, sampleRateHz: number): Promise<Float32Array> {
  const context = new OfflineAudioContext(1, 1, sampleRateHz);
  return (await context.decodeAudioData(bytes)).getChannelData(0);
}

/** What is being played, in ms of the utterance. */
export interface Playing {
  readonly fromMs: number;
  readonly toMs: number;
  readonly loop: boolean;
}

/** Plays stretches of one recording, slower without a change of pitch, once or over and over. */
export class Player {
  readonly #audio = new Audio();
  readonly #tell: (playing: Playing | null, atMs: number | null) => void;
  #recording: HeardRecording | null = null;
  #playing: Playing | null = null;
  #speed = 1;
  #address = "";
  #frame = 0;

  /** `tell` hears of every start and stop, and while it plays of the time in the utterance. */
  constructor(tell: (playing: Playing | null, atMs: number | null) => void) {
    this.#tell = tell;
    this.#audio.preservesPitch = true;
    this.#audio.addEventListener("ended", () => this.stop());
  }

  set recording(recording: HeardRecording | null) {
    this.stop();
    this.#recording = recording;
  }

  set speed(speed: number) {
    this.#speed = speed;
    this.#audio.playbackRate = speed;
  }

  get playing(): Playing | null {
    return this.#playing;
  }

  /** Resolves once it plays; rejects where the browser does not let it. */
  async play(playing: Playing): Promise<void> {
    this.stop();
    const recording = this.#recording;
    if (recording === null) return;
    const { samples, sampleRateHz } = recording;
    const at = (ms: number) => Math.round((ms / 1000) * sampleRateHz);
    const stretch = samples.slice(Math.max(0, at(playing.fromMs)), at(playing.toMs));
    const whole = new Float32Array(stretch.length + (playing.loop ? at(restMs * this.#speed) : 0));
    whole.set(fadedOut(stretch, at(fadeMs)));
    const wav = cutClip(whole, sampleRateHz, 0, (1000 * whole.length) / sampleRateHz, 0);
    this.#address = URL.createObjectURL(new Blob([wav as BlobPart], { type: "audio/wav" }));
    this.#audio.src = this.#address;
    this.#audio.loop = playing.loop;
    this.#audio.playbackRate = this.#speed;
    this.#playing = playing;
    await this.#audio.play();
    this.#follow();
  }

  stop(): void {
    if (this.#playing === null) return;
    cancelAnimationFrame(this.#frame);
    this.#audio.pause();
    this.#audio.removeAttribute("src");
    URL.revokeObjectURL(this.#address);
    this.#playing = null;
    this.#tell(null, null);
  }

  #follow(): void {
    const playing = this.#playing;
    if (playing === null) return;
    const atMs = playing.fromMs + 1000 * this.#audio.currentTime;
    this.#tell(playing, Math.min(playing.toMs, atMs));
    this.#frame = requestAnimationFrame(() => this.#follow());
  }
}

const fadeMs = 5;

/** So that the silence after a round of a loop does not click. */
function fadedOut(samples: Float32Array, length: number): Float32Array {
  const fade = Math.min(length, samples.length);
  return samples.map((sample, i) => sample * Math.min(1, (samples.length - 1 - i) / fade));
}
