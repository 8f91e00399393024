/** The framework's own build functions. They are not public, so the framework's version is pinned exactly. */
declare module "@observablehq/framework/dist/config.js" {
  export function normalizeConfig(spec: object): object;
}
declare module "@observablehq/framework/dist/build.js" {
  interface Effects {
    readonly logger: { log(line: string): void; warn(line: string): void; error(line: string): void };
    readonly output: { write(text: string): void };
  }
  export class FileBuildEffects {
    prepare(): Promise<void>;
    constructor(outputRoot: string, cacheDir: string, effects: Effects);
  }
  export function build(options: { config: object }, effects: FileBuildEffects): Promise<void>;
}
