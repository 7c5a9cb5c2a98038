// ---- the horn: a place is taken in hand by pointer or by keyboard; a layer only colours it; a lens brings it closer ----
const stage = document.querySelector(".stage[data-horn]");
if (stage) {
  const home = "/horn/" + stage.dataset.horn;
  const places = [...stage.querySelectorAll(".place")];
  const byId = new Map(places.map(place => [place.dataset.place, place]));
  const lens = stage.querySelector(".lens"), sheet = lens.querySelector(".unrolled");
  let shown = location.href;

  const lineOf = place => document.querySelector(`.every a[data-place="${CSS.escape(place.dataset.place)}"]`);
  const near = stage.querySelector(".near");
  const layerNow = () => stage.querySelector(".layers a[aria-current]").dataset.layer;

  function mark(id) {
    for (const one of document.querySelectorAll("[data-place][aria-current]")) one.removeAttribute("aria-current");
    for (const one of document.querySelectorAll(`[data-place="${CSS.escape(id ?? "")}"]`)) one.setAttribute("aria-current", "true");
    for (const place of stage.querySelectorAll(".place[tabindex='0']")) place.setAttribute("tabindex", "-1");
    (byId.get(id) ?? places[0])?.setAttribute("tabindex", "0");
  }

  async function open(id, remember = true) {
    mark(id);
    await htmx.ajax("GET", `${home}/place/${encodeURIComponent(id)}`, { target: "#place", swap: "innerHTML" });
    if (remember) history.pushState({ place: id }, "", `${home}?layer=${layerNow()}&place=${encodeURIComponent(id)}`);
    shown = location.href;
    const top = document.getElementById("place").getBoundingClientRect().top;
    if (top > innerHeight * .6 || top < 0) scrollBy(0, top - innerHeight * .5);
  }

  // -- the lens: how large the sheet is under it, in pixels a unit, and what lies where --
  const WIDE = 1400, DEEP = 560, LARGEST = 12;
  const box = () => sheet.getBoundingClientRect();
  const upright = () => { const { width, height } = box(); return height > width; };
  const scale = () => Math.max(box().width, box().height) / WIDE;
  const zoom = () => Number(lens.style.getPropertyValue("--zoom")) || 1;
  const cropped = stage.querySelector(".parts [aria-current]") !== null;

  function unitsAt(x, y) {
    const { left, right, top } = box(), s = scale();
    return upright() ? { x: (y - top) / s, y: (right - x) / s } : { x: (x - left) / s, y: (y - top) / s };
  }

  /** Sets the size; the spot of the sheet goes under the middle of the lens, or stays under that point of the screen. */
  function setZoom(to, spot, at) {
    const size = Math.min(LARGEST / (scale() / zoom()), Math.max(1, to)), whole = size < 1.05;
    lens.style.setProperty("--zoom", whole ? 1 : size);
    lens.style.setProperty("--word", whole ? 1 : Math.pow(size, -.75));
    lens.classList.toggle("zoomed", !whole);
    stage.querySelector("[data-zoom='0']").disabled = stage.querySelector("[data-zoom='0.5']").disabled = whole;
    if (whole) { near.hidden = true; return; }
    if (!at) lens.scrollIntoView({ block: "nearest" });
    const frame = lens.getBoundingClientRect(), s = scale(), point = at ?? { x: frame.left + lens.clientWidth / 2, y: frame.top + lens.clientHeight / 2 };
    const now = box(), x = upright() ? now.right - spot.y * s : now.left + spot.x * s, y = upright() ? now.top + spot.x * s : now.top + spot.y * s;
    lens.scrollBy(x - point.x, y - point.y);
  }

  const middleOfLens = () => {
    const frame = lens.getBoundingClientRect();
    return unitsAt(frame.left + lens.clientWidth / 2, Math.max(frame.top, 0) + Math.min(lens.clientHeight, innerHeight) / 2);
  };

  // The outline of each figure, in units of the sheet: enough points of it to say how far a finger is from it.
  const SPECK = new Set(["adhesive", "resonator", "rivet", "pad-centre"]);
  let figures;
  function outlines() {
    return places.map(place => {
      const kind = place.classList[1].slice(2);
      const line = place.querySelector(".spring, .bead, .guard") ?? place.querySelector(".rim, .face") ?? place.querySelector(":not(title)");
      const turn = line.transform?.baseVal.consolidate()?.matrix, long = line.getTotalLength(), points = [];
      for (let i = 0; i < 28; i++) {
        const on = line.getPointAtLength(long * i / 28);
        points.push(turn ? on.matrixTransform(turn) : on);
      }
      const xs = points.map(p => p.x), ys = points.map(p => p.y);
      const middle = { x: (Math.min(...xs) + Math.max(...xs)) / 2, y: (Math.min(...ys) + Math.max(...ys)) / 2 };
      const half = Math.min(Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys)) / 2;
      return { place, kind, points, middle, half, filled: !line.matches(".spring, .bead, .guard") };
    });
  }

  /** From a spot to a figure: nothing inside it; ties go to the smaller, which lies on top. */
  function away(figure, spot) {
    const off = Math.hypot(figure.middle.x - spot.x, figure.middle.y - spot.y);
    if (off > 80 + figure.half) return Infinity;
    let inside = false, least = Infinity;
    const on = figure.points;
    for (let i = 0, j = on.length - 1; i < on.length; j = i++) {
      least = Math.min(least, Math.hypot(on[i].x - spot.x, on[i].y - spot.y));
      if (on[i].y > spot.y !== on[j].y > spot.y && spot.x < (on[j].x - on[i].x) * (spot.y - on[i].y) / (on[j].y - on[i].y) + on[i].x) inside = !inside;
    }
    return (inside && figure.filled ? 0 : least) + Math.min(figure.half, 40) / 1000;
  }

  /** What may be meant by a touch there, the likeliest first. Under a small cup's middle or film of adhesive a finger means the pad. */
  function meant(spot, finger, s) {
    figures ??= outlines();
    return figures.filter(figure => !SPECK.has(figure.kind) || s >= LEAST || figure.half * s >= 20)
      .map(figure => ({ figure, far: away(figure, spot) }))
      .filter(one => one.far * s <= finger).sort((one, other) => one.far - other.far);
  }

  const LEAST = 4.5, FINGER = 22, CLEAR = 12;
  /** Takes what is clearly meant; where several lie under one finger, brings them apart first. */
  function touch(x, y, pointer, exact) {
    const s = scale(), spot = unitsAt(x, y), fine = pointer === "mouse" && s >= .8;
    const all = meant(spot, FINGER, s);
    if (!all.length) return;
    const [first, second] = all;
    const there = fine && exact && !SPECK.has(exact.classList[1].slice(2)) ? exact : null;
    const alone = !second || (second.far - first.far) * s >= CLEAR;
    const wide = first.far * s < 1 && first.figure.half * s >= CLEAR && (!second || second.far * s >= 4);
    if (fine || s >= LEAST || alone || wide || cropped) { take(there ?? first.figure.place); return; }
    let least = Infinity;
    const close = all.filter(one => (one.far - first.far) * s < CLEAR);
    for (const one of close) for (const other of close) {
      if (one !== other) least = Math.min(least, Math.hypot(one.figure.middle.x - other.figure.middle.x, one.figure.middle.y - other.figure.middle.y) || Infinity);
    }
    setZoom(zoom() * Math.min(10, Math.max(5, 30 / least)) / s, spot);
    const own = under(spot, s), others = all.slice(1).filter(one => one.far * s <= CLEAR);
    name([first, ...own.filter(one => one.far * s <= CLEAR / 2), ...others, ...own]);
  }

  // What lay under the finger, by its name: some of it lies on each other however large the sheet is.
  const under = (spot, s) => figures.filter(figure => SPECK.has(figure.kind)).map(figure => ({ figure, far: away(figure, spot) }))
    .filter(one => one.far * s <= CLEAR).sort((one, other) => one.far - other.far);

  function name(those) {
    near.replaceChildren(...[...new Set(those.map(one => one.figure.place))].slice(0, 7).map(place => {
      const link = document.createElement("a");
      link.href = place.getAttribute("href");
      link.dataset.place = place.dataset.place;
      link.textContent = lineOf(place).firstElementChild.textContent;
      return link;
    }));
    near.hidden = false;
  }
  near.addEventListener("click", event => {
    const link = event.target.closest("a");
    if (link && !event.ctrlKey && !event.metaKey) { event.preventDefault(); take(byId.get(link.dataset.place)); }
  });

  function take(place) { near.hidden = true; place.focus({ preventScroll: true }); open(place.dataset.place); }

  let press, dragged = false;
  stage.addEventListener("click", event => {
    const layer = event.target.closest("a[data-layer]"), part = event.target.closest("a[data-box]"), sized = event.target.closest("[data-zoom]");
    if (event.ctrlKey || event.metaKey) return;
    if (layer) { event.preventDefault(); colour(layer); return; }
    if (sized) { const by = Number(sized.dataset.zoom); setZoom(by ? zoom() * by : 1, middleOfLens()); return; }
    if (part && !cropped) { event.preventDefault(); closer(part); return; }
    if (!event.target.closest(".unrolled")) return;
    event.preventDefault();
    if (dragged) return;
    const exact = event.target.closest(".place");
    if (event.detail === 0 && exact && !event.pointerType) take(exact); else touch(event.clientX, event.clientY, event.pointerType, exact);
  });

  function closer(part) {
    const [left, top, width, height] = part.dataset.box.split(" ").map(Number);
    lens.classList.add("zoomed");
    const across = upright() ? Math.min(lens.clientWidth / height, innerHeight * .85 / width) : lens.clientWidth / width;
    setZoom(zoom() * across / scale(), { x: left + width / 2, y: top + height / 2 });
  }

  // Two fingers or a wheel with Ctrl change the size, one finger or a mouse held down moves the sheet.
  lens.addEventListener("wheel", event => {
    if (!event.ctrlKey) return;
    event.preventDefault();
    setZoom(zoom() * Math.exp(-event.deltaY / 240), unitsAt(event.clientX, event.clientY), { x: event.clientX, y: event.clientY });
  }, { passive: false });
  let pinch;
  const between = touches => ({
    x: (touches[0].clientX + touches[1].clientX) / 2, y: (touches[0].clientY + touches[1].clientY) / 2,
    apart: Math.hypot(touches[0].clientX - touches[1].clientX, touches[0].clientY - touches[1].clientY),
  });
  lens.addEventListener("touchstart", event => {
    if (event.touches.length !== 2) return;
    event.preventDefault();
    const now = between(event.touches);
    pinch = { zoom: zoom(), apart: now.apart, spot: unitsAt(now.x, now.y) };
  }, { passive: false });
  lens.addEventListener("touchmove", event => {
    if (!pinch || event.touches.length !== 2) return;
    event.preventDefault();
    const now = between(event.touches);
    setZoom(pinch.zoom * now.apart / pinch.apart, pinch.spot, now);
  }, { passive: false });
  lens.addEventListener("touchend", () => { pinch = null; });
  lens.addEventListener("dragstart", event => event.preventDefault());
  lens.addEventListener("pointerdown", event => {
    dragged = false;
    press = event.pointerType === "mouse" && event.button === 0 && lens.classList.contains("zoomed")
      ? { x: event.clientX, y: event.clientY, left: lens.scrollLeft, top: lens.scrollTop } : null;
  });
  addEventListener("pointermove", event => {
    if (!press) return;
    const x = event.clientX - press.x, y = event.clientY - press.y;
    if (Math.hypot(x, y) > 5) dragged = true;
    lens.classList.toggle("dragged", dragged);
    if (dragged) lens.scrollTo(press.left - x, press.top - y);
  });
  addEventListener("pointerup", () => { press = null; lens.classList.remove("dragged"); });

  // The arrows go through the places in bench order, as the list beside reads them; Page Up and Down by groups.
  const order = [...document.querySelectorAll(".every a[data-place]")].map(line => byId.get(line.dataset.place));
  const groupOf = place => lineOf(place).closest("details");
  const heads = [...document.querySelectorAll(".every details")].map(group => byId.get(group.querySelector("a[data-place]").dataset.place));
  lens.addEventListener("keydown", event => {
    const place = event.target.closest?.(".place");
    if (!place || event.ctrlKey || event.metaKey || event.altKey) return;
    if (event.key === "Enter" || event.key === " ") { event.preventDefault(); open(place.dataset.place); return; }
    const sized = { "+": 2, "=": 2, "-": .5, 0: 0 }[event.key];
    if (sized !== undefined) {
      event.preventDefault();
      figures ??= outlines();
      setZoom(sized ? zoom() * sized : 1, figures.find(one => one.place === place).middle);
      return;
    }
    const at = order.indexOf(place), group = heads.indexOf(byId.get(groupOf(place).querySelector("a[data-place]").dataset.place));
    const to = { ArrowLeft: order[at - 1], ArrowUp: order[at - 1], ArrowRight: order[at + 1], ArrowDown: order[at + 1], Home: order[0], End: order.at(-1), PageUp: heads[group - 1], PageDown: heads[group + 1] }[event.key];
    if (!event.key.match(/^(Arrow|Home|End|Page)/)) return;
    event.preventDefault();
    if (!to) return;
    place.setAttribute("tabindex", "-1");
    to.setAttribute("tabindex", "0");
    to.focus();
  });

  document.querySelector(".beside").addEventListener("click", event => {
    const line = event.target.closest(".every a[data-place], .kin a[data-place]");
    if (line && !event.ctrlKey && !event.metaKey) { event.preventDefault(); open(line.dataset.place); }
  });

  // The drawing stays; each place takes over what the other layer says of it, so focus, size and place in hand are kept.
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
    const words = other.querySelectorAll(".labels text");
    stage.querySelectorAll(".labels text").forEach((word, at) => { word.textContent = words[at].textContent; });
    stage.dataset.layer = other.dataset.layer;
    stage.querySelector(".legend").replaceWith(other.querySelector(".legend"));
    for (const one of stage.querySelectorAll(".layers a")) {
      if (one === layer) one.setAttribute("aria-current", "true"); else one.removeAttribute("aria-current");
    }
    for (const part of stage.querySelectorAll(".parts a")) part.href = part.href.replace(/layer=[^&]*/, "layer=" + layer.dataset.layer);
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
    place.setAttribute("href", like.getAttribute("href"));
    place.dataset.state = like.dataset.state;
    if (like.dataset.depth) place.dataset.depth = like.dataset.depth; else delete place.dataset.depth;
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
  stage.querySelector(".zoom").hidden = cropped;
  setZoom(1);
  mark(new URLSearchParams(location.search).get("place"));
}
