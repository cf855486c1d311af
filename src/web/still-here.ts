import { useLocation, useRouter } from '@tanstack/react-router';

/** Tells after an answer whether the page that awaited it still stands: an answer brings nobody back to a page that was left. */
export function useStillHere(): () => boolean {
  const router = useRouter();
  const { pathname } = useLocation();
  return () => router.latestLocation.pathname === pathname;
}
