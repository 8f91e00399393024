type Environment = Readonly<Record<string, string | undefined>>;

/** Whether a browser window can be shown: not over a remote shell, not in a pipeline, and on Linux only with a display. */
export function hasDesktop(platform: string, environment: Environment): boolean {
  if (environment.CI || environment.SSH_CONNECTION || environment.SSH_TTY) return false;
  if (platform === "darwin" || platform === "win32") return true;
  return Boolean(environment.DISPLAY || environment.WAYLAND_DISPLAY);
}
