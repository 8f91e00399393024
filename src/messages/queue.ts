/** Wording about work that goes over a Redis queue. */
export function queueUrlInvalid(url: string): string {
  return `"${url}" is no address of a Redis server. It looks like redis://machine:6379, with a password redis://:password@machine:6379, with TLS rediss://machine:6379. In a password write @ as %40, / as %2F and % as %25.`;
}

export function queueUnreachable(url: string, reason: string): string {
  return `No Redis server can be used at ${url} (${reason}). On Debian and Ubuntu \`sudo apt-get install redis-server\` installs and starts one; check address, password and firewall. Nothing is lost: run the same command again.`;
}

export function queueAway(url: string, reason: string): string {
  return `The Redis server at ${url} does not answer (${reason}). Waiting for it to come back.`;
}

export function queueBack(url: string): string {
  return `The Redis server at ${url} is back.`;
}

export function noWorker(command: string): string {
  return `No worker of this version is connected. Start one on this or another machine: ${command}`;
}

export function workersSeen(count: number): string {
  return count === 1 ? "1 worker is connected." : `${count} workers are connected.`;
}

export function workStalled(): string {
  return "A worker stopped in the middle of its work: another takes it over.";
}

export function workerReady(url: string, threads: number, roots: readonly string[]): string {
  return `Waiting for work at ${url}, ${threads} at once, below ${roots.join(", ")}. Stop with Ctrl-C.`;
}

export function workerStopping(): string {
  return "Stopping: the work in hand is being finished. Press Ctrl-C again to drop it; another worker takes it over.";
}

export function workDone(done: number, failed: number): string {
  return `${done} done${failed > 0 ? `, ${failed} failed` : ""}`;
}

export function rootMissing(root: string): string {
  return `There is no folder ${root}. --root names folders that hold datasets and results, with the same path on every machine.`;
}
