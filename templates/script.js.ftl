<#ftl output_format="undefined">
"use strict";
(function () {
  var form = document.getElementById("filter");
  var table = document.getElementById("claim-table");
  if (!form || !table) { return; }
  var body = table.tBodies[0];
  var rows = Array.prototype.slice.call(body.rows);
  var shown = document.getElementById("shown");
  var empty = document.getElementById("none-shown");
  function wanted(row) {
    var text = form.elements.text.value.trim().toLowerCase();
    var product = form.elements.product ? form.elements.product.value : "";
    var boxes = Array.prototype.slice.call(form.querySelectorAll("input[name=verdict]"));
    var ticked = boxes.filter(function (box) { return box.checked; }).map(function (box) { return box.value; });
    return ticked.indexOf(row.dataset.verdict) >= 0
      && (product === "" || row.dataset.product === product)
      && (text === "" || row.textContent.toLowerCase().indexOf(text) >= 0);
  }
  function filter() {
    var count = 0;
    rows.forEach(function (row) {
      row.hidden = !wanted(row);
      count += row.hidden ? 0 : 1;
    });
    shown.textContent = String(count);
    empty.hidden = count > 0;
  }
  function key(row, column) {
    var cell = row.cells[column];
    return cell.dataset.sort === undefined ? cell.textContent.trim() : cell.dataset.sort;
  }
  function sort(head, column) {
    var down = head.getAttribute("aria-sort") === "ascending";
    Array.prototype.forEach.call(table.tHead.rows[0].cells, function (other) { other.removeAttribute("aria-sort"); });
    head.setAttribute("aria-sort", down ? "descending" : "ascending");
    rows.slice().sort(function (a, b) {
      var order = key(a, column).localeCompare(key(b, column), undefined, { numeric: true });
      return down ? -order : order;
    }).forEach(function (row) { body.appendChild(row); });
  }
  Array.prototype.forEach.call(table.tHead.rows[0].cells, function (head, column) {
    if (!head.hasAttribute("data-sortable")) { return; }
    var button = document.createElement("button");
    button.type = "button";
    button.textContent = head.textContent;
    var paper = document.createElement("span");
    paper.className = "paper";
    paper.setAttribute("aria-hidden", "true");
    paper.textContent = head.textContent;
    head.textContent = "";
    head.appendChild(paper);
    button.addEventListener("click", function () { sort(head, column); });
    head.appendChild(button);
  });
  form.addEventListener("input", filter);
  form.addEventListener("reset", function () { window.setTimeout(filter, 0); });
  form.addEventListener("submit", function (event) { event.preventDefault(); });
  form.hidden = false;
  filter();
}());
