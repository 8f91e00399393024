import type { AudioWording } from "../messages/audio.ts";
import { UserError } from "../messages/userError.ts";

/** A recording that is not used, with the rule it breaks. Its `message` names the file, what is wrong and the way out. */
export class AudioRefused extends UserError {
  readonly file: string;
  readonly wording: AudioWording;

  constructor(file: string, wording: AudioWording) {
    super(`${file}: ${wording.message} ${wording.wayOut}`, 1);
    this.name = "AudioRefused";
    this.file = file;
    this.wording = wording;
  }
}
