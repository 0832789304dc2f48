// Reads calendars back with the library ical.js (npm), zones by the VTIMEZONE in the file alone, and compares them with the plan's JSON event
// by event, as instants: across both changes of summer time, one of them by half an hour, with names that try to be something else.
"use strict";
const { execFileSync } = require("node:child_process");
const { mkdtempSync, writeFileSync, rmSync, readFileSync } = require("node:fs");
const { join } = require("node:path");
const { tmpdir } = require("node:os");
const ICAL = require("ical.js");

const [program, root] = process.argv.slice(2);
const folder = mkdtempSync(join(tmpdir(), "coatday-calendar-"));
let failures = 0, compared = 0;

function expect(right, words) {
  ++compared;
  if (!right && ++failures <= 20) console.log(words);
}

function run(words, stamp) {
  const env = { ...process.env, SOURCE_DATE_EPOCH: String(stamp) };
  return execFileSync(program, words, { encoding: "utf8", maxBuffer: 1 << 28, env });
}

/// Events of a calendar by their ids.
function read(text) {
  const calendar = new ICAL.Component(ICAL.parse(text));
  expect(calendar.getFirstPropertyValue("version") === "2.0", "no version 2.0");
  expect(calendar.getAllSubcomponents("vtimezone").length === 1, "not one VTIMEZONE");
  ICAL.TimezoneService.reset();
  for (const part of calendar.getAllSubcomponents("vtimezone")) ICAL.TimezoneService.register(part);
  const events = new Map();
  for (const part of calendar.getAllSubcomponents("vevent")) {
    const event = new ICAL.Event(part, { strictExceptions: true });
    expect(!events.has(event.uid), `two events have the id ${event.uid}`);
    events.set(event.uid, event);
  }
  for (const line of text.split("\r\n")) {
    expect(Buffer.byteLength(line) <= 75, `longer than 75 octets: ${line}`);
    expect(!/[\n\x00-\x08\x0b-\x1f]/.test(line), `a control character: ${JSON.stringify(line)}`);
    expect(line === Buffer.from(line).toString() && !line.includes("\ufffd"), `a character is cut: ${line}`);
  }
  return events;
}

const encoded = (text) =>
  [...Buffer.from(text)].map((b) => (/[A-Za-z0-9._-]/.test(String.fromCharCode(b)) ? String.fromCharCode(b) : "%" + b.toString(16).toUpperCase().padStart(2, "0"))).join("");

function localDate(iso) { return iso.slice(0, 10); }

function compare(name, orders, orderName, from) {
  const options = from ? ["--from", from] : [];
  const plan = JSON.parse(run(["plan", ...orders, "--format", "json", ...options], 1800000000));
  const events = read(run(["calendar", ...orders, ...options], 1800000000));
  let handOver = 0;
  const nameOf = new Map(plan.pieces.map((piece) => [piece.id, piece.order ?? orderName]));
  for (const step of plan.events) {
    const order = step.id.startsWith("shop/") ? "" : `${encoded(nameOf.get(step.piece) ?? orderName)}/`;
    const uid = `${encoded(plan.shop.name)}/${order}${step.id}@coatday`;
    const event = events.get(uid);
    expect(event !== undefined, `${name}: no event ${uid}`);
    if (event === undefined) continue;
    expect(event.startDate.toUnixTime() * 1000 === Date.parse(step.start), `${name}: ${uid} begins at ${event.startDate}, planned ${step.start}`);
    expect(event.endDate.toUnixTime() * 1000 === Date.parse(step.end), `${name}: ${uid} ends at ${event.endDate}, planned ${step.end}`);
    expect(event.location.startsWith(plan.shop.name), `${name}: ${uid} is at ${event.location}`);
    for (const caution of step.cautions) expect(event.description.includes(caution), `${name}: ${uid} has lost a caution`);
    const alarms = event.component.getAllSubcomponents("valarm");
    expect(alarms.length >= 1 && alarms[0].getFirstPropertyValue("trigger").toSeconds() === -900, `${name}: ${uid} has no alarm`);
  }
  for (const piece of plan.pieces) {
    for (const [stage, word] of [["wrap", "pack"], ["deliver", "deliver"], ["full_use", "full-cure"]]) {
      const when = piece.ready_safe[stage];
      if (when === null) continue;
      ++handOver;
      const event = events.get(`${encoded(plan.shop.name)}/${encoded(nameOf.get(piece.id))}/${piece.id}#${word}@coatday`);
      expect(event !== undefined && event.startDate.isDate && event.startDate.toString() === localDate(when),
             `${name}: ${piece.id} ${stage} on ${event?.startDate}, planned ${when}`);
      expect(event?.summary.includes(`from ${when.slice(11, 16)}: ${piece.name}`), `${name}: ${event?.summary}`);
    }
  }
  expect(events.size === plan.events.length + handOver, `${name}: ${events.size} events for ${plan.events.length} steps and ${handOver} hand-overs`);
  return { plan, events };
}

function shop(zone, shopName) {
  return `shop: ${JSON.stringify(shopName)}\ntime zone: ${zone}\nunits: metric\nhours: {mon-sun: "00:00-24:00"}\nmethods: [brush, pad, wipe]\n` +
         `drying places:\n  - {name: trestle, kind: points, count: 4}\nair:\n  constant: {temperature: 20 °C, humidity: 45 %}\n`;
}
function order(orderName, pieces, part, start) {
  const piece = (name) => `  - piece: ${JSON.stringify(name)}\n    species: walnut-black\n    schedule: water-clear-three-coats\n    parts:\n` +
                          `      - {part: ${JSON.stringify(part)}, shape: board, length: 900 mm, width: 250 mm, thickness: 20 mm}\n`;
  return `order: ${JSON.stringify(orderName)}\nshop: shop.yaml\nstart: ${start}\npieces:\n${pieces.map(piece).join("")}`;
}
function write(file, text) {
  writeFileSync(join(folder, file), text);
  return join(folder, file);
}

const evil = ["<script>alert(1)</script>", "=cmd|'/c x'!A1", "a, b; c \\ d \\n e", "\"quoted\" 'too'", "🪵 tábla מדף قطعة",
              "BEGIN:VEVENT", "x\u00ady".repeat(49)];

compare("main sample", [join(root, "samples/library-table/order.yaml")], "Library table");
compare("every key", [join(root, "samples/every-key/order.yaml")], "every key");
compare("two orders", ["order-desk.yaml", "order-side-table.yaml"].map((file) => join(root, "samples/two-orders", file)), "");

// Work at every hour over both changes, so that steps and stages fall into what is skipped and what comes twice.
for (const [zone, start] of [["America/Chicago", "2027-03-13 20:00"], ["America/Chicago", "2027-11-06 20:00"], ["Europe/Berlin", "2027-10-30 18:00"],
                             ["Australia/Lord_Howe", "2027-04-03 20:00"], ["Australia/Lord_Howe", "2027-10-02 20:00"], ["Asia/Kolkata", "2027-03-13 20:00"],
                             ["UTC", "2027-03-13 20:00"]]) {
  write("shop.yaml", shop(zone, "night shop"));
  const work = Array.from({ length: 40 }, (_, i) => `      - {name: clean ${i}, when: before finishing, takes: 20 min}\n`).join("");
  compare(`${zone} ${start}`, [write("order.yaml", order("night order", ["shelf"], "board", start) + "    work:\n" + work)], "night order");
}

for (const name of evil) {
  write("shop.yaml", shop("Europe/Berlin", name));
  const { plan, events } = compare(name, [write("order.yaml", order(name, [name], name, "2027-03-01 08:00"))], name);
  const shown = [...events.values()].filter((event) => event.summary.includes(name)).length;
  expect(shown >= plan.events.length, `${name}: in ${shown} summaries only`);
}

// A line of every length.
write("shop.yaml", shop("Europe/Berlin", "shop"));
const lengths = Array.from({ length: 76 }, (_, i) => "m".repeat(i + 1));
compare("lengths", [write("order.yaml", order("many", lengths, "board", "2027-03-01 08:00"))], "many");

// Planned anew for a later start, in a shop of another zone: the same ids, higher sequences, later stamps.
write("shop.yaml", shop("America/Chicago", "shop"));
const again = [write("order.yaml", order("order", ["shelf"], "board", "2027-03-01 08:00"))];
const before = read(run(["calendar", ...again], 1800000000));
const after = read(run(["calendar", ...again, "--from", "2027-03-12 09:00"], 1800086400));
expect(before.size === after.size && [...before.keys()].every((uid) => after.has(uid)), "a new plan has other ids");
for (const [uid, event] of before) {
  const next = after.get(uid);
  expect(next !== undefined && next.sequence > event.sequence, `${uid}: sequence ${event.sequence}, then ${next?.sequence}`);
  expect(next !== undefined && next.component.getFirstPropertyValue("dtstamp").compare(event.component.getFirstPropertyValue("dtstamp")) > 0, `${uid}: stamp`);
  expect(next !== undefined && next.startDate.compare(event.startDate) > 0, `${uid}: not later`);
}

// Into a file, over its own file, and not over another's.
const target = join(folder, "plan.ics");
const told = run(["calendar", ...again, "-o", target], 1800000000);
expect(told.startsWith(`${target}: `), `told: ${told}`);
run(["calendar", ...again, "-o", target], 1800000000);
expect(readFileSync(target, "utf8") === run(["calendar", ...again], 1800000000), "the file is not what is printed");
writeFileSync(target, "mine");
let refused = 0;
try {
  execFileSync(program, ["calendar", ...again, "-o", target], { stdio: "pipe" });
} catch (error) {
  refused = error.status;
}
expect(refused === 2 && readFileSync(target, "utf8") === "mine", "another's file is overwritten");

rmSync(folder, { recursive: true });
console.log(`${compared} comparisons, ${failures} differ`);
process.exit(failures === 0 && compared > 5000 ? 0 : 1);
