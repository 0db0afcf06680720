// Draws every symbol and many openings into one page under node_modules/.cache and photographs it, to be
// looked at by a person.
//   npx tsx scripts/gallery.ts [symbols|parts|elevations|plans|phone|thumbs] [light|dark|sunlight|print] [width]
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { chromium } from 'playwright';
import { createElement } from 'react';
import { renderToStaticMarkup } from 'react-dom/server';
import { browserArgs, findBrowser } from './browser.mjs';
import { argumentsOf, countOf, refuse } from './lib/arguments.mjs';
import { pages } from './lib/gallery-pages.ts';
import { inRoot, reportsDir } from './lib/repo.mjs';

const { words } = argumentsOf({
  usage: 'npx tsx scripts/gallery.ts [page] [light|dark|sunlight|print] [width]',
  words: ['page', 'theme', 'width'],
});
const [page = 'symbols', theme = 'light'] = words;
if (!['light', 'dark', 'sunlight', 'print'].includes(theme)) refuse(`There is no look “${theme}”.`);
const width = String(countOf(words[2], 'The width', 1600));
const outDir = path.join(reportsDir, 'gallery');
mkdirSync(outDir, { recursive: true });

/** One style sheet: imports are put in place, addresses of fonts made absolute. */
function inlined(file: string): string {
  const css = readFileSync(file, 'utf8');
  return css
    .replace(/@import ["']([^"']+)["'];/g, (_, name: string) =>
      inlined(name.startsWith('.') ? path.join(path.dirname(file), name) : inRoot('node_modules', name)),
    )
    .replace(
      /url\(\.\/([^)]+)\)/g,
      (_, name: string) => `url(${pathToFileURL(path.join(path.dirname(file), name)).href})`,
    );
}

const make = pages[page];
if (make === undefined) throw new Error(`No page "${page}"; there are ${Object.keys(pages).join(', ')}.`);
const html = `<!doctype html><html lang="en" data-theme="${theme === 'print' ? 'light' : theme}"><meta charset="utf-8"><title>Gallery</title>
<style>${inlined(inRoot('src/ui/face/face.css'))}</style>
<style>body{padding:16px;background:var(--paper)} .grid{display:grid;grid-template-columns:repeat(auto-fill,minmax(380px,1fr));gap:20px} .grid.fine{grid-template-columns:repeat(auto-fill,minmax(150px,1fr))}</style>
<body>${renderToStaticMarkup(createElement(make))}</body></html>`;
const file = path.join(outDir, `${page}-${theme}.html`);
writeFileSync(file, html);

const executablePath = findBrowser();
const browser = await chromium.launch({ ...(executablePath ? { executablePath } : {}), args: browserArgs });
const view = await browser.newPage({ viewport: { width: Number(width), height: 1000 } });
if (theme === 'print') await view.emulateMedia({ media: 'print' });
await view.goto(pathToFileURL(file).href);
await view.evaluate(() => document.fonts.ready);
// In strips, because a viewer shrinks a very long picture until nothing can be judged.
const strip = 1080;
const height = await view.evaluate(() => document.documentElement.scrollHeight);
for (let top = 0, i = 1; top < height; top += strip, i += 1) {
  const shot = file.replace(/\.html$/, `-${i}.png`);
  await view.screenshot({
    path: shot,
    fullPage: true,
    clip: { x: 0, y: top, width: Number(width), height: Math.min(strip, height - top) },
  });
  console.log(shot);
}
await browser.close();
