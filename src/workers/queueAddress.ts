import { isIP } from "node:net";
import { Redis } from "ioredis";
import { queueUnreachable, queueUrlInvalid } from "../messages/queue.ts";
import { UserError } from "../messages/userError.ts";

/** How a Redis server is reached, as the queue's library takes it. */
export interface QueueConnection {
  readonly host: string;
  readonly port: number;
  readonly username?: string;
  readonly password?: string;
  readonly db: number;
  /** Names in certificates are checked against the host; an IP address may not be asked for by name (RFC 6066). */
  readonly tls?: { readonly servername?: string };
  /** Waits for a server that is away for a while, instead of giving up. */
  readonly maxRetriesPerRequest: null;
}

/** Reads `redis://[user:password@]host[:port][/number]`; `rediss://` for TLS. Throws UserError for anything else. */
export function queueConnection(url: string): QueueConnection {
  const { protocol, hostname, port, pathname, username, password } = partsOf(url);
  const db = pathname.replace(/^\//, "");
  if (!/^rediss?:$/.test(protocol) || hostname === "" || !/^\d{0,4}$/.test(db))
    throw new UserError(queueUrlInvalid(withoutPassword(url)));
  const host = hostname.replace(/^\[|\]$/g, "");
  return {
    host,
    port: port === "" ? 6379 : Number(port),
    ...(username === "" ? {} : { username }),
    ...(password === "" ? {} : { password }),
    db: Number(db),
    ...(protocol === "rediss:" ? { tls: isIP(host) === 0 ? { servername: host } : {} } : {}),
    maxRetriesPerRequest: null,
  };
}

function partsOf(url: string) {
  try {
    const { protocol, hostname, port, pathname, username, password } = new URL(url);
    return {
      ...{ protocol, hostname, port, pathname },
      username: decodeURIComponent(username),
      password: decodeURIComponent(password),
    };
  } catch {
    throw new UserError(queueUrlInvalid(withoutPassword(url)));
  }
}

/** The address as it may be shown. */
export function withoutPassword(url: string): string {
  return url.replace(/^([a-z]+:\/\/)?.*@/is, "$1…@");
}

/** Time in ms within which a server must answer. */
const answerMs = 5000;

/** Throws UserError when no Redis server answers at the address, or when it refuses the password. */
export async function checkQueue(url: string): Promise<void> {
  const connection = new Redis({
    ...queueConnection(url),
    lazyConnect: true,
    maxRetriesPerRequest: 0,
    connectTimeout: answerMs,
    retryStrategy: () => null,
  });
  let reason = "";
  connection.on("error", (error: Error) => {
    reason = error.message;
  });
  try {
    await connection.connect();
    await connection.ping();
    await connection.select(connection.options.db ?? 0);
  } catch (error) {
    throw new UserError(queueUnreachable(withoutPassword(url), reason || (error as Error).message), 1);
  } finally {
    connection.disconnect();
  }
}
