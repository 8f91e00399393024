import { expect, test } from "vitest";
import { isLoopback } from "../../../src/publish/isLocalRequest.ts";

test("isLoopback holds for every address that only this machine reaches, and for no other", () => {
  const own = ["127.0.0.1", "127.0.0.2", "127.255.0.9", "::1", "::ffff:127.0.0.1", "localhost"];
  const open = ["0.0.0.0", "::", "192.168.0.7", "127.0.0.1.example", "localhost.example", "12.70.0.1"];
  expect([own.filter((host) => !isLoopback(host)), open.filter(isLoopback)]).toEqual([[], []]);
});
