import { mkdirSync, symlinkSync, writeFileSync } from "node:fs";
import { connect } from "node:net";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { siteMarker } from "../../src/publish/outputFolder.ts";
import { type Served, serve } from "../../src/publish/serve.ts";
import { keptFolder } from "../helpers/tempFolder.ts";

const secret = "what lies beside the report";
const folder = keptFolder();
let served: Served;

beforeAll(async () => {
  const site = join(folder, "site");
  mkdirSync(join(site, "_file"), { recursive: true });
  writeFileSync(join(site, siteMarker), "{}");
  writeFileSync(join(site, "index.html"), "<html><head></head>the report</html>");
  writeFileSync(join(site, "_file", "a.parquet"), "PAR1");
  writeFileSync(join(folder, "secret.html"), secret);
  writeFileSync(join(folder, "site-twin.html"), secret);
  mkdirSync(join(folder, "site-twin"));
  writeFileSync(join(folder, "site-twin", "index.html"), secret);
  symlinkSync(join(folder, "secret.html"), join(site, "link.html"));
  symlinkSync(folder, join(site, "up"));
  served = await serve({ site });
});
afterAll(() => served.close());

/** Sends bytes as they are, which no tidying client would, and gives the whole answer. */
function send(bytes: string | Uint8Array): Promise<string> {
  const { hostname, port } = new URL(served.url);
  return new Promise((resolve, reject) => {
    let answer = "";
    const socket = connect(Number(port), hostname, () => socket.write(bytes));
    socket.setTimeout(5000, () => socket.destroy(new Error("no answer in five seconds")));
    socket.on("data", (chunk) => {
      answer += chunk.toString("latin1");
    });
    socket.on("close", () => resolve(answer));
    socket.on("error", reject);
  });
}

const get = (target: string, host = new URL(served.url).host) =>
  send(`GET ${target} HTTP/1.1\r\nHost: ${host}\r\nConnection: close\r\n\r\n`);

describe("a served report", () => {
  test("is given to whoever sits at this machine", async () => {
    expect(await get("/")).toMatch(/^HTTP\/1\.1 200 [\s\S]*the report/);
    expect(await get("/_file/a.parquet")).toMatch(/^HTTP\/1\.1 200 [\s\S]*PAR1/);
  });

  test.each([
    ..."/../secret.html /..%2fsecret.html /%2e%2e/secret.html /%2e%2e%2fsecret.html /.%2e/secret.html".split(
      " ",
    ),
    ..."/..%5csecret.html /..\\secret.html /%5c..%5csecret.html /_file/..%2f..%2fsecret.html".split(" "),
    ..."/_file/../../secret.html //secret.html ///etc/passwd /etc/passwd /%2fetc%2fpasswd".split(" "),
    ..."/../site-twin/ /..%2fsite-twin.html /%c0%ae%c0%ae/secret.html /..%00/secret.html /secret.html%00".split(
      " ",
    ),
    ..."/..;/secret.html /%252e%252e%252fsecret.html /link /link.html /up/secret.html /up/secret /..".split(
      " ",
    ),
    ..."../secret.html ..%2fsecret.html http://other.example/../secret.html file:///etc/passwd *".split(" "),
  ])("gives nothing else for %s", async (target) => {
    const answer = await get(target);
    expect(answer).toMatch(/^HTTP\/1\.1 (?:400|403|404|200) /);
    expect(answer).not.toContain(secret);
    expect(answer).not.toContain("root:");
    if (answer.startsWith("HTTP/1.1 200")) expect(answer).toContain("the report");
  });

  test.each([
    ["a NUL in the line", "GET /\0../secret.html HTTP/1.1\r\nHost: x\r\n\r\n"],
    ["a line without end", `GET /${"a".repeat(100_000)} HTTP/1.1\r\nHost: x\r\n\r\n`],
    ["no HTTP at all", "\x16\x03\x01\x02\0\x01\0\x01\r\n\r\n"],
    [
      "another method",
      "PUT /index.html HTTP/1.1\r\nHost: 127.0.0.1\r\nContent-Length: 0\r\nConnection: close\r\n\r\n",
    ],
  ])("refuses %s and goes on serving", async (_, bytes) => {
    expect(await send(bytes)).toMatch(/^HTTP\/1\.1 4\d\d /);
    expect(await get("/")).toContain("the report");
  });

  test("is not given to a page that made a name of its own point to this machine", async () => {
    const answer = await get("/", "stranger.example");
    expect(answer).toMatch(/^HTTP\/1\.1 403 /);
    expect(answer).not.toContain("the report");
  });

  test.each(["/", "/nothing", "/..%2fsecret.html", "/_file/a.parquet"])(
    "sends %s with a policy that forbids other hosts",
    async (target) => {
      const policy = /content-security-policy: ([^\r]+)/i.exec(await get(target))?.[1];
      expect(policy).toContain("default-src 'none'");
      expect(policy).toContain("frame-ancestors 'none'");
      expect(policy).not.toMatch(/https?:|\*|unsafe-eval/);
    },
  );
});
