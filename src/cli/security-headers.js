/**
 * The policy of the served app, in one place: the server sends it, the build writes the same policy into the page for hosts that
 * send no headers, and the tests hold the app against it. Everything comes from our own origin or not at all.
 */

const PAGE_POLICY = {
  'default-src': "'none'",
  'script-src': "'self'",
  'style-src': "'self'",
  'img-src': "'self'",
  'font-src': "'self'",
  'connect-src': "'self'",
  'worker-src': "'self'",
  'manifest-src': "'self'",
  'base-uri': "'none'",
  'form-action': "'none'",
  'require-trusted-types-for': "'script'",
  'trusted-types': 'underfoot',
};

const written = (policy) =>
  Object.entries(policy)
    .map(([name, value]) => `${name} ${value}`)
    .join('; ');

/** For `<meta http-equiv>`: without frame-ancestors, which browsers accept only as a header. */
export const metaPolicy = () => written(PAGE_POLICY);

/** A worker answers to the policy of its own response. Bones are simplified by a wasm module, in workers only. */
const workerPolicy = () =>
  written({ 'default-src': "'none'", 'script-src': "'self' 'wasm-unsafe-eval'", 'connect-src': "'self'" });

const isWorker = (path) => /worker[^/]*\.js$/.test(path);

/** Headers for one response, by its path. */
export const securityHeaders = (path) => ({
  'Content-Security-Policy': isWorker(path) ? workerPolicy() : written({ ...PAGE_POLICY, 'frame-ancestors': "'none'" }),
  'X-Content-Type-Options': 'nosniff',
  'Referrer-Policy': 'no-referrer',
  'Cross-Origin-Opener-Policy': 'same-origin',
  'Permissions-Policy': 'camera=(), geolocation=(), microphone=(), payment=()',
});
