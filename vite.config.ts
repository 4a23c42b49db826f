import react from '@vitejs/plugin-react';
import { defineConfig, type Plugin } from 'vite';

/** No screen says where a misconception is described: the references stay in the source and out of the browser. */
function withoutReferences(): Plugin {
  return {
    name: 'without-references',
    transform(code, id) {
      if (!/questions\/misconceptions\/[\w-]+\.[jt]s$/.test(id.replaceAll('\\', '/'))) return null;
      return { code: code.replace(/^ +source:\s*(?:'[^'\n]*'|"[^"\n]*"|[A-Z]\w*),$/gm, ''), map: null };
    },
    enforce: 'pre',
  };
}

// The web app is built from source: the "afterbell-source" condition resolves #engine and #api to src/.
export default defineConfig({
  root: 'src/web',
  plugins: [react(), withoutReferences()],
  worker: { format: 'es', plugins: () => [withoutReferences()] },
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
