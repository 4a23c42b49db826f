// The outermost frame: whatever the address, one main region and a place for what went wrong.
import { Outlet } from '@tanstack/react-router';
import { useEffect } from 'react';
import { useWords } from './use-words.js';

export function Root() {
  const { locale } = useWords();
  // A screen reader pronounces by it, and date fields follow it.
  useEffect(() => {
    document.documentElement.lang = locale;
  }, [locale]);
  return <Outlet />;
}
