export function SettingsScreen() {
  return <h1>Settings</h1>;
}
