export function BoardDisplay() {
  return <h1>Display</h1>;
}
