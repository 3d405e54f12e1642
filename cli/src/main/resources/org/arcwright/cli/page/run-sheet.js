(() => {
  "use strict";
  const clock = document.getElementById("clock");
  const say = clock.dataset;
  const items = [...document.querySelectorAll(".item")].map(node => ({
    node, title: node.dataset.title, from: +node.dataset.from * 60000, length: +node.dataset.minutes * 60000
  }));
  const timers = [...document.querySelectorAll(".timer")];
  const place = id => document.getElementById(id);
  const key = "run-sheet " + document.title + " " + say.begins;
  const fresh = () => ({ begun: [], timer: -1, since: 0 });
  const valid = s => s && Array.isArray(s.begun) && s.begun.length <= items.length + 1 && s.begun.every(Number.isFinite);

  // Some browsers keep nothing for a page that is opened from a file; the day then lasts as long as the page is open.
  const load = () => {
    try {
      const kept = JSON.parse(localStorage.getItem(key));
      return valid(kept) ? kept : fresh();
    } catch (e) {
      return fresh();
    }
  };
  const keep = () => {
    try {
      localStorage.setItem(key, JSON.stringify(state));
    } catch (e) {
      // nothing to be done
    }
  };
  let state = load();

  const minutes = ms => Math.ceil(Math.abs(ms) / 60000);
  const fill = (pattern, value) => pattern.replace("#", value);
  const text = (id, value) => {
    if (place(id).textContent !== value) place(id).textContent = value;
  };
  const mmss = ms => Math.floor(ms / 60000) + ":" + String(Math.floor(ms / 1000) % 60).padStart(2, "0");

  function draw() {
    const now = Date.now();
    const at = state.begun.length - 1;
    const planned = say.begins ? +say.begins : (state.begun[0] || now);
    items.forEach((item, i) => {
      if (i === at) item.node.setAttribute("aria-current", "step");
      else item.node.removeAttribute("aria-current");
      item.node.classList.toggle("past", i < at);
    });
    if (at < 0) {
      text("now", say.begins && planned > now && planned - now < 86400000 ? fill(say.soon, minutes(planned - now)) : say.ready);
      text("left", "");
      text("ahead", "");
    } else if (at >= items.length) {
      text("now", say.end);
      text("left", "");
      text("ahead", "");
    } else {
      const item = items[at];
      const left = item.length - (now - state.begun[at]);
      text("now", item.title);
      text("left", fill(left >= 0 ? say.left : say.over, minutes(left)));
      const late = state.begun[at] - (planned + item.from) + Math.max(0, -left);
      text("ahead", Math.abs(late) < 60000 ? say.plan
        : fill(late > 0 ? say.behind : say.ahead, Math.floor(Math.abs(late) / 60000)));
    }
    const next = items[at + 1];
    text("next", next ? fill(say.next, next.title) : at < items.length ? say.last : "");
    place("go").textContent = at < 0 ? place("go").dataset.begin : place("go").dataset.on;
    place("go").disabled = at >= items.length;
    place("back").disabled = at < 0;
    timers.forEach((timer, i) => {
      const left = state.timer === i ? timer.dataset.seconds * 1000 - (now - state.since) : 0;
      const label = state.timer === i ? (left >= 0 ? mmss(left) : "+" + mmss(-left)) : timer.dataset.label;
      if (timer.textContent !== label) timer.textContent = label;
      timer.classList.toggle("over", left < 0);
    });
  }

  function act(change) {
    change();
    keep();
    draw();
  }
  place("go").addEventListener("click", () => act(() => {
    state.begun.push(Date.now());
    state.timer = -1;
    const item = items[state.begun.length - 1];
    if (item) item.node.scrollIntoView({ block: "start" });
  }));
  place("back").addEventListener("click", () => act(() => { state.begun.pop(); state.timer = -1; }));
  place("again").addEventListener("click", () => act(() => { state = fresh(); }));
  timers.forEach((timer, i) => {
    timer.hidden = false;
    timer.addEventListener("click", () => act(() => {
      state.timer = state.timer === i ? -1 : i;
      state.since = Date.now();
    }));
  });
  clock.hidden = false;
  draw();
  setInterval(draw, 500);
})();
