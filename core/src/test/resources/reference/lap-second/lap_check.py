"""A second, independent solver for the quasi-steady lap, in Python with numpy and scipy.

It shares nothing with the Java code: every limit is evaluated as written in docs/model/lap-solver.md, the set of speeds from
which the rest of the lap can be driven is found cell by cell by bisection around a golden-section search, the way forward is
greedy, and the tail's angle is integrated by Runge-Kutta. Cells end on the joints; limits are held at mid-cell only, so the
lap comes out a little fast by an amount that falls with the number of cells.

    python3 lap_check.py CAR TRACK [CELLS]
"""
import json
import math
import sys

import numpy as np
from scipy.interpolate import CubicSpline

G = 9.80665
AIR = 1.2
GOLDEN = (math.sqrt(5) - 1) / 2
STEEPEST = 200.0  # m/s^2, more than any limit allows


def number(x):
    return x["value"] if isinstance(x, dict) else x


def read_car(file, track):
    """The car in SI, with the mass roll-up and the motor's line."""
    car = json.load(open(file))
    chassis, mass, motor = car["chassis"], car["mass"], car["motor"]
    length = number(chassis["guide_to_rear_axle_mm"]) / 1e3
    weighed = number(mass["total_g"]) / 1e3
    if "scales" in mass:
        guide, rear = number(mass["scales"]["guide_g"]), number(mass["scales"]["rear_axle_g"])
        ahead = length * guide / (guide + rear)
    else:
        ahead = number(mass["cg_ahead_of_rear_axle_mm"]) / 1e3
    left, height = number(mass.get("cg_left_mm", 0)) / 1e3, number(mass["cg_height_mm"]) / 1e3
    inertia = number(mass["yaw_inertia_g_mm2"]) * 1e-9 if "yaw_inertia_g_mm2" in mass else weighed * length**2 / 12
    points = [(weighed, ahead, left, height)]
    for b in car.get("ballast", []):
        points.append(tuple(number(b[k]) / 1e3 for k in ("mass_g", "x_mm", "y_mm", "z_mm")))
    m = sum(p[0] for p in points)
    x, y, h = (sum(p[0] * p[k] for p in points) / m for k in (1, 2, 3))
    inertia += sum(p[0] * ((p[1] - x) ** 2 + (p[2] - y) ** 2) for p in points)

    volts, free = number(motor["test_voltage_v"]), number(motor["no_load_rpm"]) * 2 * math.pi / 60
    idle = number(motor["no_load_current_a"])
    if "stall_current_a" in motor:
        ohm = volts / number(motor["stall_current_a"])
        k = (volts - ohm * idle) / free
    else:
        torque = number(motor["stall_torque_gcm"]) * 9.80665e-5
        root = math.sqrt((torque * free) ** 2 + 4 * idle * free * torque * volts)
        k = volts / free if idle == 0 else (root - torque * free) / (2 * idle * free)
        ohm = k * volts / (torque + k * idle)

    radius = number(car["rear_tyre"]["diameter_mm"]) / 2e3
    ratio = number(car["gears"]["axle_teeth"]) / number(car["gears"]["pinion_teeth"])
    magnet = car.get("magnet") if track["surface"]["magnetic"] else None
    guide, drag = car["guide"], car.get("drag", {})
    return dict(
        L=length, m=m, x=x, h=h, I=inertia, l=length - x, track=number(chassis["rear_track_mm"]) / 1e3,
        front=1.0 if chassis["front_wheels"] == "touching" else 0.0,
        mu=number(car["rear_tyre"]["grip"]) * track["surface"]["grip_factor"],
        pull=number(magnet["downforce_g"]) * G / 1e3 if magnet else 0.0,
        pull_x=number(magnet["x_mm"]) / 1e3 if magnet else 0.0,
        slot=number(guide["slot_friction"]), braid=number(guide["braid_drag_g"]) * G / 1e3,
        nose=number(guide["min_guide_load_g"]) * G / 1e3,
        rolling=number(drag.get("rolling_resistance", 0)), area=number(drag.get("drag_area_cm2", 0)) / 1e4,
        K=k, R=ohm, idle=idle, gearing=ratio / radius, eta=number(car["gears"]["efficiency"]),
        rotor=number(motor["rotor_inertia_g_mm2"]) * 1e-9 * (ratio / radius) ** 2,
        pickup=number(car.get("pickup_ohm", 0)))


def drawn_cells(points, offset, count):
    """Cells beside a periodic cubic spline by chord length."""
    p = np.array(points, float) / 1e3
    closed = np.vstack([p, p[:1]])
    chord = np.concatenate([[0], np.cumsum(np.hypot(*np.diff(closed, axis=0).T))])
    sx, sy = (CubicSpline(chord, closed[:, k], bc_type="periodic") for k in (0, 1))
    t = np.linspace(0, chord[-1], 400001)
    dx, dy = sx(t, 1), sy(t, 1)
    curvature = (dx * sy(t, 2) - dy * sx(t, 2)) / np.hypot(dx, dy) ** 3
    speed = np.hypot(dx, dy) * (1 - offset * curvature)
    s = np.concatenate([[0], np.cumsum((speed[1:] + speed[:-1]) / 2 * np.diff(t))])
    heading = np.interp(np.linspace(0, s[-1], count + 1), s, np.unwrap(np.arctan2(dy, dx)))
    ds = s[-1] / count
    return [(ds, turn / ds, 0.0, 0.0) for turn in np.diff(heading)]


def cells_of(track, offset_mm, count):
    """Length, curvature, bank and sine of the grade of each cell."""
    offset = offset_mm / 1e3
    if "points_mm" in track:
        return drawn_cells(track["points_mm"], offset, count)
    sections = []
    for piece in track["pieces"]:
        rise = piece.get("rise_mm", 0) / 1e3
        if "straight_mm" in piece:
            length = piece["straight_mm"] / 1e3
            sections.append((length, 0.0, 0.0, rise / length))
        else:
            sign = 1 if piece["turn"] == "left" else -1
            radius = piece["radius_mm"] / 1e3 - sign * offset
            length = radius * math.radians(piece["angle_deg"])
            sections.append((length, sign / radius, sign * math.radians(piece.get("bank_deg", 0)), rise / length))
    lap = sum(s[0] for s in sections)
    cells = []
    for length, *rest in sections:
        parts = max(2, round(count * length / lap))
        cells += [(length / parts, *rest)] * parts
    return cells


def rail_ohm(power, s, lap):
    """The ring fed at the taps: rho d1 d2 / (d1 + d2)."""
    taps = sorted(tap % 1 for tap in power.get("taps_at", [0.0]))
    behind = [tap for tap in taps if tap <= s / lap] or [taps[-1] - 1]
    ahead = [tap for tap in taps if tap > s / lap] or [taps[0] + 1]
    d1, d2 = s - behind[-1] * lap, ahead[0] * lap - s
    return power["rail_ohm_per_m"] * d1 * d2 / (d1 + d2)


def hitch_angles(cells, length):
    """The tail's angle at each mid-cell, after four laps: d psi/ds = kappa - sin psi / L."""
    psi, middle = 0.0, [0.0] * len(cells)
    for _ in range(4):
        for j, (ds, curvature, _, _) in enumerate(cells):
            step = ds / 8
            for k in range(8):
                if k == 4:
                    middle[j] = psi
                k1 = curvature - math.sin(psi) / length
                k2 = curvature - math.sin(psi + step * k1 / 2) / length
                k3 = curvature - math.sin(psi + step * k2 / 2) / length
                k4 = curvature - math.sin(psi + step * k3) / length
                psi += step * (k1 + 2 * k2 + 2 * k3 + k4) / 6
    return middle


class Lap:
    def __init__(self, car, track, offset_mm, count):
        self.car, self.power = car, track["power"]
        cells = cells_of(track, offset_mm, count)
        self.length = sum(c[0] for c in cells)
        self.cells, s = [], 0.0
        for (ds, curvature, bank, grade), psi in zip(cells, hitch_angles(cells, car["L"])):
            rail = rail_ohm(self.power, s + ds / 2, self.length)
            s += ds
            self.cells.append((
                ds, curvature * math.cos(bank), curvature * math.sin(bank), G * math.sin(bank), G * math.cos(bank), grade,
                math.sqrt(1 - grade**2), math.sin(psi), math.cos(psi), curvature - math.sin(psi) / car["L"], rail))

    def excess(self, j, w0, w1):
        """By how much the worst limit is broken over a cell, as a share of the weight; not positive when none is."""
        c, (ds, kg, kn, across, down, grade, level, S, cos, p, rail) = self.car, self.cells[j]
        m, L, l, h = c["m"], c["L"], c["l"], c["h"]
        w, u = (w0 + w1) / 2, (w1 - w0) / (2 * ds)
        yaw = u * S / L + w * cos * p / L
        ax = u * cos - kg * w * S + l * w * S**2 / L**2
        ay = u * S + kg * w * cos - l * yaw
        gt, gn, gz = -G * grade, across * level, down * level + w * kn
        gx, gy = gt * cos - gn * S, gt * S + gn * cos
        Y = (m * l * (ay - gy) - c["I"] * yaw) / L
        wall = m * (kg * w - l * yaw * cos - l * S**3 * w / L**2 - gn) - Y * cos
        drag = c["slot"] * abs(wall) + c["braid"] + 0.5 * AIR * c["area"] * w
        X = (m * (u - l * yaw * S + l * cos * w * S**2 / L**2 - gt) - Y * S + drag) / cos
        nose = (m * gz * c["x"] + c["pull"] * c["pull_x"] - m * (ax - gx) * h) / L
        rear = m * gz + c["pull"] - nose
        motor = X + c["rolling"] * rear + c["rotor"] * (u * cos - w * S * p)
        turning = math.sqrt(max(w, 0)) * cos * c["gearing"]
        K, feed = c["K"], c["R"] + c["pickup"] + rail
        drive = c["gearing"] * c["eta"] * (K * (self.power["supply_v"] - K * turning) / (feed + self.power["source_ohm"])
                                           - K * c["idle"])
        brakes = K**2 * turning / (feed + self.power["brake_ohm"]) if "brake_ohm" in self.power else 0.0
        brake = c["gearing"] / c["eta"] * (brakes + K * c["idle"])
        return max(
            math.hypot(X, Y) - c["mu"] * rear, motor - drive, -brake - motor, c["nose"] - nose,
            m * abs(ay - gy) - c["track"] / (2 * h) * (rear + c["front"] * nose)) / (m * G)

    def best_far(self, j, w0, low, high):
        """The far edge that breaks the limits least, by golden section, and by how much."""
        a, b = low, high
        p, q = b - GOLDEN * (b - a), a + GOLDEN * (b - a)
        fp, fq = self.excess(j, w0, p), self.excess(j, w0, q)
        for _ in range(48):
            if min(fp, fq) <= 1e-12:
                break
            if fp < fq:
                b, q, fq = q, p, fp
                p = b - GOLDEN * (b - a)
                fp = self.excess(j, w0, p)
            else:
                a, p, fp = p, q, fq
                q = a + GOLDEN * (b - a)
                fq = self.excess(j, w0, q)
        return (p, fp) if fp < fq else (q, fq)

    def reach(self, j, w0, top):
        spread = 2 * self.cells[j][0] * STEEPEST
        return max(0.0, w0 - spread), min(top, w0 + spread)

    def can_go_on(self, j, w0, top):
        low, high = self.reach(j, w0, top)
        return low <= high and self.best_far(j, w0, low, high)[1] <= 1e-9

    def controllable(self):
        """Backwards: the greatest w at each node from which the rest of the lap can be driven."""
        n = len(self.cells)
        most = [400.0] * (n + 1)
        for _ in range(3):
            change = 0.0
            for j in range(n - 1, -1, -1):
                top = most[j + 1] if j + 1 < n else most[0]
                low, high = 0.0, min(most[j], top + 2 * self.cells[j][0] * STEEPEST)
                if self.can_go_on(j, high, top):
                    low = high
                elif not self.can_go_on(j, 1e-6, top):
                    raise ValueError("no speed goes on from cell %d" % j)
                for _ in range(42 if low < high else 0):
                    middle = (low + high) / 2
                    low, high = (middle, high) if self.can_go_on(j, middle, top) else (low, middle)
                change, most[j] = max(change, most[j] - low), low
            most[n] = most[0]
            if change < 1e-9:
                break
        return most

    def solve(self):
        """Forwards, as fast as may be, until the lap ends as it began: its time, greatest and least speed."""
        most, start = self.controllable(), None
        w, seconds = [most[0]], 0.0
        for _ in range(3):
            if start is not None and abs(w[-1] - start) < 1e-9:
                break
            start, seconds = w[-1], 0.0
            w = [start]
            for j, cell in enumerate(self.cells):
                low, high = self.reach(j, w[j], most[j + 1])
                good, broken = self.best_far(j, w[j], low, high)
                if broken > 1e-6:
                    raise ValueError("no way on from cell %d" % j)
                if self.excess(j, w[j], high) > 1e-9:
                    for _ in range(50):
                        middle = (good + high) / 2
                        good, high = (middle, high) if self.excess(j, w[j], middle) <= 1e-9 else (good, middle)
                    high = good
                seconds += 2 * cell[0] / (math.sqrt(w[j]) + math.sqrt(high))
                w.append(high)
        return seconds, math.sqrt(max(w)), math.sqrt(min(w))


if __name__ == "__main__":
    track = json.load(open(sys.argv[2]))
    for lane in track["lanes"]:
        lap = Lap(read_car(sys.argv[1], track), track, lane["offset_mm"], int(sys.argv[3]) if len(sys.argv) > 3 else 600)
        seconds, top, slowest = lap.solve()
        print(lane["name"], "length %.6f m, lap %.6f s, top %.5f m/s, slowest %.5f m/s" % (lap.length, seconds, top, slowest))
