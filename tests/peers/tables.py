"""Reads the tables for spreadsheets back with Python's csv module (strict) and compares them with the plan's JSON: names that try to be
something else stay text, numbers stay numbers, sums agree."""
import csv
import io
import json
import os
import subprocess
import sys
import tempfile

program, root = sys.argv[1:3]
failures = compared = 0


def expect(right, words):
    global failures, compared
    compared += 1
    if not right:
        failures += 1
        print(words)


def run(*words):
    return subprocess.run([program, *words], check=True, capture_output=True).stdout


def table(*words):
    text = run(*words).decode("utf-8")
    expect(text.endswith("\r\n") and "\n" not in text.replace("\r\n", ""), f"{words}: a line without CR and LF")
    rows = list(csv.reader(io.StringIO(text, newline=""), strict=True))
    expect(len({len(row) for row in rows}) == 1, f"{words}: rows of different lengths")
    return [dict(zip(rows[0], row)) for row in rows[1:]]


def safe(name):
    return "'" + name if name.lstrip(" \u00a0")[:1] in tuple("=+-@\uff1d\uff0b\uff0d\uff20") else name


def near(a, b):
    return abs(a - b) <= 1e-3 * max(1, abs(b))


def compare(orders, name=None):
    plan = json.loads(run("plan", *orders, "--format", "json"))
    faces = [face for piece in plan["pieces"] for face in piece["faces"]]
    area = table("area", *orders, "--format", "csv")
    expect(0 < len(area) <= len(faces), f"{orders}: {len(area)} faces, planned {len(faces)}")  # a plan tells loads apart
    expect(near(sum(float(row["area_m2"]) for row in area), sum(face["area_m2"] for face in faces)), f"{orders}: areas")
    expect(near(sum(float(row["area_ft2"]) for row in area) * 0.3048**2, sum(face["area_m2"] for face in faces)), f"{orders}: square feet")
    buy = [row for row in table("buy", *orders, "--format", "csv") if row["kind"] == "finish"]
    expect(near(sum(float(row["need_l"] or 0) for row in buy), sum(row["need_l"] for row in plan["purchase"])), f"{orders}: needs")
    expect(near(sum(float(row["cost"] or 0) for row in buy), sum(row["cost"] or 0 for row in plan["purchase"])), f"{orders}: costs")
    steps = table("calendar", *orders, "--format", "csv")
    events = {event["start"][:16] + event["end"][:16] for event in plan["events"]}
    shown = {row["date"] + "T" + row["start"] + row["end_date"] + "T" + row["end"] for row in steps if row["hours"]}
    expect(events == shown, f"{orders}: {events ^ shown}")
    for row in steps:
        for key in ("people", "hours", "grit", "volume_ml"):
            expect(row[key] == "" or float(row[key]) > 0, f"{orders}: {key} {row[key]}")
    if name is not None:
        expect({row["piece"] for row in area} == {safe(name)}, f"{name}: {area[0]['piece']}")
        expect({row["part"] for row in area} == {safe(name)}, f"{name}: {area[0]['part']}")
        expect({row["order"] for row in steps} == {safe(name)}, f"{name}: {steps[0]['order']}")
    for row in area + buy + steps:
        for key, cell in row.items():
            expect(cell[:1] not in ("=", "+", "-", "@", "\t", "\r"), f"{orders}: {key} begins a formula: {cell}")


for sample, files in {"library-table": ["order.yaml"], "two-orders": ["order-desk.yaml", "order-side-table.yaml"], "cabinet-doors": ["order.yaml"]}.items():
    compare([os.path.join(root, "samples", sample, file) for file in files])

SHOP = """shop: {name}
time zone: Europe/Berlin
units: metric
currency: EUR
hours: {{mon-fri: "08:00-12:00, 13:00-17:00"}}
methods: [brush, pad, wipe]
drying places:
  - {{name: trestle, kind: points, count: 4}}
air:
  constant: {{temperature: 20 °C, humidity: 45 %}}
"""
ORDER = """order: {name}
shop: shop.yaml
start: 2027-03-01 08:00
pieces:
  - piece: {name}
    species: walnut-black
    schedule: water-clear-three-coats
    parts:
      - {{part: {name}, shape: board, length: 900 mm, width: 250 mm, thickness: 20 mm}}
"""
NAMES = ["=cmd|' /C calc'!A0", "+1+1", "-2+3", "@SUM(A1)", "  =1+1", "\u00a0=1", "\uff1d1+1", "a, b; c", 'say "no"', "\"", "'quoted'", "<script>alert(1)</script>",
         "\U0001fab5 tábla", "שולחן", "مكتب, كبير", "a\\nb", "100", "1,5", "TRUE", "x" * 199]
with tempfile.TemporaryDirectory() as folder:
    for name in NAMES:
        for file, text in (("shop.yaml", SHOP), ("order.yaml", ORDER)):
            with open(os.path.join(folder, file), "w", encoding="utf-8") as out:
                out.write(text.format(name=json.dumps(name, ensure_ascii=False)))
        shown = name.strip(" ").replace("\u00a0", " ")
        compare([os.path.join(folder, "order.yaml")], shown)

print(f"{compared} comparisons, {failures} differ")
sys.exit(0 if failures == 0 and compared > 1000 else 1)
