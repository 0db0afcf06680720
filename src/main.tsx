import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { registerSW } from 'virtual:pwa-register';
import { createApp } from './app/session.ts';
import { App } from './ui/App.tsx';
import { whenIdle } from './ui/frame/whenIdle.ts';
import './ui/face/face.css';
import './ui/app.css';

const root = document.getElementById('root');
if (root === null) throw new Error('index.html has no element with the id "root".');

const app = createApp();
createRoot(root).render(
  <StrictMode>
    <App app={app} />
  </StrictMode>,
);
// Only once the first page stands: fetching every file for later would take the machine away from it.
void app.start().finally(() => whenIdle(keepOnDevice));

function keepOnDevice(): void {
  const startNewVersion = registerSW({
    onOfflineReady: () =>
      app.store.getState().tell({
        kind: 'told',
        says: 'Latchward is stored on this device: every page now opens without a network.',
      }),
    onNeedRefresh: () =>
      app.store.getState().offerVersion(() => {
        void app.flush().then(() => {
          // The helper loads anew only where a worker was in charge when the page began: not in the very first window.
          navigator.serviceWorker.addEventListener('controllerchange', () => location.reload(), {
            once: true,
          });
          return startNewVersion();
        });
      }),
  });
}
