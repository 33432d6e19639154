/* One landing at a time, chosen by its address; without script all stand below one another. */
(function () {
  var box = document.querySelector(".landings");
  var landings = box === null ? [] : Array.prototype.slice.call(box.children);
  function target() {
    var name = decodeURIComponent(location.hash.slice(1));
    return name === "" ? null : document.getElementById(name);
  }
  function choose(landing) {
    landings.forEach(function (each) { each.hidden = each !== landing; });
    document.querySelectorAll(".chosen").forEach(function (each) { each.classList.remove("chosen"); });
    document.querySelectorAll("a.press[href='#" + landing.id + "'], tr[data-landing='" + landing.id + "']")
      .forEach(function (each) { each.classList.add("chosen"); });
    document.dispatchEvent(new CustomEvent("landing", { detail: landing }));
  }
  function follow() {
    var found = target();
    if (found === null) { return; }
    for (var each = found; each !== null; each = each.parentElement) {
      if (each.tagName === "DETAILS") { each.open = true; }
    }
    if (landings.indexOf(found) >= 0) {
      choose(found);
      found.focus({ preventScroll: true });
      document.getElementById("viewer").scrollIntoView();
    } else {
      found.scrollIntoView();
    }
  }
  landings.forEach(function (landing, i) {
    var nav = document.createElement("nav");
    nav.setAttribute("aria-label", box.dataset.nav);
    [[i - 1, box.dataset.previous], [i + 1, box.dataset.next]].forEach(function (way) {
      if (landings[way[0]]) {
        var link = document.createElement("a");
        link.href = "#" + landings[way[0]].id;
        link.textContent = way[1];
        nav.appendChild(link);
      }
    });
    landing.querySelector("h3").after(nav);
  });
  if (landings.length > 0) { choose(document.getElementById(box.dataset.chosen) || landings[0]); }
  window.addEventListener("hashchange", follow);
  /* A press on the landing that is chosen already is no change of address. */
  document.addEventListener("click", function (event) {
    var link = event.target.closest && event.target.closest("a[href='" + location.hash + "']");
    if (link !== null && location.hash !== "") { follow(); }
  });
  window.addEventListener("beforeprint", function () {
    document.querySelectorAll("details:not(#glossary)").forEach(function (each) { each.open = true; });
  });
  follow();
})();
