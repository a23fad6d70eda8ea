import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { App } from './app.tsx';
import { SpeechProvider } from './language/speech.tsx';
import './ui/base.css';
import './ui/print.css';
import { Broken } from './ui/broken.tsx';

createRoot(document.getElementById('app')!).render(
  <StrictMode>
    <SpeechProvider>
      <Broken>
        <App />
      </Broken>
    </SpeechProvider>
  </StrictMode>,
);
