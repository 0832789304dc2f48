// Comfort only: the page is whole without it.
(() => {
  const plan = document.querySelector("main").dataset.plan;
  const boxes = document.querySelectorAll("input[type=checkbox]");
  try {  // a browser may keep nothing for a file
    for (const box of boxes) {
      const key = `coatday ${plan} ${box.id}`;
      const kept = localStorage.getItem(key);
      if (kept !== null) box.checked = kept === "1";
      box.addEventListener("change", () => localStorage.setItem(key, box.checked ? "1" : "0"));
    }
  } catch { /* ticks last as long as the page is open */ }

  const within = (element, now) => Number(element.dataset.from) <= now && now < Number(element.dataset.until);
  const mark = () => {
    const now = Date.now() / 1000;
    document.querySelectorAll(".now").forEach((line) => line.remove());
    for (const strip of document.querySelectorAll(".strip")) {
      if (!within(strip, now)) continue;
      const line = document.createElementNS("http://www.w3.org/2000/svg", "line");
      const from = Number(strip.dataset.from);
      const x = `${100 * (now - from) / (Number(strip.dataset.until) - from)}%`;
      for (const [name, value] of [["class", "now"], ["x1", x], ["x2", x], ["y2", "100%"]]) line.setAttribute(name, value);
      strip.querySelector("svg").append(line);
    }
    for (const day of document.querySelectorAll("article.day")) {
      if (within(day, now)) day.setAttribute("aria-current", "date");
      else day.removeAttribute("aria-current");
    }
  };
  mark();
  setInterval(mark, 60000);

  // "Today and next" follows the calendar once the plan runs.
  const days = [...document.querySelectorAll("article.day")];
  const now = Date.now() / 1000;
  const today = days.findIndex((day) => within(day, now));
  const briefs = document.querySelector(".briefs");
  if (today < 0 || !briefs) return;
  const brief = (day, word) => {
    const box = document.createElement("div");
    box.className = "brief";
    box.append(Object.assign(document.createElement("h3"), { textContent: `${word}, ${day.querySelector("h3").textContent}` }));
    const list = document.createElement("ol");
    for (const step of day.querySelectorAll(".steps > li:not(.wait)")) {
      const item = document.createElement("li");
      const what = document.createElement("span");
      what.append(Object.assign(document.createElement("b"), { textContent: step.querySelector("label").textContent }));
      const subject = step.querySelector(".what > p:not(.how)");
      if (subject) what.append(` ${subject.textContent}`);
      item.append(step.querySelector("time").cloneNode(true), what);
      list.append(item);
    }
    if (!list.children.length) list.append(Object.assign(document.createElement("p"), { textContent: day.querySelector(".lead").textContent }));
    box.append(list);
    return box;
  };
  const next = days.slice(today + 1).find((day) => !day.classList.contains("quiet"));
  briefs.replaceChildren(brief(days[today], "Today"), ...(next ? [brief(next, "Next")] : []));
})();
