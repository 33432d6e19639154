/*
 * Presses about on a session page and shows it a film: node look.cjs CHROMIUM PAGE FILM-MAKER FILM, with playwright-core
 * where node finds modules. Prints a JSON object of what was seen; judges nothing.
 */
const fs = require("fs");
const { pathToFileURL } = require("url");
const { chromium } = require("playwright-core");
const [, , browserPath, page, filmMaker, film] = process.argv;
const seen = { console: [] };

async function opened(browser) {
  const tab = await browser.newPage({ viewport: { width: 1280, height: 900 } });
  tab.on("console", function (message) { seen.console.push(message.text()); });
  tab.on("pageerror", function (error) { seen.console.push(String(error)); });
  await tab.goto(pathToFileURL(page).href);
  return tab;
}

async function chosen(tab) {
  await tab.evaluate(function () { location.hash = "landing-2"; });
  await tab.waitForFunction(function () { return !document.getElementById("landing-2").hidden; });
  seen.shown = await tab.evaluate(function () {
    return Array.from(document.querySelectorAll("section.landing:not([hidden])"), function (each) { return each.id; });
  });
  await tab.selectOption(".narrowing select[data-by=form]", "held");
  seen.narrowed = await tab.evaluate(function () {
    return Array.from(document.querySelectorAll("table.all tbody tr:not([hidden])"), function (row) { return row.dataset.form; });
  });
  await tab.selectOption(".narrowing select[data-by=form]", "");
  await tab.click("th[data-sorts]:nth-child(2) button");
  seen.sorted = await tab.evaluate(function () {
    return Array.from(document.querySelectorAll("table.all tbody tr"), function (row) { return Number(row.dataset.height); });
  });
}

/* The picture on show, by its twelve squares. */
function readPicture(selector) {
  const canvas = new OffscreenCanvas(64, 48);
  const pen = canvas.getContext("2d", { willReadFrequently: true });
  pen.drawImage(document.querySelector(selector), 0, 0, 64, 48);
  let n = 0;
  for (let bit = 0; bit < 12; bit++) {
    const at = pen.getImageData((bit % 4) * 16 + 8, Math.floor(bit / 4) * 16 + 8, 1, 1).data;
    n += at[0] > 127 ? 1 << bit : 0;
  }
  return n;
}

async function sought(tab, seconds) {
  await tab.evaluate(function (to) {
    const video = document.querySelector("video.this");
    return new Promise(function (done) {
      video.pause();
      video.addEventListener("seeked", done, { once: true });
      video.currentTime = to;
    });
  }, seconds);
}

async function still(tab) {
  await tab.waitForFunction(function () {
    return Array.prototype.every.call(document.querySelectorAll("figure:not([hidden]) > video"), function (video) {
      return !video.seeking && video.readyState > 1;
    });
  });
  /* One more picture drawn, so that what is read is what is seen. */
  await tab.evaluate(function () { return new Promise(function (done) { requestAnimationFrame(function () { requestAnimationFrame(done); }); }); });
}

/* A film that starts 12.34 s into the recording and whose clock runs 50 parts in a million fast. */
async function filmed(tab) {
  const STARTS = 12.34;
  const DRIFT = 50e-6;
  const contacts = await tab.evaluate(function () {
    return Array.from(document.querySelectorAll("section.landing"), function (each) {
      return { id: each.id, at: Number(each.dataset.contact), best: each.dataset.best };
    });
  });
  contacts.forEach(function (each) { each.film = (each.at - STARTS) * (1 + DRIFT); });
  const heels = await tab.evaluate(function () { return Number(document.querySelector("#film select").options[0].value); });
  const heelsInFilm = (heels - STARTS) * (1 + DRIFT);
  const duration = Math.ceil(contacts[contacts.length - 1].film + 5);
  await tab.addScriptTag({ content: fs.readFileSync(filmMaker, "utf8") });
  const made = await tab.evaluate(function (given) {
    return makeFilm(given.duration, given.moments).then(function (film) {
      return { bytes: Array.from(film.bytes), times: film.times };
    });
  }, { duration: duration, moments: [heelsInFilm].concat(contacts.map(function (each) { return each.film; })) });
  fs.writeFileSync(film, Buffer.from(made.bytes));
  function pictureAt(seconds) {
    let n = 0;
    while (n + 1 < made.times.length && made.times[n + 1] <= seconds + 1e-6) { n++; }
    return n;
  }
  seen.filmS = duration;
  await tab.setInputFiles("#film input[type=file]", film);
  await tab.waitForFunction(function () { return document.querySelector("video.this").readyState > 1; });
  /* The coach stops at the picture that shows the heels strike, and presses; later at the last contact. */
  await sought(tab, made.times[pictureAt(heelsInFilm)] + 0.001);
  await tab.selectOption("#film select", { index: 0 });
  await tab.click("#film .set");
  const last = contacts[contacts.length - 1];
  await tab.evaluate(function (id) { location.hash = id; }, last.id);
  await tab.waitForFunction(function (id) { return !document.getElementById(id).hidden; }, last.id);
  // The page itself goes to the landing's picture first; on a busy machine that may still be under way.
  await still(tab);
  await sought(tab, made.times[pictureAt(last.film)] + 0.001);
  await tab.click("#film .set");
  seen.clock = await tab.evaluate(function () { return document.querySelector("#film .clock").textContent; });
  seen.keep = await tab.evaluate(function () { return document.querySelector("#film code").textContent; });
  seen.pictures = [];
  for (const each of contacts) {
    await tab.evaluate(function (id) { location.hash = id; }, each.id);
    await tab.waitForFunction(function (id) { return !document.getElementById(id).hidden; }, each.id);
    await tab.click("#film .contact");
    await still(tab);
    seen.pictures.push({ landing: each.id, shown: await tab.evaluate(readPicture, "video.this"), right: pictureAt(each.film) });
  }
  seen.cursor = await tab.evaluate(function () {
    const chart = document.querySelector("section.landing:not([hidden]) .signals svg");
    return { at: Number(chart.querySelector("line.cursor").getAttribute("x1")), contact: Number(chart.dataset.zero) };
  });
  /* Picture by picture, by key. */
  await tab.focus("#film .screens");
  const before = await tab.evaluate(readPicture, "video.this");
  await tab.keyboard.press("ArrowRight");
  await still(tab);
  const after = await tab.evaluate(readPicture, "video.this");
  await tab.keyboard.press("ArrowLeft");
  await still(tab);
  seen.keys = [after - before, (await tab.evaluate(readPicture, "video.this")) - after];
  await tab.keyboard.press("ArrowUp");
  await tab.waitForFunction(function (id) { return !document.getElementById(id).hidden; }, contacts[contacts.length - 2].id);
  seen.upLeadsTo = contacts[contacts.length - 2].id;
  /* A press on a landing plays it slowly from half a second before. */
  await tab.click("#film .contact");
  await tab.evaluate(function () {
    window.begun = [];
    const video = document.querySelector("video.this");
    video.addEventListener("play", function () { window.begun.push([video.currentTime, video.playbackRate]); });
  });
  await tab.click(".wide a.press[href='#" + contacts[2].id + "'] .sign, .wide a.press[href='#" + contacts[2].id + "'] circle");
  await tab.waitForFunction(function () { return window.begun.length > 0; });
  seen.played = await tab.evaluate(function () { return window.begun[0]; });
  seen.played.push(contacts[2].film - 0.5);
  await tab.click("#film .contact");
  await tab.click("#film .compare");
  await still(tab);
  const best = contacts.find(function (each) { return each.id === "landing-" + contacts[2].best; });
  seen.compared = best === undefined ? null : [await tab.evaluate(readPicture, "video.best"), pictureAt(best.film)];
}

(async function () {
  const browser = await chromium.launch({ executablePath: browserPath, args: ["--no-sandbox"] });
  try {
    const tab = await opened(browser);
    await chosen(tab);
    await filmed(await opened(browser));
  } finally {
    await browser.close();
  }
  process.stdout.write(JSON.stringify(seen));
})().catch(function (error) { process.stderr.write(String(error.stack)); process.exit(1); });
