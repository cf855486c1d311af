// first, since the order of all layers is fixed in it
import './ui/tokens.css';
import './ui/components.css';
import './ui/widgets.css';
import { QueryClientProvider } from '@tanstack/react-query';
import { RouterProvider } from '@tanstack/react-router';
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { followLab, queries } from './lab/answers.ts';
import { router } from './routes.tsx';
import { listenForKeys } from './ui/keys.ts';

const place = document.getElementById('lab');
if (!place) throw new Error('the page has no place for the lab');
followLab();
listenForKeys();
createRoot(place).render(
  <StrictMode>
    <QueryClientProvider client={queries}>
      <RouterProvider router={router} />
    </QueryClientProvider>
  </StrictMode>,
);
