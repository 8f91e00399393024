import type { BuildOptions } from "esbuild";

/** How all code of the pages is bundled: small modules for browsers of the last years, licences kept. */
export const browserBundle = {
  bundle: true,
  format: "esm",
  platform: "browser",
  target: "es2022",
  minify: true,
  legalComments: "inline",
  charset: "utf8",
  define: { "process.env.NODE_ENV": '"production"' },
  logLevel: "silent",
} satisfies BuildOptions;
