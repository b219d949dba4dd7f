/**
 * The one Trusted Types policy of the app. It admits addresses of our own workers and service worker and nothing else: no HTML,
 * no script text. Browsers without Trusted Types get the same check on a plain string.
 */

interface ScriptUrlPolicy {
  createScriptURL(url: string): unknown;
}
interface PolicyFactory {
  createPolicy(name: string, rules: { createScriptURL: (url: string) => string }): ScriptUrlPolicy;
}

const OWN_WORKER = /(^|\/)(assets\/|src\/)?[\w-]*worker[\w-]*\.(js|ts)$/;

/** Throws TypeError for an address that is not one of our own workers. */
export const ownWorkerUrl = (url: string): string => {
  const parsed = new URL(url, document.baseURI);
  if (parsed.origin !== location.origin || !OWN_WORKER.test(parsed.pathname)) {
    throw new TypeError(`Not one of our workers: ${url}`);
  }
  return parsed.href;
};

const factory = (globalThis as { trustedTypes?: PolicyFactory }).trustedTypes;
const policy = factory?.createPolicy('underfoot', { createScriptURL: ownWorkerUrl });

/** A worker address as the browser wants it: trusted where it knows Trusted Types, checked everywhere. */
export const trustedWorkerUrl = (url: string): string =>
  (policy ? policy.createScriptURL(url) : ownWorkerUrl(url)) as string;
