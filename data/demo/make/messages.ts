/** Wording of what the maker tells its user. */

export function commandsMissing(commands: readonly string[], packages: readonly string[]): string {
  return `The maker runs ${commands.join(" and ")}, which cannot be started here. On Debian: apt-get install ${packages.join(" ")}.`;
}

export function commandFailed(command: string, args: readonly string[], words: string): string {
  return `${command} stopped with an error. It was called as: ${command} ${args.join(" ")}\nIt said: ${words.trim() || "nothing"}`;
}

export function dictionaryMissing(folder: string): string {
  return `Open JTalk's dictionary is not at ${folder}. On Debian: apt-get install open-jtalk-mecab-naist-jdic.`;
}

export function voiceMissing(file: string): string {
  return `There is no voice at ${file}. data/demo/README.md says which voices are needed; name their folder with --voices.`;
}

export function badOption(name: string, value: string, wanted: string): string {
  return `--${name} is ${value}; it must be ${wanted}.`;
}

export function cannotSpeak(id: string): string {
  return `The voice cannot speak ${id} as planned. Change its sentence, or take another --seed.`;
}

export function readingDiffers(kana: readonly string[], labelled: number, words: readonly string[]): string {
  return `The reading ${words.join(" ")} has ${kana.length} morae but the labels have ${labelled}. Write the sentence another way.`;
}
