export function TodayScreen() {
  return <h1>Today</h1>;
}
