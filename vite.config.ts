import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';

// The web app is built from source: the "afterbell-source" condition resolves #engine and #api to src/.
export default defineConfig({
  root: 'src/web',
  plugins: [react()],
  worker: { format: 'es' },
  resolve: { conditions: ['afterbell-source', 'module', 'browser', 'development|production'] },
  build: {
    outDir: '../../dist/web',
    emptyOutDir: true,
    target: 'es2022',
    sourcemap: false,
    chunkSizeWarningLimit: 900,
  },
  server: { port: 4681, proxy: { '/api': { target: 'http://127.0.0.1:4680', changeOrigin: true } } },
});
