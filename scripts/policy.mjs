/**
 * What a browser may do for the page: nothing but run, draw and fetch what came with it. The built page carries the
 * policy itself (`policyTag`); a server sends it too, with what only a server can say (`headers`).
 */

/** Where things may come from. Pictures made in the page, to be saved, pass through `blob:` and `data:`. */
const served = {
  'default-src': "'none'",
  'script-src': "'self'",
  'style-src': "'self'",
  'img-src': "'self' blob: data:",
  'connect-src': "'self'",
  'worker-src': "'self'",
  'manifest-src': "'self'",
  'base-uri': "'none'",
  'form-action': "'none'",
  // Text becomes markup or code through lit's templates and ui/web/app/trusted.ts alone.
  'require-trusted-types-for': "'script'",
  'trusted-types': 'lit-html tankful',
};

/** @param {Record<string, string>} sources */
const written = (sources) =>
  Object.entries(sources)
    .map(([what, from]) => `${what} ${from}`)
    .join('; ');

/** Sent with everything that `npm start` serves; DEVELOPERS.md asks the same of other servers. */
export const headers = {
  'Content-Security-Policy': `${written(served)}; frame-ancestors 'none'`,
  'X-Content-Type-Options': 'nosniff',
  'Referrer-Policy': 'no-referrer',
  'Cross-Origin-Opener-Policy': 'same-origin',
  'Cross-Origin-Resource-Policy': 'same-origin',
  'Permissions-Policy': [
    ...['accelerometer', 'autoplay', 'bluetooth', 'camera', 'display-capture', 'geolocation', 'gyroscope'],
    ...['hid', 'local-fonts', 'magnetometer', 'microphone', 'midi', 'payment', 'serial', 'usb'],
  ]
    .map((feature) => `${feature}=()`)
    .join(', '),
};

/**
 * The page in one file fetches nothing: its one script and its one style are let in by their hashes (SHA-256 in
 * base 64), and the workers, whose code is part of the script, by addresses that only a script can make.
 * @param {string} script
 * @param {string} style
 */
export function policyOfSingleFile(script, style) {
  const { 'connect-src': _, 'manifest-src': __, ...others } = served;
  return written({
    ...others,
    'script-src': `'sha256-${script}'`,
    'style-src': `'sha256-${style}'`,
    'img-src': 'blob: data:',
    'worker-src': 'blob:',
  });
}

/** @param {string} policy */
export function policyTag(policy) {
  return `<meta http-equiv="Content-Security-Policy" content="${policy}" />`;
}

/**
 * The part of a build that writes the policy into the page, before all that it speaks of. Not while developing: a
 * development server adds scripts of its own.
 * @returns {import('vite').Plugin}
 */
export function policyInPage() {
  return {
    name: 'policy-in-page',
    apply: 'build',
    transformIndexHtml: (html) => html.replace('<head>', `<head>\n    ${policyTag(written(served))}`),
  };
}
