import type { FileTree } from "./fileTree.ts";

/** The bytes of a recording, read piece by piece. */
export interface AudioSource {
  readonly name: string;
  readonly sizeBytes: number;
  /** At most `length` bytes from byte `start`; fewer at the end. */
  readPart(start: number, length: number): Uint8Array;
}

export function sourceFromBytes(bytes: Uint8Array, name: string): AudioSource {
  return {
    name,
    sizeBytes: bytes.byteLength,
    readPart: (start, length) => bytes.subarray(start, start + length),
  };
}

export function sourceFromTree(tree: FileTree, path: string, sizeBytes: number): AudioSource {
  return { name: path, sizeBytes, readPart: (start, length) => tree.readPart(path, start, length) };
}

export function viewOf(bytes: Uint8Array): DataView {
  return new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
}

export function asciiAt(bytes: Uint8Array, start: number, length: number): string {
  return String.fromCharCode(...bytes.subarray(start, start + length));
}

/** Bytes of an ID3v2 tag at the start, which MP3 and some FLAC files carry; 0 when there is none. */
export function id3Length(source: AudioSource): number {
  const head = source.readPart(0, 10);
  if (head.length < 10 || asciiAt(head, 0, 3) !== "ID3") return 0;
  const size = (head[6]! << 21) | (head[7]! << 14) | (head[8]! << 7) | head[9]!;
  return 10 + size + ((head[5]! & 0x10) !== 0 ? 10 : 0);
}
