"use strict";
for (const table of document.querySelectorAll("table.sortable")) {
  const heads = [...table.tHead.rows[0].cells];
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
