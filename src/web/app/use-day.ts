// The day a screen is about: the one in the address, else today as the server's clock says.
import { useQuery } from '@tanstack/react-query';
import { stateQuery } from './queries.js';

/** The date to show, or null while the server's day is not known yet. */
export function useDay(dateInAddress: string | undefined): string | null {
  const { data: state } = useQuery(stateQuery);
  return dateInAddress ?? state?.today ?? null;
}
