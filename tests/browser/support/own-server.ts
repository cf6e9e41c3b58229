/** A server of a test's own, to stop and start again under the same address, with the same or another build. */
import { join } from 'node:path';
import { type PreviewServer, preview } from 'vite';
import { afterAll } from 'vitest';
import { root } from '../../../scripts/build.mjs';

export interface OwnServer {
  home: string;
  stop(): Promise<void>;
  /** Serves the build in `folder` from now on. */
  serve(folder: string): Promise<void>;
}

export const builtFolder = join(root, 'dist/web');

export async function ownServer(folder = builtFolder): Promise<OwnServer> {
  let server: PreviewServer | null = null;
  let port = 0;
  const own: OwnServer = {
    home: '',
    async stop() {
      if (server?.httpServer && 'closeAllConnections' in server.httpServer) {
        server.httpServer.closeAllConnections();
      }
      await server?.close();
      server = null;
    },
    async serve(next) {
      await own.stop();
      server = await preview({
        configFile: join(root, 'vite.config.ts'),
        root: join(root, 'ui/web'),
        build: { outDir: next },
        preview: { port, strictPort: port > 0, host: '127.0.0.1', open: false },
        logLevel: 'error',
      });
      own.home = server.resolvedUrls?.local[0] ?? '';
      port = Number(new URL(own.home).port);
    },
  };
  await own.serve(folder);
  afterAll(own.stop);
  return own;
}
