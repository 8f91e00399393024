/** Wording of what a recording can be refused or remarked for. The file is carried beside it. */
export interface AudioWording {
  readonly rule: string;
  readonly message: string;
  readonly wayOut: string;
}

const fetchAgain = "Fetch the file again, or export it again from its source.";
const saveAsWav =
  "Save it as WAV (PCM, 16 or 24 bits) or FLAC, for instance with `sox`, and name that file instead.";

export const audioEmpty = (): AudioWording => ({
  rule: "audio-empty",
  message: "The file is empty.",
  wayOut: fetchAgain,
});

export const audioFormatUnknown = (start: string): AudioWording => ({
  rule: "audio-format-unknown",
  message: `The file begins with ${start}, which is neither WAV, FLAC, MP3 nor Opus in Ogg.`,
  wayOut: saveAsWav,
});

export const audioCodec = (codec: string): AudioWording => ({
  rule: "audio-codec",
  message: `The sound is stored as ${codec}, which is not read.`,
  wayOut: saveAsWav,
});

export const audioHeaderBroken = (what: string): AudioWording => ({
  rule: "audio-header",
  message: `The header is damaged: ${what}.`,
  wayOut: fetchAgain,
});

export const audioChannels = (channels: number, most: number): AudioWording => ({
  rule: "audio-channels",
  message: `The header says ${channels} channels; 1 to ${most} can be read.`,
  wayOut: fetchAgain,
});

export const audioSampleRate = (rateHz: number, least: number, most: number): AudioWording => ({
  rule: "audio-sample-rate",
  message: `The header says ${rateHz} samples a second; ${least} to ${most} can be read.`,
  wayOut: "Check the recording. If only its header is wrong, write it again with the right rate.",
});

export const audioBitDepth = (bits: number, kind: string): AudioWording => ({
  rule: "audio-bit-depth",
  message: `The header says ${bits} bits a sample (${kind}); read are 8, 16, 24 and 32 bits, and floating point of 32 and 64.`,
  wayOut: saveAsWav,
});

export const audioTruncated = (promisedSec: number, foundSec: number): AudioWording => ({
  rule: "audio-truncated",
  message: `The file is not whole: its header promises ${seconds(promisedSec)}, only ${seconds(foundSec)} are there.`,
  wayOut: `${fetchAgain} A shorter recording would pass for faster speech, so it is not listened to.`,
});

export const audioUnpacksTooFar = (bytes: number, sec: number): AudioWording => ({
  rule: "audio-unpacks-too-far",
  message: `The first ${bytes} bytes unpack to ${seconds(sec)} of sound, which no speech does: it is silence, or made to fill memory.`,
  wayOut: "Listen to the file. If there is speech in it, save it again as WAV or FLAC.",
});

export const audioCutOff = (foundSec: number): AudioWording => ({
  rule: "audio-truncated",
  message: `The file is not whole: it breaks off inside its last piece, after ${seconds(foundSec)}.`,
  wayOut: `${fetchAgain} A shorter recording would pass for faster speech, so it is not listened to.`,
});

export const audioLongerThanHeader = (promisedSec: number): AudioWording => ({
  rule: "audio-longer-than-header",
  message: `The header promises ${seconds(promisedSec)}, but the file holds more.`,
  wayOut: fetchAgain,
});

export const audioLengthField = (bytes: number): AudioWording => ({
  rule: "audio-length-field",
  message: `The length in the header (${bytes} bytes of sound) was never filled in or is wrong, so nothing tells whether the file is whole.`,
  wayOut: "Open it in a sound editor or with `sox --ignore-length` and save it again.",
});

export const audioLengthUnknown = (): AudioWording => ({
  rule: "audio-length-field",
  message: "The header does not say how long the recording is, so nothing tells whether the file is whole.",
  wayOut: "Listen to its end and save it again, for instance with `flac -d` and `flac`.",
});

export const audioChannelsDiffer = (found: number, promised: number): AudioWording => ({
  rule: "audio-damaged",
  message: `The header says ${promised} channels, but the sound has ${found}.`,
  wayOut: fetchAgain,
});

export const audioDamaged = (reason: string): AudioWording => ({
  rule: "audio-damaged",
  message: `The sound cannot be decoded (${reason}).`,
  wayOut: fetchAgain,
});

export const audioNoSamples = (): AudioWording => ({
  rule: "audio-no-samples",
  message: "The file holds a header but no sound.",
  wayOut: fetchAgain,
});

export const audioTooLong = (durationSec: number, channels: number, mostValues: number): AudioWording => ({
  rule: "audio-too-long",
  message: `The recording unpacks to ${seconds(durationSec)} in ${channels} channels, more than the ${Math.round(mostValues / 1e6)} million values that are kept in memory.`,
  wayOut: "Cut it into shorter files, one a chapter or a page.",
});

export const audioNotNumber = (atSec: number): AudioWording => ({
  rule: "audio-not-a-number",
  message: `At ${seconds(atSec)} a sample is not a number (NaN or infinite).`,
  wayOut: "Export the recording again; the program that wrote it made an error.",
});

export const audioPartOutside = (startSec: number, endSec: number, durationSec: number): AudioWording => ({
  rule: "audio-part-outside",
  message: `The part from ${seconds(startSec)} to ${seconds(endSec)} reaches beyond the recording, which lasts ${seconds(durationSec)}.`,
  wayOut: "Correct start and end, which are counted in seconds from the start of the file.",
});

export const audioWrongExtension = (written: string, real: string): AudioWording => ({
  rule: "audio-extension",
  message: `The file is called .${written} but holds ${real}. It was read as what it is.`,
  wayOut: "Rename it to keep other programs from stumbling.",
});

export const audioSilent = (): AudioWording => ({
  rule: "audio-silent",
  message: "The recording is silent: no sample is louder than 80 dB below full scale.",
  wayOut: "Check the recording or the channel it was taken from.",
});

export const audioClipped = (sharePercent: number): AudioWording => ({
  rule: "audio-clipped",
  message: `${sharePercent.toFixed(1)} % of the samples lie at full scale: the recording was clipped.`,
  wayOut: "Durations can still be used; loudness and spectra of the loud parts cannot.",
});

export const audioOverRange = (peak: number): AudioWording => ({
  rule: "audio-over-range",
  message: `Samples reach ${peak.toFixed(2)}, above full scale (1). They were kept as they are.`,
  wayOut: "Nothing need be done; to be safe, export the recording at a lower level.",
});

export const audioChannelsCancel = (): AudioWording => ({
  rule: "audio-channels-cancel",
  message:
    "The channels cancel each other out (one is the other turned upside down), so the loudest was taken instead of the average.",
  wayOut: "Check the cable or the export: one channel has reversed polarity.",
});

function seconds(value: number): string {
  return `${value.toFixed(2)} s`;
}
