export function TotalsView(_: { toStart(): void }) {
  return null;
}
