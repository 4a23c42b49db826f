import react from '@vitejs/plugin-react';
import { defineConfig, type Plugin } from 'vite';

/**
 * Of a misconception the browser needs what the child does. No screen says where it is described, and what may help comes
 * from the server to the two screens that show some of it: both stay in the source and out of the bundle.
 */
function withoutHelpAndSource(): Plugin {
  return {
    name: 'without-help-and-source',
    transform(code, id) {
      if (!/questions\/misconceptions\/[\w-]+\.[jt]s$/.test(id.replaceAll('\\', '/'))) return null;
      return {
        code: code.replace(/^ +(?:help|source):\s*(?:'[^'\n]*'|"[^"\n]*"|[A-Z]\w*),$/gm, ''),
        map: null,
      };
    },
    enforce: 'pre',
  };
}

// The web app is built from source: the "afterbell-source" condition resolves #engine and #api to src/.
export default defineConfig({
  root: 'src/web',
  plugins: [react(), withoutHelpAndSource()],
  worker: { format: 'es', plugins: () => [withoutHelpAndSource()] },
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
