// Compares moist air at random states, CSV as psychrometrics_states prints it, with the library psychrolib (npm), which implements ASHRAE
// Handbook Fundamentals 2017, chapter 1, on its own.
"use strict";
const { execFileSync } = require("node:child_process");
const psychrolib = require("psychrolib");
psychrolib.SetUnitSystem(psychrolib.SI);

// The peer solves its dew point and wet bulb by iteration to 1e-3 K. From 0 °C to water's triple point it reckons over ice, and we over water.
const kelvins = 2e-3;
const overIce = (celsius) => celsius >= 0 && celsius <= 0.01;
const share = (s) => (overIce(s.t_c) || overIce(s.wet_bulb_c) ? 1e-4 : 1e-9);
const kilojoules = 1e-6;

// Just below 0 °C both a wet and an icy bulb solve the equations, and libraries choose differently: there the peer only says whether ours does.
const twoBulbs = (wetBulb) => wetBulb > -0.7 && wetBulb < 0.1;

const [header, ...rows] = execFileSync(process.argv[2], { encoding: "utf8", maxBuffer: 1 << 26 }).trim().split("\n");
const names = header.split(",");
let failures = 0, compared = 0, skipped = 0;
const worst = {};
for (const row of rows) {
  const s = Object.fromEntries(row.split(",").map((text, i) => [names[i], Number(text)]));
  const peer = {
    saturation_pa: psychrolib.GetSatVapPres(s.t_c),
    vapour_pa: psychrolib.GetVapPresFromRelHum(s.t_c, s.rh),
    dew_point_c: psychrolib.GetTDewPointFromRelHum(s.t_c, s.rh),
    wet_bulb_c: psychrolib.GetTWetBulbFromRelHum(s.t_c, s.rh, s.p_pa),
    humidity_ratio: psychrolib.GetHumRatioFromRelHum(s.t_c, s.rh, s.p_pa),
    enthalpy_kj: psychrolib.GetMoistAirEnthalpy(s.t_c, s.humidity_ratio) / 1000,
  };
  const pairs = Object.entries(peer).map(([name, value]) => [name, s[name], value]);
  pairs.push(["humidity_ratio at our wet bulb", s.humidity_ratio, psychrolib.GetHumRatioFromTWetBulb(s.t_c, s.wet_bulb_c, s.p_pa)]);
  for (const [name, ours, value] of pairs) {
    if (name === "wet_bulb_c" && (twoBulbs(value) || twoBulbs(ours))) {
      ++skipped;
      continue;
    }
    ++compared;
    const absolute = name.endsWith("_c") ? kelvins : name.endsWith("_kj") ? kilojoules : null;
    const difference = absolute ? Math.abs(ours - value) : Math.abs(ours / value - 1);
    worst[name] = Math.max(worst[name] ?? 0, difference);
    if (!(difference <= (absolute ?? share(s)))) {
      if (++failures <= 20) console.log(`${name}: ours ${ours}, the peer's ${value}, at ${row}`);
    }
  }
}
console.log(`${rows.length} states, ${compared} values compared, ${skipped} wet bulbs near 0 °C checked by their humidity ratio alone, ${failures} differ; largest`, worst);
process.exit(failures === 0 && rows.length === 10000 && skipped < 500 ? 0 : 1);
