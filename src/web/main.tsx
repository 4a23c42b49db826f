// Starts the app in the browser.
import './app/zod-setup.js';
import { QueryClient, QueryClientProvider } from '@tanstack/react-query';
import { RouterProvider } from '@tanstack/react-router';
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { CallFailure } from './app/client.js';
import { makeRouter } from './app/router.js';
import './design/tokens.css';
import './design/base.css';

const queries = new QueryClient({
  defaultOptions: {
    queries: {
      // The server is on this computer: an answer is either there at once or wrong for a reason.
      retry: (failures, error) =>
        failures < 2 && error instanceof CallFailure && error.code === 'unreachable',
      networkMode: 'always',
      staleTime: 5_000,
    },
    mutations: { networkMode: 'always' },
  },
});
const router = makeRouter(queries);
const place = document.getElementById('app');
if (place) {
  createRoot(place).render(
    <StrictMode>
      <QueryClientProvider client={queries}>
        <RouterProvider router={router} />
      </QueryClientProvider>
    </StrictMode>,
  );
}
