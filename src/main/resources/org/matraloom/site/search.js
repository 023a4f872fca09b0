
"use strict";
const plain = (text) => text.normalize("NFD").replace(/[\u0300-\u036f]/g, "").toLowerCase();
const rows = Array.from(document.querySelectorAll("tbody tr"), (row) => [row, plain(Array.from(row.cells, (cell) => cell.textContent).join(" "))]);
const field = document.getElementById("find");
const found = document.getElementById("found");
const search = () => {
  const words = plain(field.value).split(/\s+/).filter(Boolean);
  let shown = 0;
  for (const [row, text] of rows) {
    const fits = words.every((word) => text.includes(word));
    if (row.hidden === fits) row.hidden = !fits;
    shown += fits;
  }
  found.textContent = words.length ? shown + " of " + rows.length : "";
};
field.addEventListener("input", search);
document.getElementById("search").hidden = false;
search();
