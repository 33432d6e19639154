/*
 * Shows captions over a film in a browser: node captions.cjs CHROMIUM VTT FILM-MAKER SECONDS, with playwright-core where
 * node finds modules. Prints a JSON object: the cues as the browser read them, and what stands over the film at each.
 */
const fs = require("fs");
const { pathToFileURL } = require("url");
const { chromium } = require("playwright-core");
const [, , browserPath, track, filmMaker, seconds] = process.argv;

(async function () {
  const browser = await chromium.launch({ executablePath: browserPath, args: ["--no-sandbox"] });
  try {
    const tab = await browser.newPage();
    /* A page of this machine, for only such a one may make a film. */
    fs.writeFileSync(track + ".html", "<!DOCTYPE html><title>Film</title><video muted></video>");
    await tab.goto(pathToFileURL(track + ".html").href);
    await tab.addScriptTag({ content: fs.readFileSync(filmMaker, "utf8") });
    const seen = await tab.evaluate(async function (given) {
      const video = document.querySelector("video");
      const film = await makeFilm(given.seconds, []);
      video.src = URL.createObjectURL(new Blob([film.bytes], { type: "video/webm" }));
      await new Promise(function (done) { video.addEventListener("loadeddata", done, { once: true }); });
      const element = document.createElement("track");
      element.kind = "captions";
      element.srclang = "en";
      element.src = URL.createObjectURL(new Blob([given.track], { type: "text/vtt" }));
      element.track.mode = "showing";
      video.append(element);
      await new Promise(function (done, failed) {
        element.addEventListener("load", done);
        element.addEventListener("error", failed);
        element.track.mode = "showing";
      });
      const cues = Array.from(element.track.cues, function (cue) {
        return { from: cue.startTime, to: cue.endTime, text: cue.text, plain: cue.getCueAsHTML().textContent };
      });
      for (const cue of cues) {
        video.currentTime = cue.from + 0.1;
        await new Promise(function (done) { video.addEventListener("seeked", done, { once: true }); });
        await new Promise(function (done) { setTimeout(done, 50); });
        cue.shown = Array.from(element.track.activeCues, function (each) { return each.text; });
      }
      return cues;
    }, { track: fs.readFileSync(track, "utf8"), seconds: Number(seconds) });
    process.stdout.write(JSON.stringify(seen));
  } finally {
    await browser.close();
  }
})().catch(function (error) { process.stderr.write(String(error.stack)); process.exit(1); });
