/** The part of the Frictionless library (datapackage 1.1) that the test calls. */
declare module "datapackage" {
  export function validate(descriptor: object): Promise<{ valid: boolean; errors: readonly Error[] }>;
}
