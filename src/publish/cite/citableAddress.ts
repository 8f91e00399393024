/** Names and addresses that lead others nowhere: this machine's own and those of a home or office network. */
const nobodyElse =
  /^(?:localhost|.*\.(?:localhost|local)|0\.0\.0\.0|127\..*|10\..*|192\.168\..*|172\.(?:1[6-9]|2\d|3[01])\..*|169\.254\..*|\[(?:::1|f[cd].*|fe80.*)\])$/i;

/** The address to cite; null where nobody else could follow it, as of a report served on one's own machine. */
export function citableAddress(address: string): string | null {
  const { protocol, hostname } = new URL(address);
  return /^https?:$/.test(protocol) && !nobodyElse.test(hostname) ? address : null;
}
