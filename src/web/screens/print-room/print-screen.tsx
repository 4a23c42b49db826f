export function PrintScreen() {
  return <h1>Print-room</h1>;
}
