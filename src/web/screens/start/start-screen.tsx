export function StartScreen() {
  return <h1>Start</h1>;
}
