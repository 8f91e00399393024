/** Control characters but tabs and line ends, and marks that turn the direction of text (Unicode 16, section 23.2). */
const steering = /[\u0000-\u0008\u000b-\u001f\u007f-\u009f\u202a-\u202e\u2066-\u2069]/g;

/**
 * Lines for a terminal. They may hold what datasets, results and file names say of themselves: characters that would steer the
 * terminal, or show other words than are there, come out as �.
 */
export function printable(lines: string): string {
  return lines.replace(steering, "�");
}

/** The same for a text that is one line, or a part of one: line ends go too. */
export function printableLine(text: string): string {
  return printable(text).replaceAll("\n", "�");
}
