// What can be wrong with words, word lists and the choice of drill words, and what a reader must know beside them.

export function dictionaryDamaged(entry: number): string {
  return `The dictionary of the package kuromoji cannot be read at entry ${entry + 1}: it is damaged or of another version. Install the dependencies again with \`npm install\`.`;
}

/** A line of a list that was passed over; the rest goes on. */
export interface ListProblem {
  readonly file: string;
  readonly line: number;
  readonly message: string;
}

const at = (file: string, line: number, text: string): ListProblem => ({
  file,
  line,
  message: `${file}, line ${line}: ${text}`,
});

export function listEmpty(file: string): ListProblem {
  return at(
    file,
    1,
    "the list holds no word. Write one word a line: word, tab, reading in kana, and if known tab and accent.",
  );
}

export function listLineWithoutReading(file: string, line: number, word: string): ListProblem {
  return at(file, line, `"${word}" has no reading. Put a tab and the reading in kana after the word.`);
}

export function listReadingNotKana(file: string, line: number, reading: string, odd: string): ListProblem {
  return at(
    file,
    line,
    `the reading "${reading}" holds "${odd}", which is not kana. Write it in katakana or hiragana as it is pronounced.`,
  );
}

export function listOddSmallKana(file: string, line: number, reading: string, odd: string): ListProblem {
  return at(
    file,
    line,
    `in the reading "${reading}" the small ${odd} follows nothing that it can join. Write the full-size letter or correct the letter before.`,
  );
}

export function listAccentUnreadable(file: string, line: number, accent: string, morae: number): ListProblem {
  return at(
    file,
    line,
    `the accent "${accent}" is not the number of a mora from 0 (flat) to ${morae}. The word is kept with its accent unknown.`,
  );
}

export function listReadingDiffers(
  file: string,
  line: number,
  word: string,
  first: string,
  second: string,
  firstLine: number,
): ListProblem {
  return at(
    file,
    line,
    `"${word}" is read ${second} here and ${first} in line ${firstLine}. Both are kept as two words.`,
  );
}

export function listLineTwice(file: string, line: number, word: string, firstLine: number): ListProblem {
  return at(
    file,
    line,
    `"${word}" stands already in line ${firstLine} with the same reading. The first line counts.`,
  );
}

export function listUnreadable(file: string, line: number, reason: string): ListProblem {
  return at(file, line, `the line cannot be read (${reason}). Check its tabs and quotation marks.`);
}
