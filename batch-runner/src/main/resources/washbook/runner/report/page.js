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
    filter.placeholder = "{filter}";
    filter.setAttribute("aria-label", "{filterLabel}");
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
    const value = ({ cells: { [column]: cell } }) => cell.dataset.sort ?? cell.textContent;
    const number = (text) => parseFloat(text.replace(",", "."));
    const both = (a, b) => {
      const x = value(a), y = value(b), p = number(x), q = number(y);
      const numeric = row => row.cells[column].classList.contains("number");
      if (numeric(a) && numeric(b)) {
        return (isNaN(p) ? Infinity : p) - (isNaN(q) ? Infinity : q) || 0;
      }
      return x.localeCompare(y, "{language}", { numeric: true });
    };
    const rows = [...body.rows].sort((a, b) => up ? both(a, b) : both(b, a));
    body.append(...rows);
  }));
}
