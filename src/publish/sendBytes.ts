import type { IncomingMessage, ServerResponse } from "node:http";
import parseRange from "range-parser";

/** Answers with a status and one line of text. */
export function refuse(response: ServerResponse, status: number, text: string): void {
  response.writeHead(status, { "content-type": "text/plain; charset=utf-8" }).end(`${text}\n`);
}

/** Answers with bytes, or with the one range of them that was asked for, as players do. Nothing is kept by caches. */
export function sendBytes(
  request: IncomingMessage,
  response: ServerResponse,
  bytes: Uint8Array,
  type: string,
): void {
  const head = { "content-type": type, "accept-ranges": "bytes", "cache-control": "no-store" };
  const asked = request.headers.range;
  const ranges = asked === undefined ? [] : parseRange(bytes.byteLength, asked);
  if (ranges === -1) {
    response.writeHead(416, { ...head, "content-range": `bytes */${bytes.byteLength}` }).end();
    return;
  }
  const one = typeof ranges === "object" && ranges.length === 1 ? ranges[0]! : null;
  const part = one === null ? bytes : bytes.subarray(one.start, one.end + 1);
  const range = one === null ? {} : { "content-range": `bytes ${one.start}-${one.end}/${bytes.byteLength}` };
  response.writeHead(one === null ? 200 : 206, { ...head, ...range, "content-length": part.byteLength });
  response.end(request.method === "HEAD" ? undefined : part);
}
