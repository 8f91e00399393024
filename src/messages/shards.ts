/** Wording about work that is done in shards, by threads and on other machines. */
export function folderOutside(path: string, roots: readonly string[]): string {
  return `${path} lies outside the folders that this worker was started with (${roots.join(", ")}). Start it with --root for the folder, too, if it may read and write there.`;
}

export function recordingChanged(audio: string): string {
  return `The recording ${audio} was changed or removed while it was being measured. Nothing is lost: leave the dataset alone and run the same command again.`;
}

export function partsKeepBreaking(times: number): string {
  return `A part of this run was missing or damaged ${times} times in a row. The disk or the shared folder loses what is written to it: check it, then run the same command again.`;
}

/** Utterances that could not be worked on for a reason that is nobody's fault but the program's or the machine's. */
export function shardSetAside(
  stage: string,
  utterances: number,
  reason: string,
): { rule: string; message: string; wayOut: string } {
  return {
    rule: "work-failed",
    message: `${stage} failed for this utterance or one of the ${utterances} beside it, also when it was tried again: ${reason}`,
    wayOut:
      "Run the same command again: only what failed is tried. If it fails again, take the recording out and report the fault with this message.",
  };
}

export function learningFailed(what: string, reason: string): string {
  return `${what} could not be learnt: ${reason}. What was finished is kept: run the same command again to go on from there.`;
}

export function sharesDiffer(path: string, what: string, known: string, given: string): string {
  return `The shares in this results folder were run with another "${what}" (${known}) than this one (${given}). Give all shares the same datasets and options, or choose another --out; ${path} says what was given.`;
}

export function noShares(folder: string): string {
  return `${folder} holds no shares. Run \`morascope run DATASET… --out ${folder} --shard i/n\` for every i from 1 to n first.`;
}

export function shareDone(part: number, of: number, made: number, out: string): string {
  return `Share ${part} of ${of} is done; it made ${made} parts. When all are: morascope combine ${out}`;
}

export function interrupted(): string {
  return "Stopped. What was finished is kept: run the same command again to go on from there.";
}

export function stopping(): string {
  return "Stopping: the work in hand is being finished and kept. Press Ctrl-C again to drop it.";
}

export function settingsBroken(path: string, field: string, reason: string): string {
  return `${path} does not say what the shares were run with (${field}: ${reason}): another version wrote it, or it was changed. Remove it and run the shares again; what was finished is kept.`;
}
