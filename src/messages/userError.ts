/**
 * A refusal meant for the person at the keyboard. Its text names the value, the rule and the way out;
 * the wording comes from a named function in this folder. Any other error is a fault of ours.
 */
export class UserError extends Error {
  readonly exitCode: number;

  constructor(message: string, exitCode = 2) {
    super(message);
    this.name = "UserError";
    this.exitCode = exitCode;
  }
}
