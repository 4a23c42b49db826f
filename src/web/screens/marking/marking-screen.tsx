export function MarkingScreen() {
  return <h1>Marking</h1>;
}
