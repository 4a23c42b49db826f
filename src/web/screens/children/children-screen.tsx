export function ChildrenScreen() {
  return <h1>Children</h1>;
}
