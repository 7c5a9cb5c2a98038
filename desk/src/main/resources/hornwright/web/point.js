
// ---- one point: a caliper's burst is told from typing by its pace; keys for the plates ----
if (document.getElementById("point") || document.querySelector(".caliper")) {
  const PACE = 35, LEAST = 4;
  // What stood before and after the run of letters that is arriving; the text between them is the burst.
  let run = [], before = "", after = "", busy = false, held = [], spoilt = false;
  const form = () => document.querySelector("#point form");
  const field = () => document.getElementById("value");
  const say = words => { document.getElementById("point-said").textContent = words; };
  const plateOf = key => key.length > 1 && form().querySelector(`[data-keys~="${key}"]`);
  const fast = keys => keys.length >= LEAST && keys.every((one, at) => at === 0 || one.at - keys[at - 1].at < PACE);

  function letter(key) {
    // A pause begins another run: what a burst replaces is everything typed before it.
    if (!run.length || key.at - run.at(-1).at >= PACE) {
      run = [];
      before = field().value.slice(0, field().selectionStart);
      after = field().value.slice(field().selectionEnd);
    }
    run.push(key);
  }

  function end(key) {
    const burst = fast(run) && key.at - run.at(-1).at < PACE * 2;
    if (burst) field().value = field().value.slice(before.length, field().value.length - after.length);
    form().elements.burst.value = burst ? "yes" : "";
    run = [];
    busy = true;
    form().requestSubmit(form().querySelector("[value=keep]"));
  }

  function take(key) {
    const plate = plateOf(key.key);
    if (plate) { run = []; plate.click(); }
    else if (key.key.length === 1) { letter(key); field().setRangeText(key.key, field().selectionStart, field().selectionEnd, "end"); } else end(key);
  }

  addEventListener("keydown", event => {
    if (!field() || event.ctrlKey || event.metaKey || event.altKey) return;
    const key = { key: event.key, at: event.timeStamp };
    const sends = event.key.length === 1 || ((event.key === "Enter" || event.key === "Tab") && (run.length || held.length));
    const plate = plateOf(event.key);
    if (busy && (sends || plate)) { event.preventDefault(); held.push(key); return; }
    if (plate) { event.preventDefault(); run = []; plate.click(); return; }
    const here = event.target === field();
    if (event.key.length === 1 && (here || event.target.matches("body, button, a, main, #point"))) {
      if (!here && event.key === " ") return;
      if (!here) { field().focus(); field().select(); }
      letter(key);
    } else if (event.key === "Enter" && (here || run.length)) {
      event.preventDefault();
      end(key);
    } else if (event.key === "Tab" && fast(run) && key.at - run.at(-1).at < PACE * 2) {
      event.preventDefault();
      end(key);
    }
  }, true);
  // A letter that came past the keys while the one before was being kept cannot be put back in its order.
  addEventListener("input", event => { if (busy && event.target === field()) spoilt = true; });

  document.addEventListener("reset", event => {
    event.preventDefault();
    field().value = "";
    field().focus();
  });

  function ready() {
    busy = false;
    if (!field()) return;
    history.replaceState(history.state, "", "?" + new URLSearchParams({ sheet: form().elements.sheet.value, n: form().elements.n.value }));
    field().focus();
    field().select();
    if (spoilt) {
      spoilt = false;
      held = [];
      say("Part of a reading was lost while the one before was being kept. Measure this point again.");
    }
    while (held.length && !busy) take(held.shift());
  }
  document.addEventListener("htmx:afterSettle", event => { if (event.detail.target.id === "point" || event.detail.elt.id === "point") ready(); });
  document.addEventListener("htmx:sendError", () => { busy = false; say("The bench does not answer; the value is kept here. Press Enter when it is back."); });
  document.addEventListener("htmx:beforeRequest", event => { if (event.detail.target.id === "point") busy = true; });
  document.addEventListener("htmx:responseError", () => {
    ready();
    say("Not kept: another window changed this point. Load the page again and look.");
  });
  if (field()) { field().focus(); field().select(); }

  // While learning, a caliper's Enter goes on to the next field instead of sending the form.
  document.querySelector(".caliper form")?.addEventListener("keydown", event => {
    if (event.key !== "Enter" || !event.target.matches("input[type=text]")) return;
    event.preventDefault();
    const fields = [...event.currentTarget.querySelectorAll("input[type=text], button")];
    fields[fields.indexOf(event.target) + 1].focus();
  });
}
