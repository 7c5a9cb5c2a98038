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
