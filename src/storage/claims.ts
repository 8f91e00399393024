import { randomUUID } from "node:crypto";
import { mkdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";

/** A claim that was not renewed for so long belongs to nobody any more, in ms. */
const abandonedMs = 30_000;
const renewMs = 5000;

/**
 * Who does what, among programs that share a folder: each claims a piece of work before it begins it, and renews the
 * claim while it goes on. Two may end up with the same piece when a machine stops for long: it is then done twice, to
 * the same result. Clocks are not compared.
 */
export class Claims {
  readonly #folder: string;
  readonly #self = randomUUID();
  readonly #own = new Set<string>();
  /** Claims of others: what they said, and when (by our clock) that was new. */
  readonly #seen = new Map<string, { readonly text: string; readonly at: number }>();
  readonly #timer: NodeJS.Timeout;
  #renewals = 0;

  constructor(folder: string) {
    this.#folder = folder;
    mkdirSync(folder, { recursive: true });
    this.#timer = setInterval(() => this.#renew(), renewMs);
    this.#timer.unref();
  }

  /** True when the work is ours now; false while somebody else seems to be at it. */
  take(name: string): boolean {
    const path = join(this.#folder, name);
    try {
      writeFileSync(path, this.#text(), { flag: "wx" });
    } catch (error) {
      if ((error as NodeJS.ErrnoException).code !== "EEXIST") throw error;
      if (!this.#isAbandoned(name, path)) return false;
      writeFileSync(path, this.#text());
    }
    this.#own.add(name);
    return true;
  }

  release(name: string): void {
    this.#own.delete(name);
    rmSync(join(this.#folder, name), { force: true });
  }

  close(): void {
    clearInterval(this.#timer);
    for (const name of this.#own) this.release(name);
  }

  #text(): string {
    return `${this.#self} ${this.#renewals}`;
  }

  #renew(): void {
    this.#renewals++;
    for (const name of this.#own) {
      try {
        writeFileSync(join(this.#folder, name), this.#text());
      } catch {
        // a disk that is full or away for a moment: another may do the same work, to the same result
      }
    }
  }

  #isAbandoned(name: string, path: string): boolean {
    let text: string;
    try {
      text = readFileSync(path, "utf8");
    } catch {
      return false; // just released: the next try will tell
    }
    const seen = this.#seen.get(name);
    if (seen?.text === text) return Date.now() - seen.at > abandonedMs;
    this.#seen.set(name, { text, at: Date.now() });
    return false;
  }
}
