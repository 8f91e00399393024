import { expect, test } from "vitest";
import { machineFault, machineRefused } from "../../../src/messages/machine.ts";
import { Orders } from "../../../src/shards/performOrder.ts";
import { tempFolder } from "../../helpers/tempFolder.ts";

const key = "0".repeat(64);

/** Orders whose runner fails as threads and queues tell it: by the message alone. */
function failing(message: string): Orders {
  const run = () => Promise.reject(new Error(message));
  return new Orders(tempFolder(), { inHand: 1, run, close: async () => {} });
}

const attempt = (orders: Orders) =>
  orders.attempt(() => orders.part({ kind: "learn", key, cache: "", voices: [] } as never));

test.each([
  "ENOSPC: no space left on device, write",
  "EDQUOT: disk quota exceeded, write",
  "EROFS: read-only file system, open '/shared/a.tmp'",
  "EACCES: permission denied, open '/shared/a.tmp'",
  "EMFILE: too many open files, open '/shared/a.tmp'",
  "EFBIG: file too large, write",
  "EIO: i/o error, write",
])("Orders.attempt ends the run at a fault that all other work would meet too: %s", async (message) => {
  await expect(attempt(failing(message))).rejects.toThrow(
    expect.objectContaining({ message: machineFault(new Error(message)), exitCode: machineRefused }),
  );
});

test.each(["the decoder ran out of memory", "x is not a function", "ENOENT: no such file or directory"])(
  "Orders.attempt tells what one order alone met, so that its shard can be set aside: %s",
  async (message) => expect(await attempt(failing(message))).toEqual({ part: null, failed: message }),
);
