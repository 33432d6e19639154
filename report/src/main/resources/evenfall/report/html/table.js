/* The table of landings: sorted by a press on a head, narrowed by foot, height and form. */
(function () {
  var table = document.querySelector("table.all");
  var bar = document.querySelector(".narrowing");
  if (table === null) { return; }
  var body = table.tBodies[0];
  var rows = Array.prototype.slice.call(body.rows);
  var said = bar.querySelector("[role=status]");
  function narrow() {
    var shown = 0;
    rows.forEach(function (row) {
      row.hidden = Array.prototype.some.call(bar.querySelectorAll("select"), function (select) {
        return select.value !== "" && row.dataset[select.dataset.by] !== select.value;
      });
      shown += row.hidden ? 0 : 1;
    });
    said.textContent = shown === 0 ? said.dataset.none : "";
  }
  bar.querySelectorAll("select").forEach(function (select) {
    var values = [];
    rows.forEach(function (row) {
      var value = row.dataset[select.dataset.by];
      if (value !== "" && values.indexOf(value) < 0) { values.push(value); }
    });
    if (select.dataset.by === "height") { values.sort(function (a, b) { return a - b; }); }
    select.add(new Option(bar.dataset.all, ""));
    values.forEach(function (value) {
      select.add(new Option(select.dataset.by === "height" ? value + " m" : value, value));
    });
    select.addEventListener("change", narrow);
  });
  bar.hidden = false;
  function compare(column, down) {
    return function (a, b) {
      var x = a.cells[column].dataset.size;
      var y = b.cells[column].dataset.size;
      if (x === y) { return rows.indexOf(a) - rows.indexOf(b); }
      if (x === "" || y === "") { return x === "" ? 1 : -1; }
      var order = isNaN(x) || isNaN(y) ? (x < y ? -1 : 1) : x - y;
      return down ? -order : order;
    };
  }
  table.querySelectorAll("th[data-sorts]").forEach(function (head, column) {
    var button = document.createElement("button");
    button.type = "button";
    button.className = "sort";
    button.setAttribute("aria-label", bar.dataset.sort.replace("{0}", head.textContent.trim()));
    head.appendChild(button);
    button.addEventListener("click", function () {
      var was = head.getAttribute("aria-sort");
      /* The first press shows the largest first, for that is what one looks for; landings and times count up. */
      var down = was === null ? head.dataset.sorts === "down" : was === "ascending";
      table.querySelectorAll("th[aria-sort]").forEach(function (each) { each.removeAttribute("aria-sort"); });
      head.setAttribute("aria-sort", down ? "descending" : "ascending");
      rows.slice().sort(compare(column, down)).forEach(function (row) { body.appendChild(row); });
    });
  });
})();
