"""Packing paper of the invented giftware shop on Monday 14 November 2011: one forecast and one row of the weekly
check, worked out apart from the program.

Reads giftware-parcels.csv (derived from Online Retail, UCI Machine Learning Repository, D. Chen, 2015,
doi 10.24432/C5BW33, CC BY 4.0) and giftware-shop.json (an invented shop) beside this file, and nothing else. Prints
the figures that the last block of giftware.test.ts holds against the program.

Written from a description of the method, not from the program's code. That the teapot is smoothed on its own as well
(OWN_TOO below) is taken as given: it is what looking back chose on that day, and is not worked out here.

Run: python3 packing-paper-2011-11-14.py, with Python 3.11.7, numpy 2.4.6, scipy 1.17.1. It takes about a minute.
"""

import csv
import json
import math
from collections import defaultdict
from datetime import date, timedelta
from fractions import Fraction
from functools import cache
from pathlib import Path

import numpy as np
from scipy.integrate import quad
from scipy.optimize import brentq, minimize, minimize_scalar
from scipy.stats import gamma

HERE = Path(__file__).parent
TODAY = date(2011, 11, 14)
FIRST_WEEK = date(2010, 12, 6)  # the week of 29 November began before the first parcel
PARCELS_SINCE = date(2010, 11, 8)
SUPPLY = "packing-paper"
OWN_TOO = ["teapot"]
DISCOUNT = 0.93
START = 0.5  # what each type has before its first piece, for the shares
CARD_WEEKS = 8  # weeks that the recipes' word counts for at first, for used over card; it fades like a week
FIRST_LOOK = 4
POOL_WEIGHT = 10
PARTS = 12_000
REVIEW_DAYS, LEAD_DAYS, COVER_WEEKS, SERVICE = 7, 4, 6, 0.95
LATE_STEP, KEPT = 1, [0.65, 0.2, 0.1, 0.05]  # how a promise is kept before any delivery is recorded

shop = json.loads((HERE / "giftware-shop.json").read_text())


# --- The parcels and what they took, in exact fractions -------------------------------------------------------


def amount(text):
    """Use units: "1 1/2" sheets are 3/2, "99 in" of tape are 99/12 ft."""
    if text.endswith(" in"):
        return Fraction(text[:-3]) / 12
    return sum(Fraction(part) for part in text.split())


recipes = {}
for item_type in shop["itemTypes"]:
    (recipe,) = item_type["recipes"]
    steps = {"piece": defaultdict(Fraction), "parcel": defaultdict(Fraction)}
    for step in recipe["steps"]:
        steps[step["per"]][step["supply"]] += amount(step["amount"])
    recipes[item_type["id"]] = {**steps, "cartons": recipe["cartons"]}
TYPES = sorted(recipes)
SUPPLIES = [supply["id"] for supply in shop["supplies"]]
CARTONS = {supply["id"] for supply in shop["supplies"] if supply["kind"] == "carton"}

order_days, orders = {}, defaultdict(lambda: defaultdict(int))
with open(HERE / "giftware-parcels.csv", newline="") as file:
    for row in csv.DictReader(file):
        order_days[row["order_ref"]] = date.fromisoformat(row["shipped_on"])
        orders[row["order_ref"]][row["item_type"]] += int(row["pieces"])


def leading(pieces):
    return min(pieces, key=lambda each: (-pieces[each], each))


def carton_of(pieces):
    total = sum(pieces.values())
    return next(each["supply"] for each in recipes[leading(pieces)]["cartons"] if each["upTo"] >= total)


def use_of(pieces):
    use, once = defaultdict(Fraction), defaultdict(Fraction)
    for each, count in pieces.items():
        for supply, taken in recipes[each]["piece"].items():
            use[supply] += taken * count
        for supply, taken in recipes[each]["parcel"].items():
            once[supply] = max(once[supply], taken)
    for supply, taken in once.items():
        use[supply] += taken
    use[carton_of(pieces)] += 1
    return use


# --- Open weeks, and pieces and use as usual ------------------------------------------------------------------

closed_days = set()
for span in shop["closed"]:
    day, last = date.fromisoformat(span["from"]), date.fromisoformat(span["to"])
    while day <= last:
        closed_days.add(day)
        day += timedelta(1)


def open_days(monday):
    return sum(monday + timedelta(each) not in closed_days for each in range(7))


all_weeks = [FIRST_WEEK + timedelta(7 * each) for each in range((TODAY - FIRST_WEEK).days // 7)]
weeks = [week for week in all_weeks if open_days(week) * 2 >= 7]
N = len(weeks)
index = {week: each for each, week in enumerate(weeks)}
open_share = np.array([open_days(week) / 7 for week in weeks])

pieces_raw = {each: np.zeros(N) for each in TYPES}
use_exact = {each: [Fraction(0)] * N for each in SUPPLIES}
used_to_today = Fraction(0)
for ref, pieces in orders.items():
    on = order_days[ref]
    use = use_of(pieces)
    if on <= TODAY:
        used_to_today += use[SUPPLY]
    at = index.get(on - timedelta(on.weekday()))
    if at is None:
        continue
    for each, count in pieces.items():
        pieces_raw[each][at] += count
    for supply, taken in use.items():
        use_exact[supply][at] += taken
pieces_usual = {each: pieces_raw[each] / open_share for each in TYPES}
use_usual = {each: np.array([float(taken) for taken in use_exact[each]]) / open_share for each in SUPPLIES}
totals = sum(pieces_usual.values())


# --- What a piece takes, and what a parcel takes as a rule ----------------------------------------------------

led, pieces_all = defaultdict(int), defaultdict(int)
led_cartons = defaultdict(int)
sizes = defaultdict(list)
for ref, pieces in orders.items():
    if order_days[ref] >= TODAY:
        continue
    led[leading(pieces)] += 1
    led_cartons[leading(pieces), carton_of(pieces)] += 1
    for each, count in pieces.items():
        pieces_all[each] += count
        if order_days[ref] >= PARCELS_SINCE:
            sizes[each].append(count)


def bill(each, supply):
    if supply in CARTONS:
        return Fraction(led_cartons[each, supply], pieces_all[each])
    steps = recipes[each]
    return steps["piece"][supply] + steps["parcel"][supply] * Fraction(led[each], pieces_all[each])


def per_use(supply):
    squares = uses = Fraction(0)
    for each in TYPES:
        if supply in CARTONS:
            squares += led_cartons[each, supply]
            uses += led_cartons[each, supply]
            continue
        a, b = recipes[each]["piece"][supply], recipes[each]["parcel"][supply]
        p = Fraction(sum(sizes[each]), len(sizes[each]))
        pp = Fraction(sum(size * size for size in sizes[each]), len(sizes[each]))
        squares += led[each] * (a * a * pp + 2 * a * b * p + b * b)
        uses += led[each] * (a * p + b)
    return squares / uses


bills = {supply: {each: bill(each, supply) for each in TYPES} for supply in SUPPLIES}


# --- The three forecasts of the level -------------------------------------------------------------------------


def simple_run(y, alpha):
    """The start level that leaves least squares is linear in the errors: e[t] = c[t] - l0 (1 - alpha)^t."""
    without, weight = 0 * alpha, 1 + 0 * alpha
    cw = ww = cc = 0 * alpha
    for value in y:
        error = value - without
        cw, ww, cc = cw + error * weight, ww + weight * weight, cc + error * error
        without = without + alpha * error
        weight = weight * (1 - alpha)
    start = cw / ww
    return cc - start * cw, without + start * weight, start


def best_on(low, high, error):
    """The lowest point of a function of one variable: a fine grid, then a bounded search round each valley."""
    grid = np.linspace(low, high, 2001)
    errors = error(grid)
    best = (errors.min(), grid[errors.argmin()])
    for at in range(len(grid)):
        left, right = max(at - 1, 0), min(at + 1, len(grid) - 1)
        if errors[at] <= errors[left] and errors[at] <= errors[right]:
            found = minimize_scalar(error, bounds=(grid[left], grid[right]), method="bounded", options={"xatol": 1e-12})
            best = min(best, (found.fun, found.x))
    return best[1]


def simple(y):
    """Alpha and start level by least squares; the level after the last week, alpha, start."""
    alpha = best_on(0.0, 1.0, lambda each: simple_run(y, each)[0])
    _, level, start = simple_run(y, alpha)
    return level, alpha, start


def simple_level_from(y, alpha, start):
    level = start
    for value in y:
        level = level + alpha * (value - level)
    return level


def damped_run(y, alpha, beta_star, phi):
    """The start level and trend that leave least squares are linear in the errors: e[t] = c[t] - l0 u[t] - b0 v[t]."""
    zero = 0 * alpha
    # Each of the three is level and trend: of the values from nothing, of a start level of 1, of a start trend of 1.
    states = [(zero, zero), (zero + 1, zero), (zero, zero + 1)]
    sums = defaultdict(lambda: zero)
    for value in y:
        errors, after = [], []
        for index, (level, trend) in enumerate(states):
            ahead = level + phi * trend
            seen = value if index == 0 else 0
            new = alpha * seen + (1 - alpha) * ahead
            after.append((new, beta_star * (new - level) + (1 - beta_star) * phi * trend))
            errors.append(value - ahead if index == 0 else ahead)
        states = after
        for a in range(3):
            for b in range(a, 3):
                sums[a, b] = sums[a, b] + errors[a] * errors[b]
    determinant = sums[1, 1] * sums[2, 2] - sums[1, 2] ** 2
    sound = determinant > 1e-9 * sums[1, 1] * sums[2, 2]
    safe = np.where(sound, determinant, 1.0)
    level0 = np.where(sound, (sums[0, 1] * sums[2, 2] - sums[0, 2] * sums[1, 2]) / safe, sums[0, 1] / sums[1, 1])
    trend0 = np.where(sound, (sums[0, 2] * sums[1, 1] - sums[0, 1] * sums[1, 2]) / safe, 0.0)
    error = sums[0, 0] - level0 * sums[0, 1] - trend0 * sums[0, 2]
    ahead = [level + phi * trend for level, trend in states]
    return error, ahead[0] + level0 * ahead[1] + trend0 * ahead[2]


DAMPED_GRID = np.meshgrid(np.linspace(0, 1, 41), np.linspace(0, 1, 41), np.linspace(0.8, 0.98, 10), indexing="ij")
DAMPED_BOUNDS = [(0, 1), (0, 1), (0.8, 0.98)]


def damped(y):
    """Many starts: every valley of the grid, and its 20 lowest points, is followed down; the lowest is taken."""
    errors, _ = damped_run(y, *DAMPED_GRID)
    padded = np.pad(errors, 1, constant_values=np.inf)
    valley = np.ones_like(errors, dtype=bool)
    for axis in range(3):
        for shift in (0, 2):
            cut = [slice(1, -1)] * 3
            cut[axis] = slice(shift, shift + errors.shape[axis])
            valley &= errors <= padded[tuple(cut)]
    starts = sorted(np.flatnonzero(valley), key=lambda at: errors.flat[at])[:30]
    starts += list(np.argsort(errors, axis=None)[:20])
    scale = errors.min()
    best = None
    for at in starts:
        start = [axis.flat[at] for axis in DAMPED_GRID]
        found = minimize(
            lambda x: damped_run(y, *x)[0] / scale,
            start,
            bounds=DAMPED_BOUNDS,
            method="L-BFGS-B",
            options={"ftol": 1e-15, "gtol": 1e-10, "maxiter": 500},
        )
        if best is None or found.fun < best.fun:
            best = found
    polished = minimize(
        lambda x: damped_run(y, *x)[0] / scale,
        best.x,
        bounds=DAMPED_BOUNDS,
        method="Nelder-Mead",
        options={"xatol": 1e-10, "fatol": 1e-15, "maxiter": 5000, "maxfev": 5000},
    )
    best = min(best, polished, key=lambda each: each.fun)
    return damped_run(y, *best.x)[1], best.x


def theta(y):
    n = len(y)
    alpha = best_on(0.0001, 0.9999, lambda each: simple_run(y, each)[0])
    _, level, start = simple_run(y, alpha)
    slope = np.polyfit(np.arange(n), y, 1)[0]
    return max(0.0, level + slope / 2 * (1 - (1 - alpha) ** n) / alpha), (alpha, start, slope)


def level_after(n):
    y = totals[:n]
    if n < 6:
        return simple(y)[0]
    return (simple(y)[0] + damped(y)[0] + theta(y)[0]) / 3


# --- Pieces expected a week, and use expected a week ----------------------------------------------------------


def discounted(values):
    """Sum in which the newest counts 1, the one before 0.93, and so on."""
    return float(np.sum(values * DISCOUNT ** np.arange(len(values) - 1, -1, -1)))


def shares_after(n):
    """Discounted rates since each type's first piece, of the last 4 weeks at least."""
    rates = {}
    for each in TYPES:
        seen = pieces_usual[each][:n]
        sold = np.flatnonzero(seen)
        first = min(int(sold[0]), n - 4) if len(sold) > 0 else 0
        since = seen[max(0, first) :]
        rates[each] = (discounted(since) + START) / discounted(np.ones(len(since)))
    return {each: rates[each] / sum(rates.values()) for each in TYPES}


own_fits = {each: simple(pieces_usual[each]) for each in OWN_TOO}
levels = {n: level_after(n) for n in range(FIRST_LOOK, N + 1)}


def pieces_after(n):
    shares = shares_after(n)
    expected = {each: levels[n] * shares[each] for each in TYPES}
    for each in OWN_TOO:
        _, alpha, start = own_fits[each]
        own = simple_level_from(pieces_usual[each][:n], alpha, start)
        expected[each] = (expected[each] + own) / 2
    return expected


expected_pieces = {n: pieces_after(n) for n in levels}


def card(supply, pieces):
    return sum(float(bills[supply][each]) * pieces[each] for each in TYPES)


def ratio_after(supply, n, first):
    used = discounted(use_usual[supply][first:n])
    by_card = discounted(card(supply, pieces_usual)[first:n])
    belief = CARD_WEEKS * DISCOUNT ** (n - first) * by_card / discounted(np.ones(n - first))
    return (used + belief) / (by_card + belief)


def first_week(supply):
    return int(np.flatnonzero(use_usual[supply])[0])


def expected_use(supply, n):
    return ratio_after(supply, n, first_week(supply)) * card(supply, expected_pieces[n])


# --- Looking back, and today ----------------------------------------------------------------------------------


def own_k(supply, h):
    """Own factor of the variance for sums of h weeks, and how many looks it rests on."""
    looks = [n for n in range(first_week(supply) + FIRST_LOOK, N) if n + h <= N][-52:]
    above = below = 0.0
    for n in looks:
        expected = h * expected_use(supply, n)
        actual = float(np.sum(use_usual[supply][n : n + h]))
        above += (actual - expected) ** 2 - float(per_use(supply)) * expected
        below += expected**2
    return max(0.0, above / below), len(looks)


def pooled_k(h):
    return float(np.mean([own_k(supply, h)[0] for supply in SUPPLIES]))


@cache
def k_of(supply, h):
    own, looks = own_k(supply, h)
    n = looks / h
    mixed = n / (n + POOL_WEIGHT) * own + POOL_WEIGHT / (n + POOL_WEIGHT) * pooled_k(h)
    return mixed * (1 + 2 / max(1, n))


def on_hand():
    opening = sum(amount(each["amount"]) for each in shop["counts"] if each["supply"] == SUPPLY)
    lines = [
        line
        for receipt in shop["receipts"]
        if date.fromisoformat(receipt["on"]) <= TODAY
        for line in receipt["lines"]
        if line["supply"] == SUPPLY
    ]
    return opening + sum(line["packs"] * amount(line["packAmount"]) for line in lines) - used_to_today


def main():
    print("weeks", len(all_weeks), "open", N, "left out", [str(each) for each in all_weeks if each not in index])
    print("open shares below 1", {str(week): open_days(week) for week in weeks if open_days(week) < 7}, "days of 7")
    print("last four weeks, sheets", [float(each) for each in use_exact[SUPPLY][-4:]])
    print("first weeks with use", {supply: first_week(supply) for supply in SUPPLIES})

    (s, s_alpha, s_start), (d, d_fit), (t, t_fit) = simple(totals), damped(totals), theta(totals)
    print(f"simple smoothing {s:.6f}: alpha {s_alpha:.6f}, start {s_start:.6f}")
    print(f"damped trend {d:.6f}: alpha {d_fit[0]:.6f}, beta* {d_fit[1]:.6f}, phi {d_fit[2]:.6f}")
    print(f"theta {t:.6f}: alpha {t_fit[0]:.6f}, start {t_fit[1]:.6f}, slope {t_fit[2]:.6f}")
    print(f"level, the mean of the three: {levels[N]:.6f} pieces a week")
    shares = shares_after(N)
    for each in TYPES:
        b = bills[SUPPLY][each]
        print(
            f"  {each:24s} share {shares[each]:.8f} expected {expected_pieces[N][each]:.6f} pieces, led {led[each]}"
            f" of {pieces_all[each]} pieces, bill {b} = {float(b):.6f}"
        )
    own_level, own_alpha, _ = own_fits["teapot"]
    print(f"teapot: by share {levels[N] * shares['teapot']:.6f}, own alpha {own_alpha:.6f}, own level {own_level:.6f}")

    w = expected_use(SUPPLY, N)
    by_card = card(SUPPLY, expected_pieces[N])
    print(f"by card {by_card:.6f}, ratio {ratio_after(SUPPLY, N, first_week(SUPPLY)):.8f}, a week {w:.6f} sheets")

    print(f"perUse {per_use(SUPPLY)} = {float(per_use(SUPPLY)):.6f}")
    for h in (1, 2):
        own, looks = own_k(SUPPLY, h)
        print(f"k({h}): own {own:.8f} from {looks} looks, pooled {pooled_k(h):.8f}, k {k_of(SUPPLY, h):.8f}")
        print("  ", {supply: round(float(own_k(supply, h)[0]), 6) for supply in SUPPLIES})

    # Until a delivery it is 4 days, or as late as a promise is kept: in steps of a fifth of it, a day at least.
    leads = list(zip([LEAD_DAYS + LATE_STEP * each for each in range(4)], KEPT))
    review = use_over(w, REVIEW_DAYS)
    parts = [(use_over(w, days), chance) for days, chance in leads]

    def unseen_density(u):
        """How far stock has fallen below the point when a check sees it: P(D > u) / E[D] of a week's use."""
        return review.sf(u) / review.mean()

    def lasts(point):
        """Chance that the point covers what was unseen and what is used until the delivery."""
        of = lambda u: unseen_density(u) * sum(chance * part.cdf(point - u) for part, chance in parts)
        return quad(of, 0, point, limit=500, epsabs=1e-11)[0]

    point = brentq(lambda each: lasts(each) - SERVICE, 1, 20 * w, xtol=1e-9)
    unseen = quad(lambda u: u * unseen_density(u), 0, 40 * w, limit=500)[0]
    unseen_square = quad(lambda u: u * u * unseen_density(u), 0, 40 * w, limit=500)[0]
    lead_mean = sum(chance * part.mean() for part, chance in parts)
    lead_square = sum(chance * (part.var() + part.mean() ** 2) for part, chance in parts)
    deviation = math.sqrt(unseen_square - unseen**2 + lead_square - lead_mean**2)
    print(f"unseen {unseen:.6f} = E[D^2]/(2E[D]) {(review.var() + review.mean() ** 2) / 2 / review.mean():.6f}, "
          f"until the delivery {lead_mean:.6f}, expected {unseen + lead_mean:.6f}, deviation {deviation:.6f}")
    print(f"reorder point {point:.6f} sheets, safety stock {point - unseen - lead_mean:.6f}")

    have = float(on_hand())
    likely = have * 7 / w
    careful = next(days for days in range(1, 100) if use_over(w, days).cdf(have) < SERVICE)

    def in_time(after):
        return sum(chance * use_over(w, after + days).cdf(have) for days, chance in leads)

    in_time_days = [after for after in range(0, 30) if in_time(after) >= SERVICE]
    order_by = TODAY + timedelta(max(in_time_days, default=0))
    up_to = point + COVER_WEEKS * w
    print(f"on hand {have}, {used_to_today} used; likely {likely:.4f} days, {TODAY + timedelta(math.ceil(likely))}; "
          f"careful {TODAY + timedelta(careful)}; in time if ordered in 0, 1, 2 days {[round(in_time(each), 6) for each in range(3)]}; "
          f"order by {order_by}")
    print(f"up to {up_to:.4f}, short of {up_to - have:.4f} = {(up_to - have) / 416:.4f} bundles")


def use_over(w, days):
    """Use over so many days: a gamma distribution of its mean and variance."""
    m = w * days / 7
    whole = min(2, max(1, math.ceil(days / 7)))
    k = k_of(SUPPLY, 1) if days <= 7 else k_of(SUPPLY, 1) + (days / 7 - 1) * (k_of(SUPPLY, whole) - k_of(SUPPLY, 1))
    variance = float(per_use(SUPPLY)) * m + k * m * m
    return gamma(m * m / variance, scale=variance / m)


if __name__ == "__main__":
    main()
