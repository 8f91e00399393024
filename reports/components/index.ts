export function hello(): string {
  return "hello";
}
