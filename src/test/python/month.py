#!/usr/bin/env python3
"""Reckons a month of an invented shop without the program, for MonthOracleTest.

    python3 src/test/python/month.py > src/test/resources/month/expected.csv

Reads what was typed (src/test/resources/month) and the shipped figures
(src/main/resources/motebook/reference), nothing else; Python 3.9 or newer, no package.
The room is stepped by Runge and Kutta of the fourth order, six seconds a step, where the
program has closed forms. Written from the description of the model in DEVELOPERS.md, not
from the program. One row for each value: what it is, the value.
"""
import calendar
import csv
import datetime as dt
import math
import os
import re
import shlex
import statistics

HERE = os.path.dirname(os.path.abspath(__file__))
TABLES = os.path.join(HERE, "../../main/resources/motebook/reference")
MONTH = os.path.join(HERE, "../resources/month")
TODAY = dt.date(2026, 11, 26)


def table(name):
    with open(os.path.join(TABLES, name + ".csv"), encoding="utf-8") as file:
        return list(csv.DictReader(file))


def by_key(name, key="key"):
    return {row[key]: row for row in table(name)}


OPERATIONS, MATERIALS = by_key("operations"), by_key("materials")
FINISHES, SOLVENTS = by_key("finishes"), by_key("solvents")
BREAKTHROUGH, RATES = by_key("breakthrough-10-percent", "compound"), by_key("breathing-rates", "work_rate")
CONTROLS = table("controls")

# The shop: 100 m3, 1 and 3 air changes an hour, 6 m/min; a cleaner of 10 m3/min that runs on.
VOLUME, CLOSED, OPEN, CLEANER, RUN_ON = 100.0, 1 / 60, 3 / 60, 10.0, 30
BETA = math.pi * 0.8**2 * 6.0
SETTLING = {"coarse": 5.2 / 60, "fine": 0.3 / 60}
Z90 = 1.645  # of the 5 % left at either end
STEP = 0.1  # min


def runge_kutta(rate, state, time, step):
    a = rate(time, state)
    b = rate(time + step / 2, [s + step / 2 * d for s, d in zip(state, a)])
    c = rate(time + step / 2, [s + step / 2 * d for s, d in zip(state, b)])
    e = rate(time + step, [s + step * d for s, d in zip(state, c)])
    return [s + step / 6 * (w + 2 * x + 2 * y + z) for s, w, x, y, z in zip(state, a, b, c, e)]


def first_hour(settling):
    """Mean of the near field over an hour for 1 mg/min, from clean air, closed, min/m3."""
    state = [0.0, 0.0]  # room mg/m3, its integral
    for i in range(600):
        state = runge_kutta(
            lambda _, s: [1 / VOLUME - (CLOSED + settling) * s[0], s[0]], state, i * STEP, STEP)
    return 1 / BETA + state[1] / 60


M_COARSE, M_FINE = first_hour(SETTLING["coarse"]), first_hour(SETTLING["fine"])
PHI = 0.167 * M_COARSE / (0.833 * M_FINE + 0.167 * M_COARSE)
U = (1 - PHI) * M_COARSE + PHI * M_FINE


def log_variance(low, high):
    return (math.log(float(high) / float(low)) / 3.29) ** 2


# ---- what was typed

class Session:
    def __init__(self, number, line):
        said = re.fullmatch(
            r"(\d+):(\d+)-(\d+):(\d+) (.+?)(?: of (.+?))?(?: with (.+?))?(?: using (.+?))?"
            r"(?: wearing (half mask|hood)( checked)?(?: (\d+)%)?)? in shop by (\w+) on (\S+)", line)
        h1, m1, h2, m2, operation, material, controls, amounts, mask, checked, worn, person, day = said.groups()
        self.number, self.day, self.person = number, dt.date.fromisoformat(day), person
        self.start, self.end = int(h1) * 60 + int(m1), int(h2) * 60 + int(m2)
        self.operation = operation.replace(" ", "-")
        self.material = (material or "unknown").replace(" ", "-")
        self.controls = [c.replace(" ", "-") for c in (controls or "").split(" and ") if c]
        self.amounts = [(int(ml), key_of_finish(name))
                        for ml, name in re.findall(r"(\d+)ml (.+?)(?= and \d|$)", amounts or "")]
        self.mask, self.checked = mask, bool(checked)
        self.worn = int(worn or 100) / 100 if mask else 0.0
        self.minutes_worn = (self.end - self.start) * self.worn
        self.litres = float(RATES[OPERATIONS[self.operation]["work_rate"]]["litres_per_min"])


def key_of_finish(name):
    for key, row in FINISHES.items():
        if name in [key.replace("-", " "), row["name"], *row["also"].split(";")]:
            return key
    return next(key for key, row in FINISHES.items() if row["name"].startswith(name))


with open(os.path.join(MONTH, "lines.txt"), encoding="utf-8") as file:
    SESSIONS = [Session(i + 1, line.strip()) for i, line in enumerate(file)]
DAYS = {}
for one in SESSIONS:
    DAYS.setdefault(one.day, []).append(one)


class Thing:
    """What a command added: its words after the name, as attributes."""

    def __init__(self, name, options):
        self.name, self.options, self.until = name, options, None

    def number(self, option):
        return float(self.options[option]) if option in self.options else None

    def date(self, option):
        return dt.date.fromisoformat(self.options[option]) if option in self.options else None


def words(command):
    plain, options, rest = [], {}, shlex.split(command)
    while rest:
        word = rest.pop(0)
        if word in ("--pair", "--passed", "--failed"):
            options[word[2:]] = "yes"
        elif word.startswith("--"):
            value = rest.pop(0)
            options[word[2:]] = options[word[2:]] + ", " + value if word == "--for" and "for" in options else value
        else:
            plain.append(word)
    return plain, options


ELEMENTS, FILTERS, RESPIRATORS, UPKEEP, FITS = [], [], {}, [], []
with open(os.path.join(MONTH, "commands.txt"), encoding="utf-8") as file:
    for typed in file:
        plain, options = words(typed)
        if plain[:2] == ["gear", "add"]:
            thing = Thing(plain[3], options)
            if plain[2] == "respirator":
                RESPIRATORS[plain[3]] = options["for"]
            else:
                {"element": ELEMENTS, "filter": FILTERS}[plain[2]].append(thing)
        elif plain[:2] == ["gear", "change"]:
            old = next(e for e in ELEMENTS if e.name == plain[2] and not e.until)
            old.until = dt.date.fromisoformat(options["on"])
            ELEMENTS.append(Thing(old.name, {**old.options, "opened": options["on"]}))
        elif plain[:2] == ["gear", "upkeep"]:
            hour, minute = options.get("at", "24:00").split(":")
            UPKEEP.append((dt.date.fromisoformat(options["on"]), int(hour) * 60 + int(minute), plain[2], plain[3],
                           float(plain[4]) if len(plain) > 4 else None))
        elif plain[0] == "fit":
            FITS.append((plain[1], options))
UPKEEP.sort(key=lambda done: done[:2])

# ---- dust and vapour in the room

def source_control(session):
    rows = [row for row in CONTROLS if row["acts_on"] == "source" and row["key"] in session.controls
            and session.operation in row["serves"].split()]
    return min(rows, key=lambda row: float(row["pass_factor"]), default=None)


def emission(session):
    operation, material = OPERATIONS[session.operation], MATERIALS[session.material]
    factor = material["sanding_factor" if operation["family"] == "sanding" else "cutting_factor"]
    control = source_control(session)
    passed = float(control["pass_factor"]) if control else 1.0
    return float(operation["reference_mg_m3"]) * float(factor) * passed / U


def dust_doubts(session):
    operation, material, control = OPERATIONS[session.operation], MATERIALS[session.material], source_control(session)
    figure = log_variance(operation["low_mg_m3"], operation["high_mg_m3"])
    doubts = {("model",): math.log(2) ** 2, ("operation", session.operation): figure}
    if operation["family"] == "sanding":
        doubts["material", session.material] = log_variance(material["sanding_low"], material["sanding_high"])
    row = None
    if control:
        row = (control["key"], control["serves"])
        doubts["control", *row] = log_variance(control["pass_low"], control["pass_high"])
    own = max(math.log(float(operation["gsd"])) ** 2 - figure, math.log(1.67) ** 2)
    doubts["own", session.person, session.day, session.operation, session.material, row] = own
    return doubts


class Source:
    """One kind of dust of a session, or one finish of it: what it gives into the room."""

    def __init__(self, session, kind, amount=None):
        self.session, self.kind = session, kind
        minutes = session.end - session.start
        if amount:
            millilitres, self.finish = amount
            row = FINISHES[self.finish]
            mass = millilitres * float(row["volatile_g_l"])
            within = float(row["within_session"])
            self.steady, self.later = mass * within / minutes, mass * (1 - within)
            self.decay = float(row["later_rate_per_h"]) / 60
        else:
            self.steady = emission(session) * (PHI if kind == "fine" else 1 - PHI)
            self.later = self.decay = 0.0

    def gives(self, minute, time):
        """mg/min at a time within the minute that begins at `minute`."""
        if self.session.start <= minute < self.session.end:
            return self.steady
        if minute < self.session.end or not self.later:
            return 0.0
        return self.later * self.decay * math.exp(-self.decay * (time - self.session.end))


def exposures(sessions):
    """For each session of a day, what was breathed of each source: [(source, mg min/m3)]."""
    sources = [Source(s, kind) for s in sessions for kind in ("coarse", "fine")]
    sources += [Source(s, "vapour", amount) for s in sessions for amount in s.amounts]
    first, last = min(s.start for s in sessions), max(s.end for s in sessions)
    found = {s.number: [] for s in sessions}
    for source in sources:
        integral, state = {}, [0.0, 0.0]
        for minute in range(first, last + 1):
            integral[minute] = state[1]
            is_open = any("doors-open" in s.controls and s.start <= minute < s.end for s in sessions)
            cleaned = any("air-cleaner" in s.controls and s.start <= minute < s.end + RUN_ON for s in sessions)
            loss = OPEN if is_open else CLOSED
            if source.kind != "vapour":
                loss += SETTLING[source.kind] + (CLEANER / VOLUME if cleaned else 0)
            for i in range(round(1 / STEP)):
                state = runge_kutta(
                    lambda time, s: [source.gives(minute, time) / VOLUME - loss * s[0], s[0]],
                    state, minute + i * STEP, STEP)
        for s in sessions:
            breathed = integral[s.end] - integral[s.start]
            if s is source.session:
                breathed += source.steady / BETA * (s.end - s.start)
            if breathed > 0:
                found[s.number].append((source, breathed))
    return found


BREATHED = {}
for the_day in DAYS.values():
    BREATHED.update(exposures(the_day))


def lognormal_sum(terms):
    """Typical, central, 5 % and 95 % of a sum of lognormals [(typical, {doubt: log variance})] by Lo."""
    if not terms:
        return 0.0, 0.0, 0.0, 0.0
    means = [typical * math.exp(sum(doubts.values()) / 2) for typical, doubts in terms]
    weight = {}  # doubt -> expected part of the sum that bears it
    variances = {}
    for mean, (_, doubts) in zip(means, terms):
        for doubt, variance in doubts.items():
            weight[doubt] = weight.get(doubt, 0) + mean
            variances[doubt] = variance
    total = sum(means)
    variance = sum(variances[d] * (w / total) ** 2 for d, w in weight.items())
    central, sigma = total * math.exp(-variance / 2), math.sqrt(variance)
    return sum(t for t, _ in terms), central, central * math.exp(-Z90 * sigma), central * math.exp(Z90 * sigma)


def loads(sessions, kinds=("coarse", "fine")):
    """mg on the element from each source, with its doubts."""
    return [(mg * s.litres * s.worn / 1000, dust_doubts(source.session))
            for s in sessions for source, mg in BREATHED[s.number] if source.kind in kinds]


def ppm(session):
    """{solvent: (typical, 95 %)}, the mean of a session at 25 degrees."""
    terms, typical = [], {}
    for source, breathed in BREATHED[session.number]:
        if source.kind != "vapour":
            continue
        row, mean = FINISHES[source.finish], breathed / (session.end - session.start)
        doubts = {("finish", source.finish): log_variance(row["volatile_low"], row["volatile_high"]),
                  ("model",): math.log(2) ** 2}
        terms.append((mean, doubts))
        parts = row["solvents"].split()
        for solvent, share in zip(parts[::2], parts[1::2]):
            molar = float(SOLVENTS[solvent]["molar_mass_g_mol"])
            typical[solvent] = typical.get(solvent, 0) + mean * float(share) * 24.45 / molar
    total, _, _, high = lognormal_sum(terms)
    return {solvent: (value, value * high / total) for solvent, value in typical.items()}


# ---- the life of a cartridge

def printed(compound, parts_per_million):
    """Minutes of the printed table, log by log."""
    row = BREAKTHROUGH.get(compound)
    if not row:
        return None
    at = [50, 100, 200, 500, 1000]
    minutes = [float(row["ppm_%d" % c]) for c in at]
    for i in range(4):
        if parts_per_million <= at[i + 1]:
            share = max(0.0, math.log(parts_per_million / at[i]) / math.log(at[i + 1] / at[i]))
            return minutes[i] * (minutes[i + 1] / minutes[i]) ** share
    return minutes[-1]


def carbon_bed(row, parts_per_million, litres, carbon):
    """Wheeler and Jonas with Wood's terms, to 10 %, 22 degrees; at most its value at any higher ppm."""
    try:
        molar, density, index, p20, p25 = (float(row[k]) for k in (
            "molar_mass_g_mol", "density_g_ml", "refractive_index", "vapour_kpa_20", "vapour_kpa_25"))
    except ValueError:
        return None
    kelvin = 295.15
    share = (1 / kelvin - 1 / 293.15) / (1 / 298.15 - 1 / 293.15)
    saturated = p20 * (p25 / p20) ** share / 101.325
    polar = (index**2 - 1) / (index**2 + 2) * molar / density

    def minutes(c):
        potential = 1.987 * kelvin * math.log(saturated / (c * 1e-6)) if saturated > c * 1e-6 else 0
        holds = 0.454 * density * math.exp(-3.56e-5 * 0.454 * polar**-1.8 * potential**2)
        gram = c * 1e-6 * molar / (82.05737 * kelvin)
        speed = 1 / (0.0855 * (0.000825 + (0.063 - 0.0055 * math.log(9)) / polar))
        return max(0, holds * carbon / (gram * litres * 1000) - holds * 0.40 / (speed * gram) * math.log(9))

    return max(minutes(parts_per_million * (1000 / parts_per_million) ** (i / 400)) for i in range(401))


def single_life(solvent, c, litres, carbon):
    """Minutes at an upper concentration of at most 1000 ppm; None where no estimate is allowed."""
    row = SOLVENTS[solvent]
    if row["element"] != "organic-vapour":
        return None
    found = []
    table_minutes = printed(row["breakthrough"], c) if row["breakthrough"] else None
    if table_minutes is not None:
        found.append(table_minutes * 53.3 / litres * carbon / 52)
    bed = carbon_bed(row, c, litres, carbon)
    if bed is not None:
        found.append(bed)
    if found and float(row["boiling_c"]) > 70 and row["light_alcohol"] == "no":
        found.append(480 * min(1, 200 / c) ** 0.7 * 40 / litres)
    return min(found) if found else None


def life_used(session, end, carbon):
    """The share of a cartridge's life that a session takes, at the typical (0) or upper (1) end."""
    air = {solvent: value[end] for solvent, value in ppm(session).items()}
    if not air or not session.worn:
        return 0.0
    together = sum(air.values())
    lives = [single_life(solvent, min(together, 1000), session.litres, carbon) for solvent in air]
    if None in lives:
        return 1.0
    return session.minutes_worn / (0.75 * min(lives) * min(together, 1000) / together)


# ---- clocks

LATELY = TODAY - dt.timedelta(days=27)
WORKING_DAYS = sorted(d for d in DAYS if d >= LATELY)
PACE = max(7, (TODAY - WORKING_DAYS[0]).days + 1) / len(WORKING_DAYS)  # days of the calendar for a working day


def after_months(day, months):
    year, month = divmod(day.year * 12 + day.month - 1 + months, 12)
    return dt.date(year, month + 1, min(day.day, calendar.monthrange(year, month + 1)[1]))


class Clock:
    def __init__(self, used, limit, ends, over, left=None):
        self.used, self.limit, self.ends, self.over, self.left = used, limit, ends, over, left


def foreseen(used, limit, a_day, ran_out):
    if ran_out:
        return Clock(used, limit, ran_out, True)
    if a_day <= 0:
        return Clock(used, limit, None, False)
    left = (limit - used) / a_day
    return Clock(used, limit, TODAY + dt.timedelta(days=math.floor(left * PACE)), False, left)


def worn_clock(worn, recent, limit, measure):
    ran_out = next((worn[i - 1] for i in range(1, len(worn) + 1) if measure(worn[:i]) >= limit), None)
    clock = foreseen(measure(worn), limit, measure(recent) / len(WORKING_DAYS), ran_out and ran_out.day)
    clock.ran_out = ran_out
    return clock


def hours(sessions):
    return sum(s.minutes_worn for s in sessions) / 60


def upper_load(sessions):
    return lognormal_sum(loads(sessions))[3]


def element_clocks(element):
    worn = worn_with(element)
    recent = [s for s in SESSIONS if s.mask == element.options["for"] and s.day >= LATELY]
    kind, clocks = element.options["class"], {}
    if "sealed-until" in element.options:
        last = element.date("sealed-until")
        return {"shelf": Clock(0, 0, last, TODAY > last)}
    if element.number("limit-hours"):
        clocks["hours"] = worn_clock(worn, recent, element.number("limit-hours"), hours)
    if element.number("limit-mg"):
        clocks["load"] = worn_clock(worn, recent, element.number("limit-mg"), upper_load)
    if kind == "N95":  # 8 h or 200 mg, whichever comes later
        time, dust = worn_clock(worn, recent, 8, hours), worn_clock(worn, recent, 200, upper_load)
        if time.over != dust.over:
            later = dust if time.over else time
        elif time.over:
            later = time if (time.ran_out.day, time.ran_out.end) > (dust.ran_out.day, dust.ran_out.end) else dust
        else:
            later = time if time.left >= dust.left else dust
        clocks["dirty" if later is time else "load"] = later
    if kind == "organic vapour":
        carbon = 52 if "pair" in element.options else 26
        last = after_months(element.date("opened"), 6)
        clocks["opened"] = Clock((TODAY - element.date("opened")).days, (last - element.date("opened")).days, last, TODAY > last)
        clocks["vapour"] = worn_clock(worn, recent, 1, lambda l: sum(life_used(s, 1, carbon) for s in l))
        light = next((s for s in worn if any(float(SOLVENTS[v]["boiling_c"]) < 65 for v in ppm(s)
                                             if SOLVENTS[v]["boiling_c"])), None)
        if light:
            clocks["shift"] = Clock((TODAY - light.day).days, 0, light.day, TODAY > light.day)
    return clocks


def worn_with(element):
    begun = element.date("opened")
    return [s for s in SESSIONS if begun and s.mask == element.options["for"] and s.day >= begun
            and (element.until is None or s.day < element.until)]


def run_minutes(filter_):
    """Every minute (day, minute) in which it ran."""
    control = {"vacuum": "tool-vacuum"}.get(filter_.options["on"], filter_.options["on"])
    on = RUN_ON if control == "air-cleaner" else 0
    return {(s.day, minute) for s in SESSIONS if control in s.controls for minute in range(s.start, s.end + on)}


def filter_clocks(filter_):
    ran, begun = run_minutes(filter_), (filter_.date("from"), 0)
    mine = [done for done in UPKEEP if done[2] == filter_.name]

    def since(moment):
        return sum(1 for minute in ran if minute >= moment) / 60

    def last(*kinds):
        return max([done[:2] for done in mine if done[3] in kinds], default=begun)

    a_day = since((LATELY, 0)) / len(WORKING_DAYS)

    def clock(limit, moment):
        order = sorted(minute for minute in ran if minute >= moment)
        over = order[round(limit * 60) - 1][0] if len(order) >= limit * 60 else None
        return foreseen(len(order) / 60, limit, a_day, over)

    clocks = {}
    if filter_.number("clean-every"):
        clocks["cleaning"] = clock(filter_.number("clean-every"), last("cleaned", "replaced"))
    if filter_.number("change-at"):
        clocks["change"] = clock(filter_.number("change-at"), last("replaced"))
    emptied = [done[:2] for done in mine if done[3] == "emptied"]
    if len(emptied) > 1:
        between = [since(a) - since(b) for a, b in zip(emptied, emptied[1:])]
        clocks["emptying"] = clock(statistics.median(between), last("emptied", "replaced"))
    read = [done for done in mine if done[3] == "gauge"]
    if read:
        clean, change = filter_.number("gauge-clean"), filter_.number("gauge-change")
        share = (read[-1][4] - clean) / (change - clean)
        took = since(begun) - since(read[-1][:2])
        left = took / share * (1 - share) - since(read[-1][:2])
        clocks["gauge"] = foreseen(share, 1, 1 / (left / a_day / (1 - share)), None) if left > 0 else Clock(share, 1, TODAY, True)
    # Emptied, what has no clock for cleaning begins again.
    began = ("replaced",) if filter_.number("clean-every") else ("replaced", "emptied")
    return since(last(*began)), clocks


# ---- fit, and what is due

def fit_factor(record):
    return statistics.harmonic_mean([float(f) for f in record["factors"].split(",")])


def passed(record):
    return fit_factor(record) >= 100 if "factors" in record else "passed" in record


def of(kind, person):
    return [options for what, options in FITS if what == kind and options["person"] == person]


def on(record, key="on"):
    return dt.date.fromisoformat(record[key])


def fit_until(person, day=TODAY):
    """The last day of the newest test's year, or the day on which the face changed; None without."""
    tests = [t for t in of("record", person) if on(t) <= day]
    if not tests or not passed(tests[-1]):
        return None
    ends = [on(c) for c in of("change", person) if on(tests[-1]) < on(c) <= day]
    return min([after_months(on(tests[-1]), 12)] + ends)


def state(day):
    left = (day - TODAY).days
    return "overdue" if left < 0 else "due" if left == 0 else "soon" if left <= 14 else None


def clock_state(clock):
    if clock.left is not None:
        return "due" if clock.left <= 0 else "soon" if clock.left <= 3 else None
    return state(clock.ends) if clock.ends else None


def due():
    found = []
    for person in ("Ana", "Ben"):
        found.append((state(fit_until(person)), fit_until(person), "fit-test", "fit test with half mask", person))
        if not of("medical", person):
            found.append(("due", TODAY, "medical", "medical evaluation", person))
        training = after_months(max(on(t) for t in of("training", person)), 12)
        found.append((state(training), training, "training", "training in respirators", person))
    for element in ELEMENTS:
        mask, clocks = element.options["for"], element_clocks(element)
        running = [c for c in clocks.values() if c.ends]
        if element.until is None and running:
            first = min(running, key=lambda c: c.ends)
            kind = "spare" if "shelf" in clocks else "element"
            found.append((clock_state(first), first.ends, kind, element.name + " on " + mask, RESPIRATORS[mask]))
    does = {"cleaning": ("cleaning", "clean"), "change": ("replacing", "replace"),
            "emptying": ("emptying", "empty"), "gauge": ("gauge", "replace")}
    for filter_ in FILTERS:
        for name, clock in filter_clocks(filter_)[1].items():
            kind, verb = does[name]
            found.append((clock_state(clock), clock.ends, kind, verb + " " + filter_.name, "shop"))
    return sorted(item for item in found if item[0])


# ---- credit

def factor(session, hazard):
    """What a mask is credited with against "dust" or "vapour" in a session."""
    on_mask = [e for e in ELEMENTS if session in worn_with(e)]
    fits = [e for e in on_mask if (e.options["class"] == "organic vapour") == (hazard == "vapour")]
    if not fits:
        return 1
    for element in fits:
        for name, clock in element_clocks(element).items():
            if getattr(clock, "ran_out", None):
                spent = (clock.ran_out.day, clock.ran_out.end) <= (session.day, session.start)
            else:
                spent = clock.ends and clock.over and clock.ends < session.day
            if spent:
                return 1
    if hazard == "vapour":
        needs = {SOLVENTS[solvent]["element"] for solvent in ppm(session)} - {"organic-vapour"}
        # what is sprayed or brushed with isocyanates in it asks for supplied air
        if needs or any("isocyanates" in FINISHES[f]["cautions"] for s in DAYS[session.day]
                        if s.start < session.end for _, f in s.amounts):
            return 1
    if session.mask == "hood":
        return 25
    until = fit_until(session.person, session.day)
    hair = any(on(h, "from") <= session.day <= on(h, "to") for h in of("hair", session.person))
    changed = any(on(c) <= session.day for c in of("change", session.person))
    if until is None or until < session.day or changed or hair or not session.checked:
        return 1
    return 10


def rows():
    for element in ELEMENTS:
        if element.until is None and "sealed-until" not in element.options:
            at, worn = "elements/%s/" % element.name, worn_with(element)
            typical, central, low, high = lognormal_sum(loads(worn))
            yield at + "hours_worn", hours(worn)
            yield at + "load_typical_mg", typical
            yield at + "load_central_mg", central
            yield at + "load_low90_mg", low
            yield at + "load_high90_mg", high
            yield at + "load_fine_typical_mg", sum(mg for mg, _ in loads(worn, ("fine",)))
            yield at + "load_coarse_typical_mg", sum(mg for mg, _ in loads(worn, ("coarse",)))
            yield at + "days_open", (TODAY - element.date("opened")).days
            if element.options["class"] == "organic vapour":
                carbon = 52 if "pair" in element.options else 26
                yield at + "vapour_used_typical_percent", 100 * sum(life_used(s, 0, carbon) for s in worn)
            yield from clock_rows(at, element_clocks(element))
    for filter_ in FILTERS:
        at = "filters/%s/" % filter_.name
        run_hours, clocks = filter_clocks(filter_)
        yield at + "run_hours", run_hours
        yield from clock_rows(at, clocks)
    for person in ("Ana", "Ben"):
        for test in of("record", person):
            if "factors" in test:
                yield "fit/%s/fit_factor" % person, fit_factor(test)
    for session in SESSIONS:
        if session.mask:
            at = "sessions/%d/" % session.number
            yield at + "credited_apf", factor(session, "dust")
            yield at + "credited_apf_vapour", factor(session, "vapour") if ppm(session) else ""
    for item in due():
        yield "due", "%s %s %s: %s, %s" % item


def clock_rows(at, clocks):
    for name, clock in sorted(clocks.items()):
        where = at + "clocks/%s/" % name
        yield where + "used", clock.used
        yield where + "limit", clock.limit
        yield where + "over", "true" if clock.over else "false"
        yield where + "ends", clock.ends.isoformat() if clock.ends else ""
        yield where + "working_days_left", "" if clock.left is None else clock.left


if __name__ == "__main__":
    print("what,value")
    for what, value in rows():
        text = "%.7g" % value if isinstance(value, float) else str(value)
        print(what + "," + ('"%s"' % text if "," in text else text))
