
// ---- another window's edits appear here without loading the page again ----
{
  let source, busy = false, again = false, typedAt = 0;
  const foot = () => document.getElementById("foot");

  const touched = field => field === document.activeElement || (field.type === "checkbox" || field.type === "radio"
    ? field.checked !== field.defaultChecked
    : field.tagName === "SELECT" ? [...field.options].some(one => one.selected !== one.defaultSelected) : field.value !== field.defaultValue);
  const fields = "input:not([type=hidden]), select, textarea";

  function tell(field, name) { field.dispatchEvent(new CustomEvent(name, { bubbles: true })); }

  // A field somebody is typing in is never overwritten; what the other window wrote is told beside it.
  function field(old, fresh) {
    const was = old.defaultValue;
    if (touched(old) && old.value !== was && fresh.defaultValue !== was && fresh.defaultValue !== old.value) {
      if (old.dataset.theirs !== fresh.defaultValue) { old.dataset.theirs = fresh.defaultValue; tell(old, "hornwright:theirs"); }
    } else if (fresh.defaultValue !== was && (old.value === was || old.value === fresh.defaultValue)) {
      old.defaultValue = fresh.defaultValue;
      old.value = fresh.defaultValue;
      tell(old, "hornwright:told");
    }
  }

  const stood = field => field.tagName === "SELECT" ? ([...field.options].find(one => one.defaultSelected) ?? field.options[0])?.value : field.defaultValue;
  const worded = (field, value) => (field.tagName === "SELECT" ? [...field.options].find(one => one.value === value)?.text : value) || "nothing";

  /** A form somebody is writing in: where another window wrote the same field, both stand until one is chosen. */
  function both(old, fresh) {
    for (const field of old.querySelectorAll("input[type=text], input[type=date], textarea, select")) {
      const theirs = stood([...fresh.querySelectorAll(field.tagName)].find(one => one.name === field.name) ?? field), mine = field.value;
      if (theirs === stood(field) || theirs === mine || field.dataset.theirs === theirs) continue;
      old.querySelector(`.both[data-of="${CSS.escape(field.name)}"]`)?.remove();
      field.dataset.theirs = theirs;
      const note = document.createElement("p");
      note.className = "both fault";
      note.role = "alert";
      note.dataset.of = field.name;
      note.textContent = `Two windows: ${worded(field, theirs)} there, ${worded(field, mine)} here. `;
      for (const value of [theirs, mine]) {
        const button = document.createElement("button");
        button.type = "button";
        button.className = "plain";
        button.textContent = `Keep ${worded(field, value)}`;
        button.addEventListener("click", () => {
          delete field.dataset.theirs;
          if (field.tagName === "SELECT") for (const one of field.options) one.defaultSelected = one.value === theirs;
          else field.defaultValue = theirs;
          field.value = value;
          if (old.elements.seq && fresh.elements.seq) old.elements.seq.value = fresh.elements.seq.value;
          note.remove();
          field.focus();
        });
        note.append(button);
      }
      old.append(note);
    }
  }

  const same = (old, fresh) => old.nodeType === fresh.nodeType && old.nodeName === fresh.nodeName && (old.id ?? "") === (fresh.id ?? "");

  /** Makes the old tree like the fresh one, node by node, so that focus, open folds and scrolling stay. */
  function become(old, fresh) {
    if (!same(old, fresh)) { old.replaceWith(fresh); return; }
    if (old.nodeType !== Node.ELEMENT_NODE) { if (old.data !== fresh.data) old.data = fresh.data; return; }
    if (old.matches("input[type=text], input[type=date], textarea")) { field(old, fresh); return; }
    if (old.matches("form:not(.grid)") && [...old.querySelectorAll(fields)].some(touched)) { both(old, fresh); return; }
    if (old.id === "point" || (old.id === "because" && old.hasChildNodes())) return;
    if (old.matches(".told") && "theirs" in (document.getElementById(old.id.slice(5))?.dataset ?? {})) return;
    for (const { name } of [...old.attributes]) {
      if (!fresh.hasAttribute(name) && !["open", "tabindex"].includes(name) && !(old.closest("svg") && name === "aria-current")) old.removeAttribute(name);
    }
    for (const { name, value } of fresh.attributes) {
      if (!["open", "tabindex"].includes(name) && old.getAttribute(name) !== value) old.setAttribute(name, value);
    }
    if (old.type === "checkbox" || old.type === "radio") old.checked = fresh.checked;
    const before = [...old.childNodes], after = [...fresh.childNodes];
    after.forEach((node, at) => { if (before[at]) become(before[at], node); else old.append(node); });
    before.slice(after.length).forEach(node => node.remove());
  }

  async function refresh() {
    if (busy) { again = true; return; }
    busy = true;
    const answer = await fetch(location.href, { headers: { "X-Refresh": "yes" } }).catch(() => null);
    if (answer?.ok) {
      const page = new DOMParser().parseFromString(await answer.text(), "text/html");
      document.querySelector("tr.because-row")?.remove();
      for (const part of ["main", ".tray", ".slips", ".titleblock"]) {
        const old = document.querySelector(part), fresh = page.querySelector(part);
        if (old && fresh) become(old, fresh);
      }
      htmx.process(document.querySelector("main"));
      document.dispatchEvent(new Event("hornwright:refreshed"));
    }
    busy = false;
    if (again) { again = false; refresh(); }
  }

  // One's own saves come back as well; they wait until the hand rests.
  let waiting;
  function behind() {
    clearTimeout(waiting);
    waiting = setTimeout(refresh, Math.max(0, typedAt + 900 - Date.now()));
  }
  addEventListener("keydown", () => { typedAt = Date.now(); }, true);

  // A browser opens few lines to one address, so only a page that is looked at keeps one.
  function listen() {
    source?.close();
    source = undefined;
    if (document.hidden || !foot()?.dataset.live) return;
    source = new EventSource(foot().dataset.live);
    source.addEventListener("edit", behind);
  }

  document.addEventListener("hornwright:behind", behind);
  document.addEventListener("visibilitychange", listen);
  addEventListener("pagehide", () => source?.close());
  // A page that is only passed by opens no line; nothing is missed, since the first answer tells how far the edits have come.
  setTimeout(listen, 3200);
}
