export function ShoeView() {
  return null;
}
