/** One origin for the app and for the pages of the bench, so that these can prepare and read what the app keeps. */
import { createServer, type IncomingMessage, type ServerResponse } from 'node:http';
import { join } from 'node:path';
import sirv from 'sirv';
import { securityHeaders } from '../../../.ci/content-security-policy.mjs';
import { root } from '../../../.ci/tools.mjs';

export interface BenchHost {
  /** Where the app is served, with a slash at its end. */
  readonly appUrl: string;
  /** A page that shows a few words, kept by a small service worker. */
  readonly staticUrl: string;
  /** Where the modules of pages are served; the page itself shows nothing. */
  readonly pagesUrl: string;
  readonly close: () => Promise<void>;
}

/** Isolated pages have a clock of 5 µs, memory that workers share, and may ask for the memory that they use. */
const isolation = {
  'Cross-Origin-Opener-Policy': 'same-origin',
  'Cross-Origin-Embedder-Policy': 'require-corp',
  'Cross-Origin-Resource-Policy': 'same-origin',
  'Cache-Control': 'no-cache',
};

/** Calls what a module exports. It stands in the page: what loads the bench files would rewrite an import in theirs. */
const page = `<!doctype html>
<html lang="en">
<title>Bench</title>
<link rel="icon" href="data:,">
<script>
globalThis.callModule = async ([url, name, argument]) => {
  const loaded = await import(url);
  return name && loaded[name](argument);
};
</script>
</html>`;

export async function openBenchHost(folders: { app: string; pages: string }): Promise<BenchHost> {
  const app = sirv(folders.app, {
    dev: true,
    etag: true,
    setHeaders(response, path) {
      const named = /[/\\]assets[/\\]/.test(path);
      response.setHeader('Cache-Control', named ? 'public, max-age=31536000, immutable' : 'no-cache');
    },
  });
  const staticPage = sirv(join(root, 'tests/bench/static-page'), { dev: true, etag: true });
  const pages = sirv(folders.pages, { dev: true, etag: true });
  const server = createServer((request: IncomingMessage, response: ServerResponse) => {
    const absent = () => {
      response.statusCode = 404;
      response.end('Not here');
    };
    const within = (under: string) => {
      if (!request.url?.startsWith(under)) return false;
      request.url = request.url.slice(under.length - 1);
      return true;
    };
    if (within('/shop/')) {
      for (const [name, value] of Object.entries(securityHeaders)) response.setHeader(name, value);
      return app(request, response, absent);
    }
    if (within('/static/')) return staticPage(request, response, absent);
    if (!within('/pages/')) return absent();
    for (const [name, value] of Object.entries(isolation)) response.setHeader(name, value);
    if (request.url !== '/') return pages(request, response, absent);
    response.setHeader('Content-Type', 'text/html; charset=utf-8');
    response.end(page);
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const address = server.address();
  const origin = `http://127.0.0.1:${typeof address === 'object' && address ? address.port : 0}`;
  return {
    appUrl: `${origin}/shop/`,
    staticUrl: `${origin}/static/`,
    pagesUrl: `${origin}/pages/`,
    close: () =>
      new Promise((resolve) => {
        server.close(() => resolve());
        server.closeAllConnections();
      }),
  };
}
