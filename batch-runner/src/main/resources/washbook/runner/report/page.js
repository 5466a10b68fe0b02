"use strict";
for (const table of document.querySelectorAll("table.sortable")) {
  const heads = [...table.tHead.rows[0].cells];
  table.classList.add("cards");
  for (const row of table.tBodies[0].rows) {
    [...row.cells].forEach((cell, i) => { cell.dataset.label = heads[i].textContent; });
  }
  if (table.tBodies[0].rows.length > 12) {
    const filter = document.createElement("input");
    filter.className = "filter";
    filter.type = "search";
    filter.placeholder = "Show rows with \u2026";
    filter.setAttribute("aria-label", "Show rows with this text");
    filter.addEventListener("input", () => {
      const wanted = filter.value.toLowerCase();
      for (const row of table.tBodies[0].rows) {
        row.hidden = !row.textContent.toLowerCase().includes(wanted);
      }
    });
    table.before(filter);
  }
  heads.forEach((head, column) => head.firstElementChild.addEventListener("click", () => {
    const up = head.getAttribute("aria-sort") !== "ascending";
    heads.forEach((other) => other.removeAttribute("aria-sort"));
    head.setAttribute("aria-sort", up ? "ascending" : "descending");
    const body = table.tBodies[0];
    const value = (row) => row.cells[column].textContent;
    const both = (a, b) => {
      const x = value(a), y = value(b), p = parseFloat(x), q = parseFloat(y);
      const numeric = row => row.cells[column].classList.contains("number");
      if (numeric(a) && numeric(b)) {
        return (isNaN(p) ? Infinity : p) - (isNaN(q) ? Infinity : q) || 0;
      }
      return x.localeCompare(y, "en", { numeric: true });
    };
    const rows = [...body.rows].sort((a, b) => up ? both(a, b) : both(b, a));
    body.append(...rows);
  }));
}
