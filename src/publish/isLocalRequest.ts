import type { IncomingMessage } from "node:http";

const loopbackName = /^(?:localhost|127(?:\.\d{1,3}){3}|\[::1\])(?::\d+)?$/i;
const loopbackAddress = /^(?:::1|(?:::ffff:)?127(?:\.\d{1,3}){3})$/i;

/** False for a request by a name that is not this machine's own: a stranger's name may be made to point here. */
export function isByOwnName({ headers }: IncomingMessage): boolean {
  return headers.host === undefined || loopbackName.test(headers.host);
}

/** True for an address that only this machine reaches. */
export function isLoopback(host: string): boolean {
  return host === "localhost" || loopbackAddress.test(host);
}

/**
 * Whether a request comes from a page of this very server on this very machine: from a loopback address, asked for by a
 * loopback name (another name may be a stranger's that was made to point here), and not from a page of another site.
 */
export function isLocalRequest({ headers, socket }: IncomingMessage): boolean {
  const from = headers["sec-fetch-site"];
  return (
    loopbackAddress.test(socket.remoteAddress ?? "") &&
    loopbackName.test(headers.host ?? "") &&
    (from === undefined || from === "same-origin" || from === "none")
  );
}
