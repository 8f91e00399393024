/** A text broken into lines no wider than `widthPx` when set in `font` (as CSS writes it). */
export function wrapText(text: string, font: string, widthPx: number): string[] {
  const context = document.createElement("canvas").getContext("2d")!;
  context.font = font;
  const lines: string[] = [];
  let line = "";
  for (const word of text.split(/\s+/)) {
    const longer = line === "" ? word : `${line} ${word}`;
    if (line !== "" && context.measureText(longer).width > widthPx) {
      lines.push(line);
      line = word;
    } else line = longer;
  }
  return line === "" ? lines : [...lines, line];
}
