// In local mode no other web page may reach the app: a name that resolves to this machine (DNS rebinding) fails the Host
// check, and a page elsewhere that posts here fails the Origin check.
import type { MiddlewareHandler } from 'hono';
import { answerProblem, problem } from './problems.js';

/** Refuses requests whose Host, or Origin when sent, is not one of `allowedHosts` ("127.0.0.1:4680"). */
export function onlyFromHere(allowedHosts: readonly string[]): MiddlewareHandler {
  const hosts = new Set(allowedHosts);
  return async (context, next) => {
    const host = context.req.header('host') ?? '';
    const origin = context.req.header('origin');
    const site = context.req.header('sec-fetch-site');
    const originHost = origin === undefined ? null : (/^https?:\/\/(.+)$/.exec(origin)?.[1] ?? '');
    const isForeign = !hosts.has(host) || (originHost !== null && !hosts.has(originHost));
    const crossSite = (site === 'cross-site' || site === 'same-site') && context.req.path.startsWith('/api/');
    if (isForeign || crossSite) {
      return answerProblem(
        context,
        problem(
          'request.origin',
          'Afterbell answers only to its own page on this computer.',
          'Open the address that Afterbell printed when it started.',
        ),
      );
    }
    await next();
    context.header('X-Content-Type-Options', 'nosniff');
    context.header('Referrer-Policy', 'no-referrer');
    context.header(
      'Content-Security-Policy',
      "default-src 'self'; style-src 'self' 'unsafe-inline'; img-src 'self' data: blob:; frame-ancestors 'none'; base-uri 'none'; form-action 'self'",
    );
  };
}
