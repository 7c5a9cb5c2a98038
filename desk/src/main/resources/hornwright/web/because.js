// ---- a because takes the eye to it, also for those who listen; leads back to the one it covers; closes by Escape or a second tap ----
{
  let because = "", within = false;
  const panel = () => document.getElementById("because");
  const of = address => new URL(address, location).searchParams.get("of");
  const numbers = () => [...document.querySelectorAll("a.why")].filter(one => !one.closest("#because"));
  const numberOf = address => numbers().find(one => of(one.href) === of(address));

  // Each because is one entry of the browser's history; the first one knows how far back the page lies that had none.
  const depth = () => history.state?.because ? history.state.depth : 0;

  function told() {
    for (const one of numbers()) {
      if (because && of(one.href) === of(because)) one.setAttribute("aria-expanded", "true"); else one.removeAttribute("aria-expanded");
    }
  }

  function close() {
    if (depth()) history.go(-depth()); else shut();
  }

  function shut() {
    const open = panel(), held = because && open.contains(document.activeElement) ? numberOf(because) : null;
    because = "";
    open.replaceChildren();
    told();
    held?.focus();
  }

  document.addEventListener("htmx:configRequest", event => {
    const { target, elt } = event.detail;
    if (target?.id !== "because" || !because || !target.hasChildNodes() || !elt.matches("a.why") || target.contains(elt)) return;
    if (of(elt.href) === of(because)) { event.preventDefault(); close(); return; }
    const before = new URL(because, location).searchParams;
    const read = [...before.getAll("by"), before.get("of")];
    const again = read.indexOf(of(elt.href));
    for (const one of (again < 0 ? read : read.slice(0, again)).slice(-8)) event.detail.path += "&by=" + encodeURIComponent(one);
  });
  document.addEventListener("htmx:beforeSwap", event => {
    const { target, requestConfig, pathInfo } = event.detail;
    if (target.id !== "because" || !event.detail.shouldSwap) return;
    const elt = requestConfig.elt, recalled = elt === document.body, asked = pathInfo.requestPath;
    within = target.contains(elt) || (recalled && target.contains(document.activeElement));
    if (!recalled && !(asked === because && target.hasChildNodes())) history.pushState({ ...history.state, because: asked, depth: depth() + 1 }, "");
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
    told();
    event.detail.target.scrollIntoView({ block: "nearest" });
    if (within) event.detail.target.querySelector(".why-head")?.focus({ preventScroll: true });
  });
  document.addEventListener("keydown", event => {
    if (event.key === "Escape" && !event.defaultPrevented && panel()?.hasChildNodes()) close();
  });

  // Back and forward of the browser go through the becauses that were opened here, and close the first.
  function recall() {
    const wanted = history.state?.because ?? "", open = panel();
    if (!open || (wanted === because && open.hasChildNodes()) || (!wanted && !open.hasChildNodes())) return;
    if (wanted) htmx.ajax("GET", wanted, { target: "#because", swap: "innerHTML" }); else shut();
  }
  addEventListener("popstate", recall);
  recall();
}
