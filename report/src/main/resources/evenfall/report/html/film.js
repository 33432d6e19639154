/* The film beside the landings. A film's clock: film = (recording - starts) * (1 + drift), both in s. */
var filmClock = (function () {
  var LEAST_APART = 30;
  function through(points) {
    var first = points[0];
    var last = points[points.length - 1];
    if (points.length < 2 || Math.abs(last.recording - first.recording) < LEAST_APART) {
      return { starts: last.recording - last.film, drift: 0 };
    }
    var rate = (last.film - first.film) / (last.recording - first.recording);
    return { starts: first.recording - first.film / rate, drift: rate - 1 };
  }
  return {
    through: through,
    film: function (clock, recording) { return (recording - clock.starts) * (1 + clock.drift); },
    recording: function (clock, film) { return film / (1 + clock.drift) + clock.starts; }
  };
})();
(function () {
  var BEFORE = 0.5;
  var AFTER = 1.6;
  var SLOW = 0.25;
  var part = document.getElementById("film");
  if (part === null) { return; }
  var words = part.dataset;
  var find = function (selector) { return part.querySelector(selector); };
  var stage = find(".stage");
  var screens = find(".screens");
  var main = find("video.this");
  var other = find("video.best");
  var picker = find("input[type=file]");
  var seek = find("input[type=range]");
  var moments = find("select");
  var landing = null;
  var best = null;
  var clock = null;
  var points = [];
  /* How long a picture stays, s, learnt from the film as it plays; and when the one on show began. */
  var picture = Infinity;
  var begins = null;
  var name = words.name;
  var path = words.path;
  var address = null;
  var until = null;

  function number(landed) { return landed.dataset.number; }
  function contact(landed) { return filmClock.film(clock, Number(landed.dataset.contact)); }
  function status(text) { find(".status").textContent = text; }
  function each(action) { action(main); if (best !== null) { action(other); } }

  /* A seek to just after a picture's beginning shows that picture and not the one before. */
  function go(video, seconds) {
    video.currentTime = Math.min(Math.max(0, seconds), isFinite(video.duration) ? video.duration : seconds) + 0.0005;
  }
  function stop() {
    each(function (video) { video.pause(); });
    find(".play").textContent = words.play;
  }
  function inFilm(landed) {
    var at = contact(landed);
    return at >= 0 && !(at > main.duration);
  }
  function place(from) {
    if (clock === null || landing === null) { return false; }
    if (!inFilm(landing)) {
      status(words.outside.replace("{0}", number(landing)));
      return false;
    }
    status("");
    go(main, contact(landing) + from);
    if (best !== null) { go(other, contact(best) + from); }
    return true;
  }
  function play(from) {
    if (!place(from)) { return; }
    until = contact(landing) + AFTER;
    each(function (video) {
      video.playbackRate = SLOW;
      video.play().catch(function () { stop(); });
    });
    find(".play").textContent = words.stop;
  }
  function toggle() {
    if (!main.paused) { stop(); return; }
    var at = clock === null || landing === null ? null : main.currentTime - contact(landing);
    if (at !== null && at >= -BEFORE && at < AFTER - 0.05) {
      play(at);
    } else if (clock !== null && landing !== null) {
      play(-BEFORE);
    } else {
      until = null;
      main.playbackRate = 1;
      main.play().catch(function () { stop(); });
      find(".play").textContent = words.stop;
    }
  }
  /* To the middle of the picture before or of the next one, so that a length that is a little off does no harm. */
  function step(way) {
    stop();
    var length = isFinite(picture) ? picture : 1 / 30;
    var by = (begins === null ? main.currentTime : begins) + (way < 0 ? -0.5 : 1.5) * length - main.currentTime;
    each(function (video) { go(video, video.currentTime + by); });
  }
  function neighbour(way) {
    var next = landing;
    do { next = way < 0 ? next.previousElementSibling : next.nextElementSibling; }
    while (next !== null && !next.classList.contains("landing"));
    if (next !== null) { location.hash = next.id; screens.focus({ preventScroll: true }); }
  }

  /* Where the film stands, as a line through the charts of the landing. */
  function cursor() {
    if (isFinite(main.duration)) { seek.max = main.duration; seek.value = main.currentTime; }
    if (until !== null && !main.paused && main.currentTime >= until) { stop(); }
    if (clock === null || landing === null) { return; }
    var at = filmClock.recording(clock, main.currentTime) - Number(landing.dataset.contact);
    find(".at").textContent = words.at.replace("{0}", at.toFixed(2).replace("-", "\u2212"));
    var chart = landing.querySelector(".signals svg");
    if (chart === null) { return; }
    var line = chart.querySelector("line.cursor");
    if (line === null) {
      line = document.createElementNS(chart.namespaceURI, "line");
      line.setAttribute("class", "cursor");
      line.setAttribute("y1", chart.dataset.from);
      line.setAttribute("y2", chart.dataset.to);
      chart.appendChild(line);
    }
    var x = Number(chart.dataset.zero) + at * Number(chart.dataset.second);
    line.setAttribute("x1", x.toFixed(1));
    line.setAttribute("x2", x.toFixed(1));
    line.style.display = x < Number(chart.dataset.first) || x > Number(chart.dataset.last) ? "none" : "";
  }
  function frame(now, about) {
    var length = about.mediaTime - begins;
    if (begins !== null && !main.paused && length > 0.004) { picture = Math.min(picture, length); }
    begins = about.mediaTime;
    cursor();
    main.requestVideoFrameCallback(frame);
  }

  function tell() {
    var text = words.none;
    if (clock !== null && points.length === 0) { text = words.kept; }
    if (points.length === 1) { text = words.one.replace("{0}", points[0].words); }
    if (points.length > 1) {
      text = words.two.replace("{0}", points[0].words).replace("{1}", points[points.length - 1].words)
        .replace("{2}", (clock.drift * 1e6).toFixed(0).replace("-", "\u2212"));
    }
    find(".clock").textContent = text;
    var keep = find(".keep");
    keep.hidden = points.length === 0 || words.command === "";
    if (!keep.hidden) {
      find("code").textContent = "evenfall " + words.command + " --film \"" + (path === "" ? name : path) + "\" --film-starts "
        + clock.starts.toFixed(3) + " --film-drift " + (clock.drift * 1e6).toFixed(1);
    }
  }
  function captions() {
    if (landing === null) { return; }
    screens.querySelectorAll("figcaption")[0].textContent = words.this.replace("{0}", number(landing));
    if (best !== null) { screens.querySelectorAll("figcaption")[1].textContent = words.best.replace("{0}", number(best)); }
  }
  function compare(wanted) {
    best = wanted && landing !== null ? document.getElementById("landing-" + landing.dataset.best) : null;
    find(".other").hidden = best === null;
    find(".compare").textContent = best === null ? words.compare : words.alone;
    find(".compare").disabled = landing === null || landing.dataset.best === "";
    if (best !== null && other.src !== address) { other.src = address; }
    captions();
  }
  function open(source) {
    address = source;
    picture = Infinity;
    begins = null;
    other.removeAttribute("src");
    main.src = source;
    stage.hidden = false;
    document.body.classList.add("with-film");
    compare(false);
    tell();
  }

  document.addEventListener("landing", function (event) {
    landing = event.detail;
    var chosen = Array.prototype.find.call(moments.options, function (option) {
      return option.value === landing.dataset.contact;
    });
    if (chosen !== undefined) { chosen.selected = true; }
    if (stage.hidden) { return; }
    compare(best !== null);
    if (main.readyState > 0) { play(-BEFORE); }
  });
  picker.addEventListener("change", function () {
    if (picker.files.length === 0) { return; }
    if (picker.files[0].name !== name) {
      path = "";
      if (name !== "" || points.length > 0) { clock = null; points = []; }
    }
    name = picker.files[0].name;
    status("");
    open(URL.createObjectURL(picker.files[0]));
  });
  var noted = find(".noted");
  if (noted !== null) { noted.addEventListener("click", function () { open(words.address); }); }
  main.addEventListener("error", function () {
    if (!main.hasAttribute("src")) { return; }
    stage.hidden = true;
    document.body.classList.remove("with-film");
    status(address === words.address ? words.lost : words.bad);
  });
  main.addEventListener("loadedmetadata", function () { if (clock !== null) { place(0); } cursor(); });
  ["seeked", "timeupdate"].forEach(function (kind) { main.addEventListener(kind, cursor); });
  if (main.requestVideoFrameCallback) { main.requestVideoFrameCallback(frame); }
  seek.addEventListener("input", function () { stop(); go(main, Number(seek.value)); });
  find(".set").addEventListener("click", function () {
    stop();
    var point = {
      recording: Number(moments.value), film: begins === null ? main.currentTime : begins, words: moments.options[moments.selectedIndex].textContent
    };
    points = points.filter(function (old) { return old.recording !== point.recording; }).slice(0, 1).concat(point);
    points.sort(function (a, b) { return a.recording - b.recording; });
    clock = filmClock.through(points);
    status("");
    tell();
    cursor();
  });
  find(".play").addEventListener("click", toggle);
  find(".contact").addEventListener("click", function () { stop(); place(0); });
  find(".back").addEventListener("click", function () { step(-1); });
  find(".on").addEventListener("click", function () { step(1); });
  find(".compare").addEventListener("click", function () { compare(best === null); if (clock !== null) { place(0); } });
  find(".copy").addEventListener("click", function () {
    var range = document.createRange();
    range.selectNodeContents(find("code"));
    getSelection().removeAllRanges();
    getSelection().addRange(range);
    var done = function () { find(".copy").textContent = words.copied; };
    if (navigator.clipboard) {
      navigator.clipboard.writeText(find("code").textContent).then(done, function () {});
    } else if (document.execCommand("copy")) { done(); }
  });
  screens.addEventListener("keydown", function (event) {
    var does = {
      ArrowLeft: function () { step(-1); },
      ArrowRight: function () { step(1); },
      ArrowUp: function () { neighbour(-1); },
      ArrowDown: function () { neighbour(1); },
      Home: function () { stop(); place(0); },
      " ": toggle
    }[event.key];
    if (does && landing !== null) { event.preventDefault(); does(); }
  });
  if (words.starts !== "") { clock = { starts: Number(words.starts), drift: Number(words.drift) / 1e6 }; }
  part.hidden = false;
})();
