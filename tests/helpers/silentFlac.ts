/**
 * A FLAC file of silence (RFC 9639): `frames` frames of 65,535 samples in two channels at 16 kHz, each a constant, so
 * that 25 bytes stand for 4 s. `total` is the length its header tells, 0 for none.
 */
export function silentFlac(frames: number, total: number): Uint8Array {
  const info = Buffer.alloc(34);
  info.writeUInt16BE(65535, 0);
  info.writeUInt16BE(65535, 2);
  info.writeUInt32BE(((16000 << 12) | (1 << 9) | (15 << 4)) >>> 0, 10);
  info.writeUInt8((15 << 4) | Math.floor(total / 2 ** 32), 13);
  info.writeUInt32BE(total % 2 ** 32, 14);
  const parts = [Buffer.from("fLaC"), Buffer.from([0x80, 0, 0, 34]), info];
  for (let frame = 0; frame < frames; frame++) {
    const head = [0xff, 0xf8, 0x75, 0x18, ...utf8(frame), 0xff, 0xfe];
    const body = [...head, crc(head, 8, 0x07), 0, 0, 0, 0, 0, 0];
    const check = crc(body, 16, 0x8005);
    parts.push(Buffer.from([...body, check >> 8, check & 0xff]));
  }
  return Buffer.concat(parts);
}

function utf8(number: number): readonly number[] {
  return [...Buffer.from(String.fromCodePoint(number), "utf8")];
}

function crc(bytes: readonly number[], bits: number, polynomial: number): number {
  const top = 1 << (bits - 1);
  let sum = 0;
  for (const byte of bytes) {
    sum ^= byte << (bits - 8);
    for (let bit = 0; bit < 8; bit++)
      sum = (sum & top ? (sum << 1) ^ polynomial : sum << 1) & (2 ** bits - 1);
  }
  return sum;
}
