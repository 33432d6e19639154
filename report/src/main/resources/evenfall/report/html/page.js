(function () {
  var landings = document.querySelectorAll("details.landing");
  function all(open) { landings.forEach(function (each) { each.open = open; }); }
  function show() {
    var chosen = document.getElementById(location.hash.slice(1));
    if (chosen !== null) { if (chosen.tagName === "DETAILS") { chosen.open = true; chosen.scrollIntoView(); } }
  }
  all(false);
  if (landings.length !== 0) { landings[0].open = true; }
  window.addEventListener("hashchange", show);
  window.addEventListener("beforeprint", function () { all(true); });
  show();
})();
