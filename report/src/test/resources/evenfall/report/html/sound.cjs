/*
 * Looks at pages the way people do who use keys, a small screen, large letters or no colours: node sound.cjs CHROMIUM PAGE...,
 * with playwright-core and axe-core where node finds modules. Prints a JSON array, an object for each page; judges nothing.
 */
const fs = require("fs");
const { pathToFileURL } = require("url");
const { chromium } = require("playwright-core");
const axe = fs.readFileSync(require.resolve("axe-core/axe.min.js"), "utf8");
const [, , browserPath, ...pages] = process.argv;

/* The views a page must bear: a desk, a phone, a desk enlarged to twice its size, and both with letters twice as large. */
const VIEWS = [
  { name: "1280", width: 1280 },
  { name: "420", width: 420 },
  { name: "zoomed", width: 640, scale: 2 },
  { name: "1280, large letters", width: 1280, letters: "200%" },
  { name: "420, large letters", width: 420, letters: "200%" }
];
const AXE_SEES = ["1280", "420"];

async function opened(browser, page, view, seen) {
  const context = await browser.newContext({
    viewport: { width: view.width, height: 900 }, deviceScaleFactor: view.scale || 1, offline: true
  });
  const tab = await context.newPage();
  tab.on("console", function (message) { seen.console.push(message.text()); });
  tab.on("pageerror", function (error) { seen.console.push(String(error)); });
  tab.on("request", function (request) {
    const address = request.url();
    if (!address.startsWith("data:") && address.split("#")[0] !== pathToFileURL(page).href) { seen.asked.push(address); }
  });
  await tab.goto(pathToFileURL(page).href);
  await tab.evaluate(function (letters) {
    if (letters) { document.documentElement.style.fontSize = letters; }
    document.querySelectorAll("details").forEach(function (each) { each.open = true; });
  }, view.letters);
  return tab;
}

async function checked(tab, view, seen) {
  await tab.addScriptTag({ content: axe });
  const result = await tab.evaluate(function () { return axe.run(); });
  result.violations.forEach(function (each) {
    seen.violations.push({ view: view.name, impact: each.impact, id: each.id, where: each.nodes[0].html.slice(0, 200) });
  });
}

/* Presses Tab until the focus has been everywhere or stays away, and names what it never came to. */
async function walked(tab, seen) {
  await tab.evaluate(function () {
    window.toReach = new Set(Array.prototype.filter.call(
      document.querySelectorAll("a[href], button, select, input, summary, [tabindex='0']"),
      function (each) { return each.checkVisibility() && !each.disabled; }));
    /* What can only be scrolled must be reached too. */
    document.querySelectorAll("*").forEach(function (each) {
      const style = getComputedStyle(each);
      if (/auto|scroll/.test(style.overflowX) && each.scrollWidth > each.clientWidth) { window.toReach.add(each); }
    });
    window.noRing = [];
    document.addEventListener("focusin", function (event) {
      window.toReach.delete(event.target);
      const style = getComputedStyle(event.target);
      const marked = style.outlineStyle !== "none" && parseFloat(style.outlineWidth) >= 1
        || Array.prototype.some.call(event.target.querySelectorAll("circle"), function (circle) {
          return getComputedStyle(circle).stroke !== "none";
        });
      if (!marked) { window.noRing.push(event.target.outerHTML.slice(0, 120)); }
    });
    document.activeElement.blur();
  });
  seen.reachable = await tab.evaluate(function () { return window.toReach.size; });
  for (let i = 0; i < seen.reachable + 10; i++) { await tab.keyboard.press("Tab"); }
  seen.unreached = await tab.evaluate(function () {
    return Array.from(window.toReach, function (each) { return each.outerHTML.slice(0, 120); });
  });
  seen.noRing = await tab.evaluate(function () { return window.noRing; });
}

/* Letters and marks against their ground, and charts whose letters lie over each other or over the edge. */
function measured() {
  function light(color) {
    return color.slice(0, 3).map(function (part) {
      const c = part / 255;
      return c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
    }).reduce(function (sum, c, i) { return sum + c * [0.2126, 0.7152, 0.0722][i]; }, 0);
  }
  function parts(text) {
    const found = /rgba?\(([^)]*)\)/.exec(text);
    return found === null ? null : found[1].split(/[ ,\/]+/).map(Number);
  }
  function over(color, ground, opacity) {
    const a = (color.length > 3 ? color[3] : 1) * opacity;
    return [0, 1, 2].map(function (i) { return color[i] * a + ground[i] * (1 - a); });
  }
  function ground(element) {
    for (let each = element; each !== null; each = each.parentElement) {
      const color = parts(getComputedStyle(each).backgroundColor);
      if (color !== null && (color.length < 4 || color[3] === 1)) { return color; }
    }
    return [255, 255, 255];
  }
  function opacity(element) {
    let all = 1;
    for (let each = element; each !== null; each = each.parentElement) { all *= Number(getComputedStyle(each).opacity); }
    return all;
  }
  function ratio(element, text) {
    const color = parts(text);
    if (color === null) { return null; }
    const under = ground(element);
    const a = light(over(color, under, opacity(element)));
    const b = light(under);
    return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
  }
  function lies(a, b) {
    return Math.min(a.right, b.right) - Math.max(a.left, b.left) > 1.5
      && Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top) > 0.35 * Math.min(a.height, b.height);
  }
  const seen = { letters: 0, pale: [], marks: 0, faint: [], overlapping: [], outside: [] };
  const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  for (let node = walker.nextNode(); node !== null; node = walker.nextNode()) {
    const at = node.parentElement;
    if (node.textContent.trim() === "" || !at.checkVisibility() || at.closest("script, style, title, desc, button:disabled")) { continue; }
    const style = getComputedStyle(at);
    const contrast = ratio(at, at.closest("svg") === null ? style.color : style.fill);
    if (contrast === null) { continue; }
    seen.letters++;
    if (contrast < 4.5) { seen.pale.push([node.textContent.trim().slice(0, 40), contrast.toFixed(2)]); }
  }
  document.querySelectorAll("svg").forEach(function (svg) {
    if (!svg.checkVisibility() || svg.getBoundingClientRect().width === 0) { return; }
    svg.querySelectorAll(".sign, .sign *").forEach(function (mark) {
      const style = getComputedStyle(mark);
      const best = Math.max(ratio(svg, style.fill) || 0, style.stroke === "none" ? 0 : ratio(svg, style.stroke) || 0);
      if (!/^(circle|path|polygon|rect)$/i.test(mark.tagName)) { return; }
      seen.marks++;
      if (best < 3) { seen.faint.push([mark.outerHTML.slice(0, 80), best.toFixed(2)]); }
    });
    const frame = svg.getBoundingClientRect();
    const texts = Array.from(svg.querySelectorAll("text")).filter(function (each) {
      return each.textContent.trim() !== "" && each.checkVisibility();
    }).map(function (each) { return { words: each.textContent.trim(), box: each.getBoundingClientRect() }; });
    texts.forEach(function (each, i) {
      if (each.box.left < frame.left - 1 || each.box.right > frame.right + 1 || each.box.top < frame.top - 2 || each.box.bottom > frame.bottom + 2) {
        seen.outside.push([svg.id || svg.closest("[id]").id, each.words]);
      }
      texts.slice(i + 1).forEach(function (other) {
        if (lies(each.box, other.box)) { seen.overlapping.push([svg.id || svg.closest("[id]").id, each.words, other.words]); }
      });
    });
  });
  return seen;
}

/* How many sheets of paper the page takes. */
async function printed(tab) {
  const paper = await tab.pdf({ format: "A4", preferCSSPageSize: false });
  return paper.toString("latin1").split(/\/Type\s*\/Page\b(?!s)/).length - 1;
}

(async function () {
  const browser = await chromium.launch({ executablePath: browserPath, args: ["--no-sandbox"] });
  const all = [];
  try {
    for (const page of pages) {
      const seen = { page: page, console: [], asked: [], violations: [], tooWide: {}, views: {} };
      for (const view of VIEWS) {
        const tab = await opened(browser, page, view, seen);
        if (view.name === "1280") { await walked(tab, seen); }
        seen.tooWide[view.name] = await tab.evaluate(function () { return document.documentElement.scrollWidth - innerWidth; });
        seen.views[view.name] = await tab.evaluate(measured);
        if (view.name === "1280") { seen.sheets = await printed(tab); }
        if (AXE_SEES.includes(view.name)) { await checked(tab, view, seen); }
        await tab.context().close();
      }
      all.push(seen);
    }
  } finally {
    await browser.close();
  }
  process.stdout.write(JSON.stringify(all));
})().catch(function (error) { process.stderr.write(String(error.stack)); process.exit(1); });
