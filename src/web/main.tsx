import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { FindPage } from './screens/find/find-page.tsx';
import './ui/tokens.css';
import './ui/components.css';
import './screens/find/find.css';

const place = document.getElementById('lab');
if (!place) throw new Error('the page has no place for the lab');
createRoot(place).render(
  <StrictMode>
    <FindPage />
  </StrictMode>,
);
