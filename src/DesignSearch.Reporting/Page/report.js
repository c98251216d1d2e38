"use strict";
// The page reads in full without this; it adds sorting, opening a layout from the chart, and walking the chart by arrow keys.
for (const table of document.querySelectorAll("table[data-sortable]")) {
  const body = table.tBodies[0];
  const heads = [...table.tHead.rows[0].cells];
  heads.forEach((head, column) => {
    const button = document.createElement("button");
    button.type = "button";
    button.textContent = head.textContent;
    head.replaceChildren(button);
    button.addEventListener("click", () => {
      const down = head.getAttribute("aria-sort") === "ascending";
      heads.forEach(h => h.removeAttribute("aria-sort"));
      head.setAttribute("aria-sort", down ? "descending" : "ascending");
      const key = row => row.cells[column].dataset.key;
      const rows = [...body.rows].sort((a, b) => {
        const [x, y] = [key(a), key(b)];
        if (x !== undefined && y !== undefined) return x - y;
        if (x !== y) return x === undefined ? 1 : -1;
        return a.cells[column].textContent.localeCompare(b.cells[column].textContent, "en", { numeric: true });
      });
      if (down) rows.reverse();
      body.append(...rows);
    });
  });
}

function openPlace(id) {
  const place = id && document.getElementById(id);
  if (!place) return;
  for (let fold = place.closest("details"); fold; fold = fold.parentElement.closest("details")) fold.open = true;
  if (place.tagName === "DETAILS") place.querySelector("summary").focus({ preventScroll: true });
  place.scrollIntoView();
}

addEventListener("hashchange", () => openPlace(location.hash.slice(1)));
for (const link of document.querySelectorAll("a[href^='#']:not(.skip)"))
  link.addEventListener("click", event => {
    event.preventDefault();
    history.pushState(null, "", link.getAttribute("href"));
    openPlace(link.getAttribute("href").slice(1));
  });
openPlace(location.hash.slice(1));

const all = document.getElementById("all");
if (all) {
  all.hidden = false;
  all.addEventListener("click", () => document.querySelectorAll("details").forEach(d => { d.open = true; }));
}

// What is ticked stays ticked when the page is opened again, on this machine and for this list.
document.querySelectorAll("input[type=checkbox]").forEach((box, i) => {
  const key = `${document.title} ${document.querySelector("h1").textContent} ${i} ${box.getAttribute("aria-label")}`;
  try {
    box.checked = localStorage.getItem(key) === "1";
    box.addEventListener("change", () => localStorage.setItem(key, box.checked ? "1" : "0"));
  } catch {
    // A browser that keeps nothing for a page from a disk: the ticks last as long as the page is open.
  }
});

for (const chart of document.querySelectorAll("svg.chart")) {
  const points = [...chart.querySelectorAll("a")];
  const readout = chart.closest("figure").querySelector(".readout");
  const say = point => { readout.textContent = point.getAttribute("aria-label"); };
  const stop = chosen => points.forEach(p => p.setAttribute("tabindex", p === chosen ? "0" : "-1"));
  if (points.length > 0) stop(points[0]);
  points.forEach((point, i) => {
    point.addEventListener("focus", () => { stop(point); say(point); });
    point.addEventListener("mouseenter", () => say(point));
    point.addEventListener("keydown", event => {
      const to = { ArrowRight: i + 1, ArrowDown: i + 1, ArrowLeft: i - 1, ArrowUp: i - 1, Home: 0, End: points.length - 1 }[event.key];
      if (to === undefined || !points[to]) return;
      event.preventDefault();
      points[to].focus();
    });
  });
}

// A box that does not scroll needs no stop of the tab key.
const boxes = [...document.querySelectorAll(".box")];
const measure = box => box.scrollWidth > box.clientWidth || box.scrollHeight > box.clientHeight ? box.setAttribute("tabindex", "0") : box.removeAttribute("tabindex");
addEventListener("resize", () => boxes.forEach(measure));
document.querySelectorAll("details").forEach(d => d.addEventListener("toggle", () => boxes.forEach(measure)));
boxes.forEach(measure);
