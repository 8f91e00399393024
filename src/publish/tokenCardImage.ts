import { encode } from "fast-png";
import type { CardSpectrum } from "./tokenCard.ts";

/** Levels this far below the loudest are left blank. */
const shownDb = 50;
/** Few steps keep the file small; the eye does not miss them behind the row. */
const steps = 12;
/** Levels below this are a recording's silence, however loud beside the rest. */
const quietDb = -100;
/** One grey for both colour schemes: the paper shines through where there is little sound. */
const grey = 128;

/**
 * A spectrogram as a PNG data address: grey of varying opacity, highest frequencies on top. Null where all is silent,
 * so that a silent recording does not show its rounding noise as if it were sound.
 */
export function tokenCardImage({ columns, rows, levelsDb }: CardSpectrum): string | null {
  const loudest = levelsDb.reduce((highest, level) => Math.max(highest, level), Number.NEGATIVE_INFINITY);
  if (!(loudest > quietDb)) return null;
  const data = new Uint8Array(2 * columns * rows);
  for (let row = 0; row < rows; row++) {
    for (let column = 0; column < columns; column++) {
      const level = levelsDb[(rows - 1 - row) * columns + column]!;
      const share = Math.max(0, (level - loudest + shownDb) / shownDb);
      const at = 2 * (row * columns + column);
      data[at] = grey;
      data[at + 1] = Math.round((Math.round(share * steps) / steps) * 255);
    }
  }
  const png = encode({ width: columns, height: rows, data, channels: 2, depth: 8 }, { zlib: { level: 9 } });
  return `data:image/png;base64,${Buffer.from(png).toString("base64")}`;
}
