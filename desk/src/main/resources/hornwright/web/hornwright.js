// Comforts only: every page works without this file.

// ---- parts of a page that an answer replaces, each where the part of the same id stood ----
function put(html) {
  const part = document.createElement("template");
  part.innerHTML = html;
  for (const fresh of part.content.querySelectorAll("[id]")) {
    const old = document.getElementById(fresh.id);
    if (old) { old.replaceWith(fresh); htmx.process(fresh); }
  }
}

// ---- measuring: leaving a field keeps it, Enter goes on, typing shows what would follow ----
const grid = document.querySelector("form.grid");
if (grid) {
  const fields = [...grid.querySelectorAll("input[type=text], select")];
  const kept = new Map(fields.map(field => [field, field.value]));
  const link = document.getElementById("link");
  const queue = [];
  let busy = false, glance = 0, looking;

  const told = (field, words, kind) => {
    const span = document.createElement("span");
    span.className = kind;
    span.textContent = words;
    document.getElementById("said-" + field.id).replaceChildren(span);
  };

  async function send(job) {
    const form = new FormData();
    form.set(job.field.name, job.text);
    form.set("key", job.key);
    form.set("seq", document.getElementById("seq").value);
    form.set("sheet", grid.elements.sheet.value);
    const answer = await fetch(grid.action, { method: "POST", headers: { "X-Live": "yes" }, body: new URLSearchParams(form) });
    if (!answer.ok) throw answer.status;
    put(await answer.text());
    const fault = document.querySelector("#said-" + job.field.id + " .fault");
    job.field.toggleAttribute("aria-invalid", Boolean(fault));
    if (fault) job.field.setAttribute("aria-invalid", "true");
    if (fault && kept.get(job.field) === job.text) kept.set(job.field, null);
    if (!fault) job.field.defaultValue = job.text;
  }

  async function work() {
    if (busy) return;
    busy = true;
    while (queue.length) {
      try {
        await send(queue[0]);
        queue.shift();
        link.textContent = "";
      } catch (why) {
        if (typeof why === "number" && why < 500) {
          told(queue[0].field, "Not saved: another window changed this. Load the page again and look.", "fault");
          kept.set(queue.shift().field, null);
          document.dispatchEvent(new Event("hornwright:behind"));
          continue;
        }
        queue.forEach(job => told(job.field, "not saved yet", "waiting"));
        link.textContent = `The bench does not answer. ${queue.length === 1 ? "One reading is" : queue.length + " readings are"} kept here and saved when it is back.`;
        await new Promise(done => setTimeout(done, 1500));
      }
    }
    busy = false;
  }

  function keep(field) {
    const text = field.value.trim();
    if (text === kept.get(field) || "theirs" in field.dataset) return;
    kept.set(field, text);
    queue.push({ field, text, key: crypto.randomUUID() });
    work();
  }

  function look(field) {
    clearTimeout(looking);
    const mine = ++glance;
    looking = setTimeout(async () => {
      const ask = new URLSearchParams({ name: field.name, typed: field.value, sheet: grid.elements.sheet.value });
      const answer = await fetch(grid.dataset.preview + "?" + ask, { headers: { "X-Live": "yes" } }).catch(() => null);
      if (answer?.ok && mine === glance && document.activeElement === field) put(await answer.text());
    }, 150);
  }

  // Another window wrote here. An untouched field just shows it; over one's own typing both stand until one is chosen.
  grid.addEventListener("hornwright:told", event => kept.set(event.target, event.target.value.trim()));
  grid.addEventListener("hornwright:theirs", event => {
    const field = event.target, mine = field.value.trim(), theirs = field.dataset.theirs;
    told(field, `Two windows: ${theirs || "nothing"} there, ${mine || "nothing"} here. `, "fault");
    for (const [value, take] of [[theirs, false], [mine, true]]) {
      const button = document.createElement("button");
      button.type = "button";
      button.className = "plain";
      button.textContent = `Keep ${value || "nothing"}`;
      button.addEventListener("click", () => {
        delete field.dataset.theirs;
        field.value = value;
        field.defaultValue = theirs;
        kept.set(field, theirs);
        if (take) keep(field); else told(field, "as the other window has it", "remark");
        field.focus();
      });
      document.getElementById("said-" + field.id).append(button);
    }
  });

  grid.addEventListener("input", event => look(event.target));
  grid.addEventListener("change", event => { if (event.target.matches("select")) keep(event.target); });
  grid.addEventListener("focusout", event => { if (kept.has(event.target)) { clearTimeout(looking); glance++; keep(event.target); } });
  grid.addEventListener("keydown", event => {
    const at = fields.indexOf(event.target);
    if (at < 0 || event.target.matches("select")) return;
    const to = event.key === "Enter" || event.key === "ArrowDown" ? at + 1 : event.key === "ArrowUp" ? at - 1 : at;
    if (event.key === "Enter") event.preventDefault();
    if (to === at) return;
    event.preventDefault();
    if (fields[to]) { fields[to].focus(); fields[to].select?.(); } else keep(event.target);
  });
  grid.addEventListener("submit", event => { event.preventDefault(); fields.forEach(keep); });
  addEventListener("beforeunload", event => { if (queue.length) event.preventDefault(); });
  const asked = location.hash && document.querySelector(`${CSS.escape(location.hash).replace("\\#", "#")} input`);
  if (asked) asked.focus();
}

// ---- the horn: a place is taken in hand by pointer or by keyboard; a layer only colours it ----
const stage = document.querySelector(".stage[data-horn]");
if (stage) {
  const home = "/horn/" + stage.dataset.horn;
  const places = [...stage.querySelectorAll(".place")];
  let shown = location.href;
  const middle = place => {
    const box = place.getBoundingClientRect();
    return { x: box.left + box.width / 2, y: box.top + box.height / 2 };
  };

  const layerNow = () => stage.querySelector(".layers a[aria-current]").dataset.layer;

  function mark(id) {
    for (const one of document.querySelectorAll("[data-place]")) {
      if (one.dataset.place === id) one.setAttribute("aria-current", "true"); else one.removeAttribute("aria-current");
    }
    for (const place of places) place.setAttribute("tabindex", place.dataset.place === id ? "0" : "-1");
    if (id && !places.some(place => place.dataset.place === id)) places[0]?.setAttribute("tabindex", "0");
  }

  async function open(id, remember = true) {
    mark(id);
    await htmx.ajax("GET", `${home}/place/${encodeURIComponent(id)}`, { target: "#place", swap: "innerHTML" });
    if (remember) history.pushState({ place: id }, "", `${home}?layer=${layerNow()}&place=${encodeURIComponent(id)}`);
    shown = location.href;
    const top = document.getElementById("place").getBoundingClientRect().top;
    if (top > innerHeight * .6) scrollBy(0, top - innerHeight * .5);
  }

  // The nearest place within a fingertip, since a slip of cork is smaller than a finger.
  function nearest(x, y) {
    let best, least = 22;
    for (const place of places) {
      const box = place.getBoundingClientRect();
      const away = Math.hypot(Math.max(box.left - x, 0, x - box.right), Math.max(box.top - y, 0, y - box.bottom));
      const off = away + Math.hypot(middle(place).x - x, middle(place).y - y) / 1000;
      if (off < least) { least = off; best = place; }
    }
    return best;
  }

  stage.addEventListener("click", event => {
    const layer = event.target.closest("a[data-layer]");
    if (layer) { event.preventDefault(); colour(layer); return; }
    if (!event.target.closest(".unrolled")) return;
    const place = event.target.closest(".place") ?? nearest(event.clientX, event.clientY);
    if (place) { place.focus({ preventScroll: true }); open(place.dataset.place); }
  });

  stage.addEventListener("keydown", event => {
    const place = event.target.closest?.(".place");
    if (!place) return;
    if (event.key === "Enter" || event.key === " ") { event.preventDefault(); open(place.dataset.place); return; }
    const way = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] }[event.key];
    if (!way) return;
    event.preventDefault();
    const from = middle(place);
    let best, least = Infinity;
    for (const other of places) {
      const to = middle(other), ahead = (to.x - from.x) * way[0] + (to.y - from.y) * way[1];
      const aside = Math.abs((to.x - from.x) * way[1]) + Math.abs((to.y - from.y) * way[0]);
      if (other !== place && ahead > 1 && ahead + 2.5 * aside < least) { least = ahead + 2.5 * aside; best = other; }
    }
    if (best) { place.setAttribute("tabindex", "-1"); best.setAttribute("tabindex", "0"); best.focus(); }
  });

  document.querySelector(".every").addEventListener("click", event => {
    const line = event.target.closest("a[data-place]");
    if (line && !event.ctrlKey && !event.metaKey) { event.preventDefault(); open(line.dataset.place); }
  });

  // The drawing stays; each place takes over what the other layer says of it, so focus and place in hand are kept.
  async function colour(layer) {
    const here = new URL(layer.href);
    const open = new URLSearchParams(location.search).get("place");
    if (open) here.searchParams.set("place", open);
    const answer = await fetch(here).catch(() => null);
    if (!answer?.ok) { location.href = here; return; }
    const page = new DOMParser().parseFromString(await answer.text(), "text/html");
    const other = page.querySelector(".stage");
    for (const place of places) recolour(place, other.querySelector("#" + CSS.escape(place.id)));
    stage.querySelector("defs").replaceWith(other.querySelector("defs"));
    stage.dataset.layer = other.dataset.layer;
    stage.querySelector(".legend").replaceWith(other.querySelector(".legend"));
    for (const one of stage.querySelectorAll(".layers a")) {
      if (one === layer) one.setAttribute("aria-current", "true"); else one.removeAttribute("aria-current");
    }
    for (const line of document.querySelectorAll(".every a[data-place]")) {
      const fresh = page.querySelector(`.every a[data-place="${CSS.escape(line.dataset.place)}"]`);
      line.querySelector(".what").replaceWith(fresh.querySelector(".what"));
      line.href = fresh.href;
    }
    history.replaceState(history.state, "", here);
    shown = location.href;
  }

  function recolour(place, like) {
    place.setAttribute("class", like.getAttribute("class"));
    place.dataset.state = like.dataset.state;
    place.setAttribute("aria-label", like.getAttribute("aria-label"));
    place.querySelector("title").textContent = like.querySelector("title").textContent;
    const faces = like.querySelectorAll(".face");
    place.querySelectorAll(".face").forEach((face, at) => {
      const fill = faces[at]?.getAttribute("fill");
      if (fill) face.setAttribute("fill", fill); else face.removeAttribute("fill");
    });
    place.querySelector(".token")?.remove();
    const token = like.querySelector(".token");
    if (token) place.append(token);
  }

  addEventListener("popstate", () => { if (location.href !== shown) location.reload(); });
  mark(new URLSearchParams(location.search).get("place"));
  if (!places.some(place => place.getAttribute("tabindex") === "0")) places[0]?.setAttribute("tabindex", "0");
}

// ---- body pins: the drawing is touched where the damage is ----
document.querySelector(".pinning svg")?.addEventListener("click", event => {
  const svg = event.currentTarget, form = document.querySelector(".new-pin");
  const at = new DOMPoint(event.clientX, event.clientY).matrixTransform(svg.getScreenCTM().inverse());
  form.elements.x.value = at.x.toFixed(1);
  form.elements.y.value = at.y.toFixed(1);
  svg.querySelector(".pin.new")?.remove();
  const pin = document.createElementNS("http://www.w3.org/2000/svg", "path");
  pin.setAttribute("class", "pin new");
  pin.setAttribute("d", `M${at.x} ${at.y}l-7 -18a10 10 0 1 1 14 0z`);
  svg.append(pin);
  document.getElementById("pin-spot").textContent = "The pin stands where you touched.";
  form.elements.size.focus({ preventScroll: true });
});

// ---- the survey: a tap on a material paints at once; the keyboard chooses first and paints with Enter ----
document.querySelector(".survey")?.addEventListener("click", event => {
  if (event.detail > 0 && event.target.matches(".palette input")) event.target.form.requestSubmit();
});
// ---- a photograph: a pointer marks the very spot, not only the cell under it ----
document.querySelector(".cells")?.addEventListener("click", event => {
  if (event.detail === 0 || event.target.name !== "at") return;
  const box = event.currentTarget.getBoundingClientRect();
  const share = (at, from, size) => Math.min(1, Math.max(0, (at - from) / size)).toFixed(4);
  event.target.value = share(event.clientX, box.left, box.width) + "," + share(event.clientY, box.top, box.height);
});

// ---- the ghost on the shelf opens the form ----
document.querySelector(".ghost a")?.addEventListener("click", () => { document.getElementById("new-horn").open = true; });

// ---- a because that opens takes the eye to it, also for those who listen, and leads back to the one it covers; refused forms are shown, not dropped ----
let because = "", within = false;
const numberOf = address => {
  const of = new URL(address, location).searchParams.get("of");
  return [...document.querySelectorAll("a.why")].find(one => !one.closest("#because") && new URL(one.href).searchParams.get("of") === of);
};
const panel = () => document.getElementById("because");

document.addEventListener("htmx:configRequest", event => {
  const { target, elt } = event.detail;
  if (target?.id !== "because" || !because || !target.hasChildNodes() || !elt.matches("a.why") || target.contains(elt)) return;
  const before = new URL(because, location).searchParams;
  const read = [...before.getAll("by"), before.get("of")];
  const again = read.indexOf(new URL(elt.href).searchParams.get("of"));
  for (const one of (again < 0 ? read : read.slice(0, again)).slice(-8)) event.detail.path += "&by=" + encodeURIComponent(one);
});
document.addEventListener("htmx:beforeSwap", event => {
  const { target, xhr, requestConfig, pathInfo } = event.detail;
  if (xhr.status === 422) { event.detail.shouldSwap = true; event.detail.isError = false; }
  if (target.id !== "because" || !event.detail.shouldSwap) return;
  const elt = requestConfig.elt, recalled = elt === document.body, asked = pathInfo.requestPath;
  within = target.contains(elt) || (recalled && target.contains(document.activeElement));
  if (!recalled && !(asked === because && target.hasChildNodes())) history.pushState({ ...history.state, because: asked }, "");
  because = asked;
  // In a table it opens right under its row, and goes back to it; a term followed within it stays where it is.
  const number = recalled || elt.closest(".why-back") ? numberOf(asked) : target.contains(elt) ? null : elt;
  const row = number?.closest("table.ruled tbody tr");
  if (!row || row.nextElementSibling?.contains(target)) return;
  document.querySelector("tr.because-row")?.replaceWith();
  const under = document.createElement("tr"), cell = document.createElement("td");
  under.className = "because-row";
  cell.colSpan = row.cells.length;
  cell.append(target);
  under.append(cell);
  row.after(under);
});
document.addEventListener("htmx:afterSwap", event => {
  if (event.detail.target.id !== "because") return;
  event.detail.target.scrollIntoView({ block: "nearest" });
  if (within) event.detail.target.querySelector(".why-head")?.focus({ preventScroll: true });
});

// Back and forward of the browser go through the becauses that were opened here, and close the first.
function recall() {
  const wanted = history.state?.because ?? "", open = panel();
  if (!open || (wanted === because && open.hasChildNodes()) || (!wanted && !open.hasChildNodes())) return;
  if (wanted) { htmx.ajax("GET", wanted, { target: "#because", swap: "innerHTML" }); return; }
  const held = open.contains(document.activeElement) ? numberOf(because) : null;
  because = "";
  open.replaceChildren();
  held?.focus();
}
addEventListener("popstate", recall);
recall();

// ---- the compartment, slip and sheet in use are in sight ----
for (const row of document.querySelectorAll(".tray, .slips, .sheets")) {
  const used = row.querySelector("[aria-current]");
  if (used) row.scrollLeft = used.offsetLeft - 40;
}

// ---- painting a witness: a place tapped on the drawing opens its stroke with that place alone ticked ----
const canvas = document.querySelector(".canvas");
if (canvas) {
  const take = place => {
    const tick = document.querySelector(`#painting input[type=checkbox][value="${CSS.escape(place.dataset.place)}"]`);
    const stroke = tick?.closest(".stroke");
    if (!stroke) return;
    document.querySelector(".stroke.in-hand")?.classList.remove("in-hand");
    stroke.classList.add("in-hand");
    for (let within = tick.closest("details"); within; within = within.parentElement.closest("details")) within.open = true;
    const all = [...stroke.querySelectorAll("input[type=checkbox]")];
    if (all.every(one => one.checked)) all.forEach(one => { one.checked = one === tick; }); else tick.checked = true;
    stroke.scrollIntoView({ block: "center" });
    stroke.querySelector("input[type=radio]").focus({ preventScroll: true });
  };
  canvas.addEventListener("click", event => { const place = event.target.closest(".place"); if (place) take(place); });
  canvas.addEventListener("keydown", event => {
    const place = event.target.closest?.(".place");
    if (place && (event.key === "Enter" || event.key === " ")) { event.preventDefault(); take(place); }
  });
}
