// What the page may load and who may show it. One list: the build writes it into the page, the server sends it as well.

/**
 * Directives that a page can state of itself. A compiled program of our own files (the reader of building models) may
 * run; text never becomes code. Styles may stand in the page, because sheets set their size there. */
const inPage = {
  'default-src': "'self'",
  'script-src': "'self' 'wasm-unsafe-eval'",
  'style-src': "'self' 'unsafe-inline'",
  'img-src': "'self' data: blob:",
  'font-src': "'self' data:",
  'connect-src': "'self'",
  'worker-src': "'self'",
  'manifest-src': "'self'",
  'object-src': "'none'",
  'frame-src': "'none'",
  'base-uri': "'none'",
  'form-action': "'none'",
};

const written = (/** @type {Record<string, string>} */ directives) =>
  Object.entries(directives)
    .map(([name, sources]) => `${name} ${sources}`)
    .join('; ');

export const pagePolicy = written(inPage);

/** Headers of every answer. Who may frame the page is for the server alone to say. */
export const headers = {
  'Content-Security-Policy': written({ ...inPage, 'frame-ancestors': "'none'" }),
  'X-Content-Type-Options': 'nosniff',
  'X-Frame-Options': 'DENY',
  'Referrer-Policy': 'no-referrer',
  'Cross-Origin-Opener-Policy': 'same-origin',
  'Cross-Origin-Resource-Policy': 'same-origin',
  'Permissions-Policy': 'geolocation=(), microphone=(), payment=(), usb=()',
};

/** Development reloads scripts through the page, so the policy is written into built pages only. */
export const policyInPage = () => ({
  name: 'latchward-policy',
  apply: /** @type {const} */ ('build'),
  transformIndexHtml: () => [
    {
      tag: 'meta',
      attrs: { 'http-equiv': 'Content-Security-Policy', content: pagePolicy },
      injectTo: /** @type {const} */ ('head-prepend'),
    },
    { tag: 'script', attrs: { src: './no-eval.js' }, injectTo: /** @type {const} */ ('head') },
  ],
});
