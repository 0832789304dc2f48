// Looks at pages in headless Chromium, on a phone, a tablet, a desk and paper, in light and dark, and writes what it finds as JSON.
// node look.cjs JOB.json REPORT.json; the job: {chromium, pages: [{name, file, views: ["375 light", ...]}]}.
"use strict";
const fs = require("fs");
const path = require("path");
const { execFileSync } = require("child_process");
const { pathToFileURL } = require("url");
const { chromium } = require("playwright-core");
const axe = fs.readFileSync(require.resolve("axe-core/axe.min.js"), "utf8");

const paper = { A4: 210, Letter: 215.9 };  // mm across
const margin = 14;
const pixels = (mm) => Math.round((mm / 25.4) * 96);

// In the page: texts that lie on each other, as far as they can be seen.
function overlaps() {
  const boxes = [];
  const known = new Map();
  const seen = (e) => {
    if (!e) return true;
    if (!known.has(e)) {
      const style = getComputedStyle(e);
      known.set(e, style.display !== "none" && style.visibility !== "hidden" && seen(e.parentElement));
    }
    return known.get(e);
  };
  const cutters = new Map();  // whether anything above cuts it off
  const cuts = (e) => {
    if (!cutters.has(e)) cutters.set(e, getComputedStyle(e).overflow !== "visible");
    return cutters.get(e);
  };
  // What a parent cuts off is not seen.
  const cut = (rect, element) => {
    let { left, top, right, bottom } = rect;
    for (let e = element; e && e !== document.body; e = e.parentElement) {
      if (!cuts(e)) continue;
      const frame = e.getBoundingClientRect();
      left = Math.max(left, frame.left); right = Math.min(right, frame.right);
      top = Math.max(top, frame.top); bottom = Math.min(bottom, frame.bottom);
    }
    return { left, top, right, bottom };
  };
  const texts = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  for (let node = texts.nextNode(); node; node = texts.nextNode()) {
    const words = node.data.trim();
    const parent = node.parentElement;
    if (!words || ["SCRIPT", "STYLE", "title", "desc"].includes(parent.tagName) || !seen(parent)) continue;
    const range = document.createRange();
    range.selectNodeContents(node);
    for (const whole of range.getClientRects()) {
      const rect = cut(whole, parent);
      const slack = (rect.bottom - rect.top) * 0.2;  // a line is higher than its letters
      if (rect.right - rect.left > 1) boxes.push({ words, node, left: rect.left, right: rect.right, top: rect.top + slack, bottom: rect.bottom - slack });
    }
  }
  boxes.sort((a, b) => a.top - b.top);
  const found = [];
  for (let i = 0; i < boxes.length && found.length < 10; ++i) {
    for (let j = i + 1; j < boxes.length && boxes[j].top < boxes[i].bottom; ++j) {
      const a = boxes[i], b = boxes[j];
      if (a.node === b.node) continue;
      const wide = Math.min(a.right, b.right) - Math.max(a.left, b.left), high = Math.min(a.bottom, b.bottom) - b.top;
      if (wide > 1 && high > 1) found.push(`"${a.words.slice(0, 40)}" and "${b.words.slice(0, 40)}"`);
    }
  }
  return found;
}

// In the page: texts of a drawing that stick out of it.
function sticking() {
  const found = [];
  for (const text of document.querySelectorAll("svg text")) {
    const box = text.getBoundingClientRect();
    if (box.width === 0) continue;
    const frame = text.closest("div, figure").getBoundingClientRect();
    if (box.left < frame.left - 1 || box.right > frame.right + 1) found.push(text.textContent);
  }
  return found;
}

// In the page: the least contrast of each kind of text in a drawing, by WCAG 2.2's relative luminance, against all that may lie behind it.
function contrasts() {
  const svg = document.body.appendChild(document.createElementNS("http://www.w3.org/2000/svg", "svg"));
  const colour = (tag, kind, outer) => {
    const frame = svg.appendChild(document.createElementNS(svg.namespaceURI, "g"));
    svg.setAttribute("class", outer);
    const element = frame.appendChild(document.createElementNS(svg.namespaceURI, tag));
    element.setAttribute("class", kind);
    return getComputedStyle(element).fill.match(/[\d.]+/g).slice(0, 3).map(Number);
  };
  const luminance = (rgb) => {
    const [r, g, b] = rgb.map((v) => v / 255).map((v) => (v <= 0.04045 ? v / 12.92 : ((v + 0.055) / 1.055) ** 2.4));
    return 0.2126 * r + 0.7152 * g + 0.0722 * b;
  };
  const ratio = (a, b) => (Math.max(luminance(a), luminance(b)) + 0.05) / (Math.min(luminance(a), luminance(b)) + 0.05);
  const paper = getComputedStyle(document.documentElement).backgroundColor === "rgba(0, 0, 0, 0)" ? getComputedStyle(document.body).backgroundColor
                                                                                              : getComputedStyle(document.documentElement).backgroundColor;
  const grounds = [paper.match(/[\d.]+/g).slice(0, 3).map(Number), colour("rect", "night", "week"), colour("rect", "off-ground", "week")];
  const found = [];
  for (const kind of ["day", "hours", "tick", "m"]) {
    for (const ground of grounds) found.push([kind, ratio(colour("text", kind, "week"), ground)]);
  }
  for (let coats = 1; coats <= 6; ++coats) found.push([`c${coats}`, ratio(colour("text", `on-c${coats}`, "part"), colour("path", `c${coats}`, "part"))]);
  found.push(["bare", ratio(colour("text", "on-bare", "part"), colour("rect", "bare-ground", "part"))]);
  svg.remove();
  return found.filter(([, value]) => !(value >= 4.5)).map(([kind, value]) => `${kind}: ${value.toFixed(2)}`);
}

// In the page: short words that are broken over lines.
function broken() {
  const found = [];
  const texts = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  for (let node = texts.nextNode(); node; node = texts.nextNode()) {
    if (!/^\s*[^\s\u00a0]{1,12}\s*$/.test(node.data) || node.parentElement.closest("script, style, svg")) continue;
    const range = document.createRange();
    range.selectNodeContents(node);
    const lines = new Set([...range.getClientRects()].filter((r) => r.width > 0).map((r) => Math.round(r.top)));
    if (lines.size > 1) found.push(node.data);
  }
  return found;
}

async function lookAt(browser, page, view) {
  const [width, scheme] = view.split(" ");
  const media = paper[width] ? "print" : "screen";
  const across = paper[width] ? pixels(paper[width] - 2 * margin) : Number(width);
  const context = await browser.newContext({ viewport: { width: across, height: 900 }, colorScheme: scheme, offline: true });
  const tab = await context.newPage();
  const found = { view, errors: [], requests: [] };
  tab.on("pageerror", (error) => found.errors.push(String(error)));
  tab.on("console", (message) => message.type() === "error" && found.errors.push(message.text()));
  tab.on("dialog", (dialog) => { found.errors.push(`dialog: ${dialog.message()}`); dialog.dismiss(); });
  tab.on("request", (request) => found.requests.push(request.url()));
  await tab.emulateMedia({ media, colorScheme: scheme });
  const began = process.hrtime.bigint();
  await tab.goto(pathToFileURL(page.file).href);
  await tab.evaluate(() => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))));
  found.seconds = Number(process.hrtime.bigint() - began) / 1e9;
  await tab.addStyleTag({ content: "* { content-visibility: visible !important; }" });  // what is off the screen counts, too
  found.requests = found.requests.filter((url) => url !== pathToFileURL(page.file).href && !url.startsWith("data:"));
  found.beyond = await tab.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
  found.overlaps = await tab.evaluate(overlaps);
  found.seesOverlap = await tab.evaluate((overlaps) => {
    const [first, second] = document.querySelectorAll("h1, h2");
    const place = second.getBoundingClientRect(), lies = first.getBoundingClientRect();
    second.style.transform = `translate(${lies.left - place.left}px, ${lies.top - place.top}px)`;
    const found = eval(`(${overlaps})()`);
    second.style.transform = "";
    return found.length > 0;
  }, String(overlaps));
  found.sticking = await tab.evaluate(sticking);
  found.broken = await tab.evaluate(broken);
  found.evil = await tab.evaluate(() => "evil" in window || document.scripts.length !== 1 || document.querySelector("img, iframe") !== null);
  found.contrasts = media === "screen" ? await tab.evaluate(contrasts) : [];
  found.axe = [];
  if (media === "screen" && !(page.large && page.views[0] !== view)) {
    await tab.evaluate(axe);
    const rules = page.large ? { "color-contrast": { enabled: false } } : {};  // slow, and its colours are those of the other pages
    const result = await tab.evaluate((r) => window.axe.run(document, { resultTypes: ["violations"], rules: r }), rules);
    const told = (rule) => `${rule.id}: ${rule.help}: ${rule.nodes.slice(0, 3).map((node) => node.target.join(" ")).join("; ")}`;
    found.axe = result.violations.map(told);
  }
  await context.close();
  return found;
}

// What a reader does with it: ticks, the present moment, the keys, and no script at all.
async function use(browser, page) {
  const url = pathToFileURL(page.file).href;
  const context = await browser.newContext({ viewport: { width: 1024, height: 800 } });
  const tab = await context.newPage();
  const found = {};
  await tab.goto(url);
  const boxes = tab.locator("input[type=checkbox]");
  found.boxes = await boxes.count();
  if (found.boxes > 0) {
    await boxes.first().check();
    await tab.reload();
    found.remembered = await boxes.first().isChecked();
  }
  const text = await tab.locator("main").textContent();
  await tab.keyboard.press("Tab");
  found.focus = await tab.evaluate(() => [document.activeElement.tagName, getComputedStyle(document.activeElement).outlineStyle]);
  found.headings = await tab.evaluate(() => [...document.querySelectorAll("h1, h2, h3")].map((h) => Number(h.tagName[1])));
  const day = tab.locator("article.day:not(.quiet)").nth(1);
  if (await day.count()) {
    const [from, name, first] = await day.evaluate((d) => {
      const what = d.querySelector(".steps > li:not(.wait) .what");
      return [Number(d.dataset.from), d.querySelector("h3").textContent,
              `${what.querySelector("label").textContent} ${what.querySelector("p:not(.how)")?.textContent ?? ""}`.trim()];
    });
    await tab.clock.setFixedTime(new Date((from + 10 * 3600) * 1000));
    await tab.reload();
    found.now = { lines: await tab.locator("line.now").count(), name, first,
                  told: await tab.locator(".brief li span").first().textContent(), today: await tab.locator(".brief h3").first().textContent(),
                  current: await tab.locator("article[aria-current=date] h3").textContent() };
  }
  await context.close();
  const plain = await browser.newContext({ viewport: { width: 1024, height: 800 }, javaScriptEnabled: false });
  const still = await plain.newPage();
  await still.goto(url);
  found.sameWithoutScript = (await still.locator("main").textContent()) === text;
  await plain.close();
  return found;
}

// On paper: pages, and whether ink reaches the margins on either side.
async function print(browser, page, size) {
  const tab = await browser.newPage();
  await tab.goto(pathToFileURL(page.file).href);
  const base = `${page.file}-${size}`;
  await tab.pdf({ path: `${base}.pdf`, format: size, printBackground: true, preferCSSPageSize: false });
  await tab.close();
  execFileSync("pdftoppm", ["-r", "50", "-gray", `${base}.pdf`, base]);
  const pages = fs.readdirSync(path.dirname(base)).filter((name) => name.startsWith(path.basename(base)) && name.endsWith(".pgm"));
  const found = { size, pages: pages.length, ink: 0, cut: [] };
  for (const name of pages) {
    const bytes = fs.readFileSync(path.join(path.dirname(base), name));
    const [, wide, high] = /^P5\s+(\d+)\s+(\d+)\s+255\s/.exec(bytes.subarray(0, 40).toString("latin1"));
    const start = bytes.length - wide * high, free = Math.floor((10 / 25.4) * 50);
    for (let y = 0; y < high; ++y) {
      for (let x = 0; x < wide; ++x) {
        const dark = bytes[start + y * wide + x] < 200;
        if (dark) ++found.ink;
        if (dark && (x < free || x >= wide - free)) found.cut.push(`${name} ${x},${y}`);
      }
    }
    found.cut = found.cut.slice(0, 5);
  }
  return found;
}

(async () => {
  const job = JSON.parse(fs.readFileSync(process.argv[2], "utf8"));
  const browser = await chromium.launch({ executablePath: job.chromium, args: ["--no-sandbox", "--disable-dev-shm-usage"] });
  const report = {};
  for (const page of job.pages) {
    const began = Date.now();
    report[page.name] = { views: [], prints: [], use: await use(browser, page) };
    for (const view of page.views) report[page.name].views.push(await lookAt(browser, page, view));
    for (const size of page.prints) report[page.name].prints.push(await print(browser, page, size));
    report[page.name].seconds = (Date.now() - began) / 1000;
  }
  await browser.close();
  fs.writeFileSync(process.argv[3], JSON.stringify(report, null, 1));
})().catch((error) => {
  console.error(error);
  process.exit(1);
});
