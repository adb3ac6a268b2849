import '@fontsource-variable/inter/wght.css';
import './look/tokens.css';
import './look/page.css';
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { applyLook } from './look/look.ts';
import { Workbench } from './shell/workbench.tsx';

applyLook();
const place = document.getElementById('workbench');
if (place === null) throw new TypeError('missing #workbench in index.html');
createRoot(place).render(
  <StrictMode>
    <Workbench />
  </StrictMode>,
);
