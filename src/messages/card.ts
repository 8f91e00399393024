// What can be wrong when a card of one token is asked for.

export function cardUtteranceUnknown(utterance: string, dataset: string, some: readonly string[]): string {
  const listed =
    some.length === 0 ? "it holds none with intervals" : `it holds, for example, ${some.join(", ")}`;
  return `There is no utterance "${utterance}" of ${dataset} in the results; ${listed}.`;
}

export function cardTokenNeeded(utterance: string, sounds: readonly string[]): string {
  return `Say which sound of ${utterance} is meant: --index N, or --phone u with --nth 2 for its second. It has ${sounds.join(", ")}.`;
}

export function cardTokenTwice(): string {
  return "--index and --phone both say which sound is meant. Give one of them.";
}

export function cardIndexUnknown(utterance: string, index: number, sounds: readonly string[]): string {
  return `${utterance} has no vowel or consonant at --index ${index}. It has ${sounds.join(", ")}.`;
}

export function cardPhoneUnknown(
  utterance: string,
  phone: string,
  nth: number,
  sounds: readonly string[],
): string {
  return `${utterance} has no ${nth}. "${phone}". It has ${sounds.join(", ")}.`;
}

export function cardFileUnknown(file: string): string {
  return `${file} ends neither in .svg nor in .png. Choose the picture's format by its ending.`;
}

export function cardNotWritten(file: string, reason: string): string {
  return `${file} cannot be written (${reason}). Choose another --out.`;
}

export function cardWithoutRecording(reason: string): string {
  return `The card has no spectrogram and no voice ribbon: ${reason}`;
}

/** A raster picture is drawn with the fonts of the computer it is made on. */
export const cardPngFonts =
  "A PNG takes its letters from the fonts of this computer; without a Japanese font its kana stay empty. An SVG is drawn by whoever opens it.";
