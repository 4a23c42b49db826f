// The outermost frame: whatever the address, one main region and a place for what went wrong.
import { Outlet } from '@tanstack/react-router';

export function Root() {
  return <Outlet />;
}
