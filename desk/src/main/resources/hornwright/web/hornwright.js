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
    if (grid.elements.with) form.set("with", grid.elements.with.value);
    const answer = await fetch(grid.action, { method: "POST", headers: { "X-Live": "yes" }, body: new URLSearchParams(form) });
    if (!answer.ok) throw answer.status;
    put(await answer.text());
    // Said to those who listen, by a line that was there before; the focus stays where it is.
    document.getElementById("heard").textContent = `${job.field.getAttribute("aria-label")}: ${document.getElementById("said-" + job.field.id).textContent}`;
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
      const ask = new URLSearchParams({ name: field.name, typed: field.value, sheet: grid.elements.sheet.value, ...(grid.elements.with && { with: grid.elements.with.value }) });
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
document.querySelector(".survey")?.addEventListener("change", event => {
  if (event.target.name === "condition" && event.target.form.querySelector(".palette input:checked")) event.target.form.requestSubmit();
});
// ---- a photograph: a pointer marks the very spot, not only the cell under it ----
document.querySelector(".cells")?.addEventListener("click", event => {
  if (event.detail === 0 || event.target.name !== "at") return;
  const box = event.currentTarget.getBoundingClientRect();
  const share = (at, from, size) => Math.min(1, Math.max(0, (at - from) / size)).toFixed(4);
  event.target.value = share(event.clientX, box.left, box.width) + "," + share(event.clientY, box.top, box.height);
});

// ---- the ghost on the shelf opens the form ----
document.querySelector(".unborn a")?.addEventListener("click", () => { document.getElementById("new-horn").open = true; });

// ---- refused forms are shown, not dropped ----
document.addEventListener("htmx:beforeSwap", event => {
  if (event.detail.xhr.status === 422) { event.detail.shouldSwap = true; event.detail.isError = false; }
});

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
