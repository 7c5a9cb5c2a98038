"""The same air column, plainly: every matrix for all frequencies at once by NumPy. Reads a horn as JSON, writes the three
lowest resonances of every fingering, what every open pad does to the one that sounds, and the processor time of both. Formulas and sources: docs/method/air.md."""
import json
import sys
import time

import numpy as np

STEP, LAST, SLICE = 1.0, 2600.0, 0.020


def boundary(r):
    """2 I1(W)/(W I0(W)) at W = r exp(j pi/4): Gauss's continued fraction below 12, asymptotic series above."""
    small, large = np.minimum(r, 12.0), np.maximum(r, 12.0)
    square, below = 1j * small**2, 52.0 + 0j
    for level in range(25, 0, -1):
        below = 2.0 * level + square / below
    q = np.exp(-0.25j * np.pi) / large
    series = 2 * q * np.polyval([-1073 / 1024, -13 / 32, -25 / 128, -1 / 8, -1 / 8, -1 / 2, 1], q)
    return np.where(r < 12.0, 2 / below, series)


def wave(air, omega, radius):
    viscous = radius * np.sqrt(omega * air["density"] / air["viscosity"])
    friction = 1 - boundary(viscous)
    heat = 1 + (air["gamma"] - 1) * boundary(viscous * air["prandtlRoot"])
    slowness = np.sqrt(heat / friction)
    return omega / air["speed"] * slowness, air["density"] * air["speed"] / (friction * slowness)


def cone(air, omega, r1, r2, length):
    k, specific = wave(air, omega, (r1 + r2) / 2)
    sin, cos, taper, area = np.sin(k * length), np.cos(k * length), (r2 - r1) / length, np.pi * r1 * r2
    e1, e2 = taper / r1, taper / r2
    a = r2 / r1 * cos - e1 * sin / k
    b = 1j * specific * sin / area
    c = area / specific * (1j * sin * (1 + e1 * e2 / k**2) + cos / (1j * k) * (e1 - e2))
    return a, b, c, r1 / r2 * (cos + e1 * sin / k)


def times(m, n):
    return (m[0] * n[0] + m[1] * n[2], m[0] * n[1] + m[1] * n[3], m[2] * n[0] + m[3] * n[2], m[2] * n[1] + m[3] * n[3])


def outer(hole):
    b, wall, pad, height = hole["radius"], hole["rimWall"], hole["padRadius"], hole["height"]
    x, h = b / (b + wall), height / b
    rim = b * (0.8216 + x * (0.6133 - 0.8216) + 0.057 * x * (1 - x**5))
    return rim + b / (3.5 * h**0.8 * (h + 3 * wall / b) ** -0.4 + 30 * (height / pad) ** 2.6)


def hole_matrix(air, omega, hole, bore, is_open):
    b, k, rho_c = hole["radius"], omega / air["speed"], air["density"] * air["speed"]
    d = b / bore
    inner = b * np.polyval([0.502, -1.640, 2.138, -1.566, -0.095, 0.822], d)
    left = hole["chimney"] - (0 if is_open else hole["protrusion"])
    a, bb, c, dd = cone(air, omega, b, b, left + b * d / 8 * (1 + 0.207 * d**3))
    if is_open:
        load = rho_c / (np.pi * b**2) * (1j * k * outer(hole) + (k * b) ** 2 / 4)
        branch = (a * load + bb) / (c * load + dd)
        series = -(0.35 - 0.06 * np.tanh(2.7 * left / b)) * b * d**2
    else:
        branch = a / c
        series = -(0.12 + 0.17 * np.tanh(2.4 * left / b)) * b * d**2
    branch = branch + 1j * k * inner * rho_c / (np.pi * b**2)
    half = 1j * k * series / 2 * rho_c / (np.pi * bore**2)
    return 1 + half / branch, half * (2 + half / branch), 1 / branch, 1 + half / branch


class Horn:
    def __init__(self, given):
        self.air, self.holes, self.volume = given["air"], given["holes"], given["volume"]
        self.at, self.radius = np.array(given["bore"]).T

    def stretch(self, omega, start, end):
        cuts = [start, *self.at[(self.at > start + 1e-9) & (self.at < end - 1e-9)], end]
        whole = None
        for x0, x1 in zip(cuts, cuts[1:]):
            n = int(np.ceil((x1 - x0) / SLICE - 1e-9))
            xs = np.linspace(x0, x1, n + 1)
            rs = np.interp(xs, self.at, self.radius)
            for i in range(n):
                piece = cone(self.air, omega, rs[i], rs[i + 1], xs[i + 1] - xs[i])
                whole = piece if whole is None else times(whole, piece)
        return whole

    def elements(self, f):
        """Stretches and holes from the mouthpiece to the bell, each hole open and closed."""
        omega, parts, reached = 2 * np.pi * f, [], self.at[0]
        for i in sorted(range(len(self.holes)), key=lambda one: self.holes[one]["at"]):
            hole = self.holes[i]
            if hole["at"] > reached:
                parts.append((-1, self.stretch(omega, reached, hole["at"]), None))
                reached = hole["at"]
            bore = np.interp(hole["at"], self.at, self.radius)
            parts.append((i, hole_matrix(self.air, omega, hole, bore, False), hole_matrix(self.air, omega, hole, bore, True)))
        parts.append((-1, self.stretch(omega, reached, self.at[-1]), None))
        return parts

    def impedance(self, f, parts, open_holes):
        omega, air, a = 2 * np.pi * f, self.air, self.radius[-1]
        ka = omega / air["speed"] * a
        reflection = -(1 + 0.167j * ka) / (1 + 1.393j * ka - 0.457 * ka**2)
        p = air["density"] * air["speed"] / (np.pi * a**2) * (1 + reflection) / (1 - reflection)
        u = np.ones_like(p)
        for hole, shut, opened in reversed(parts):
            m = opened if hole in open_holes else shut
            p, u = m[0] * p + m[1] * u, m[2] * p + m[3] * u
        return np.abs(1 / (u / p + 1j * omega * self.volume / (air["density"] * air["speed"] ** 2)))

    def peaks(self, grid, parts, open_holes):
        z = self.impedance(grid, parts, open_holes)
        tops = np.flatnonzero((z[1:-1] > z[:-2]) & (z[1:-1] >= z[2:]))[:3] + 1
        found, width = grid[tops], STEP
        for _ in range(3):
            f = (found[:, None] + np.linspace(-width, width, 21)).ravel()
            z = self.impedance(f, self.elements(f), open_holes).reshape(-1, 21)
            found = f.reshape(-1, 21)[np.arange(len(found)), z.argmax(1)]
            width /= 10
        return found.tolist()


    def sensitivities(self, sounding, open_holes):
        """Cents per metre of pad height, from two heights each; all else is kept."""
        f = sounding + np.linspace(-1.5, 1.5, 41)
        parts, omega, told = self.elements(f), 2 * np.pi * f, []
        for hole in open_holes:
            at = next(i for i, part in enumerate(parts) if part[0] == hole)
            tops = []
            for lift in (-0.05e-3, 0.05e-3):
                moved = {**self.holes[hole], "height": self.holes[hole]["height"] + lift}
                bore = np.interp(moved["at"], self.at, self.radius)
                other = (hole, parts[at][1], hole_matrix(self.air, omega, moved, bore, True))
                tops.append(top(f, self.impedance(f, parts[:at] + [other] + parts[at + 1 :], open_holes)))
            told.append(1200 * np.log2(tops[1] / tops[0]) / 0.1e-3)
        return told


def top(f, z):
    """The peak between the points, by a parabola through the squared admittance."""
    y = z**-2
    i = int(np.clip(y.argmin(), 1, len(f) - 2))
    bend = y[i - 1] - 2 * y[i] + y[i + 1]
    return f[i] + (f[1] - f[0]) * (y[i - 1] - y[i + 1]) / (2 * bend)


def main():
    given = json.load(sys.stdin)
    horn, best, answer = Horn(given), float("inf"), None
    for _ in range(given["rounds"]):
        start = time.process_time()
        grid = np.arange(20.0, LAST, STEP)
        parts = horn.elements(grid)
        answer = [horn.peaks(grid, parts, set(open_holes)) for open_holes in given["fingerings"]]
        best = min(best, time.process_time() - start)
    start = time.process_time()
    slopes = [
        horn.sensitivities(peaks[sounding - 1], open_holes)
        for peaks, sounding, open_holes in zip(answer, given["sounding"], given["fingerings"])
    ]
    seconds = {"seconds": best, "slopeSeconds": time.process_time() - start}
    json.dump({**seconds, "peaks": answer, "slopes": slopes}, sys.stdout)


if __name__ == "__main__":
    main()
