export function UnderstandingScreen() {
  return <h1>Understanding</h1>;
}
