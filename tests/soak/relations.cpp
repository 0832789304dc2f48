#include <fmt/format.h>

#include <algorithm>
#include <charconv>
#include <cmath>
#include <cstdlib>
#include <regex>
#include <set>

#include "tests/soak/probes.h"
#include "tests/soak/when.h"

namespace coatday::soak {
namespace {

using nlohmann::json;
using Found = std::optional<Complaint>;

Complaint complain(const std::string& kind, const Planned& second, const std::string& what) {
  return {kind, what, typed(second.run.arguments)};
}

/// What is wrong with either run by itself comes before how they agree.
Found unsound(const Planned& first, const Planned& second) { return first.complaint ? first.complaint : second.complaint; }

bool ended_well(const Planned& one) { return one.run.status == 0 || one.run.status == 1; }

/// Start, end and kind of every event, in whatever order they are listed.
std::multiset<std::string> times_of(const json& plan, std::chrono::seconds later = std::chrono::seconds(0)) {
  std::multiset<std::string> times;
  for (const json& event : plan.value("events", json::array())) {
    const auto start = instant_of(event.value("start", "")), end = instant_of(event.value("end", ""));
    if (start && end)
      times.insert(
          fmt::format("{} {} {}", date::format("%FT%T", *start + later), date::format("%FT%T", *end + later), event.value("kind", "")));
  }
  return times;
}

std::string difference(const std::multiset<std::string>& a, const std::multiset<std::string>& b) {
  std::vector<std::string> only;
  std::set_difference(a.begin(), a.end(), b.begin(), b.end(), std::back_inserter(only));
  return only.empty() ? fmt::format("{} events against {}", a.size(), b.size()) : "only in the first: " + only.front();
}

/// Both plans are the same, the second so much later.
Found same_times(const std::string& kind, const Planned& first, const Planned& second,
                 std::chrono::seconds later = std::chrono::seconds(0)) {
  if (auto found = unsound(first, second)) return found;
  if (!ended_well(first) || !ended_well(second)) {
    if (first.run.status == second.run.status) return std::nullopt;
    return complain(kind, second,
                    fmt::format("exit {} against {}: {}", first.run.status, second.run.status, second.run.err.substr(0, 200)));
  }
  if (first.status() != second.status()) return complain(kind, second, first.status() + " against " + second.status());
  const auto before = times_of(first.json, later), after = times_of(second.json);
  if (before == after) return std::nullopt;
  return complain(kind, second, difference(before, after));
}

/// "38 mm" as "3.8 cm", "0.038 m" stands for the same length.
std::string in_other_unit(const std::string& words) {
  static const std::regex whole("^(\\d+) mm$");
  std::smatch match;
  if (!std::regex_match(words, match, whole)) return words;
  const int mm = std::stoi(match[1]);
  return mm % 2 == 0 ? fmt::format("{}.{} cm", mm / 10, mm % 10) : fmt::format("{}.{:03} m", mm / 1000, mm % 1000);
}

Found other_units(const Case& one, Bench& bench) {
  Case other = one;
  for (auto& [name, file] : other.trees) each(file, [](Tree& value) { value.text = in_other_unit(value.text); });
  if (other == one) return std::nullopt;
  const Planned first = plan(bench, one);
  return same_times("units-matter", first, plan(bench, other));
}

/// Parts, pieces and orders get other names, which sort the other way round.
Found other_names(const Case& one, Bench& bench) {
  Case other = one;
  int number = 900;
  std::map<std::string, std::string> names;
  for (const auto& [name, file] : one.trees) {
    each(file, [&](const Tree& value) {
      if (value.key == "part" || value.key == "piece" || value.key == "order")
        names.emplace(value.text, fmt::format("so named {}", number--));
    });
  }
  for (auto& [name, file] : other.trees) {
    each(file, [&](Tree& value) {
      const auto known = names.find(value.text);
      if (known == names.end()) return;
      if (value.key == "part" || value.key == "piece" || value.key == "order" || value.key.empty()) value.text = known->second;
    });
  }
  const Planned first = plan(bench, one);
  return same_times("names-matter", first, plan(bench, other));
}

Found parts_turned_round(const Case& one, Bench& bench) {
  Case other = one;
  for (auto& [name, file] : other.trees) {
    each(file, [](Tree& value) {
      if (value.key == "parts" && value.kind == Tree::Kind::list) std::reverse(value.children.begin(), value.children.end());
    });
  }
  if (other == one) return std::nullopt;
  const Planned first = plan(bench, one), second = plan(bench, other);
  if (auto found = unsound(first, second)) return found;
  if (first.status() != second.status()) return complain("order-of-parts-matters", second, first.status() + " against " + second.status());
  const bool same = first.status() != "planned" || first.result("ready_safe") == second.result("ready_safe");
  ++bench.counts.notes[same ? "parts in another order: the same end" : "parts in another order: another end"];
  return std::nullopt;
}

/// Air that knows no season, in a zone that does not turn its clocks.
bool knows_no_season(const Case& one) {
  static const std::set<std::string> zones{"Asia/Kolkata", "Asia/Kathmandu", "UTC", "America/Phoenix", "Pacific/Kiritimati"};
  const auto shop = one.trees.find("shop.yaml");
  if (shop == one.trees.end()) return false;
  const Tree* zone = find(shop->second, "time zone");
  const Tree* air = find(shop->second, "air");
  return zone != nullptr && zones.contains(zone->text) && air != nullptr && find(*air, "outdoors") == nullptr &&
         find(*air, "log") == nullptr;
}

std::string week_later(const std::string& words) {
  static const std::regex day("\\d{4}-\\d{2}-\\d{2}");
  std::string later;
  auto rest = words.cbegin();
  for (std::sregex_iterator at(words.begin(), words.end(), day), end; at != end; ++at) {
    later.append(rest, words.cbegin() + at->position());
    const auto when = when_of(at->str());
    later += when ? day_of(*when + date::days(7)) : at->str();
    rest = words.cbegin() + at->position() + at->length();
  }
  return later.append(rest, words.cend());
}

Found a_week_later(const Case& one, Bench& bench) {
  if (!knows_no_season(one)) return std::nullopt;
  Case other = one;
  other.from = week_later(one.from);
  for (auto& [name, file] : other.trees) each(file, [](Tree& value) { value.text = week_later(value.text); });
  const Planned first = plan(bench, one);
  return same_times("week-matters", first, plan(bench, other), date::days(7));
}

/// Safe readiness, and the moment before which nothing can be ready as far as is proven.
struct Span {
  date::sys_seconds ready, bound;
};

std::optional<Span> span_of(const Planned& one) {
  if (one.status() != "planned") return std::nullopt;
  const json safe = one.result("ready_safe"), could = one.result("could_end_sooner_h");
  if (!safe.is_string() || !could.is_number()) return std::nullopt;
  const auto ready = instant_of(safe.get<std::string>());
  if (!ready) return std::nullopt;
  const auto sooner = std::chrono::seconds(static_cast<long>(std::ceil(could.get<double>() * 3600)));
  return Span{*ready, *ready - sooner};
}

using Change = std::function<bool(Case&)>;

/// The bound speaks of the end alone where nothing is promised.
void promise_nothing(Case& one) {
  for (auto& [name, file] : one.trees) {
    each(file, [](Tree& value) {
      remove(value, "promised");
      remove(value, "importance");
    });
  }
}

/// A poorer shop has no plan that the richer one is proven not to have.
Found not_better(const std::string& name, const Case& one, Bench& bench, const Change& make_poorer) {
  Case rich = one;
  promise_nothing(rich);
  Case poor = rich;
  if (!make_poorer(poor)) return std::nullopt;
  const Planned richer = plan(bench, rich), poorer = plan(bench, poor);
  if (auto found = unsound(richer, poorer)) return found;
  if (richer.status() == "impossible" && poorer.status() == "planned")
    return complain("false-refusal-" + name, richer,
                    "called impossible, but a poorer shop has a plan: " + poorer.result("ready_safe").dump());
  const auto known = span_of(richer), got = span_of(poorer);
  if (!known || !got || known->bound <= got->ready + std::chrono::minutes(1)) return std::nullopt;
  return complain("false-bound-" + name, poorer,
                  date::format("nothing ready before %F %T, said the richer shop; ", known->bound) +
                      date::format("the poorer one is ready %F %T", got->ready));
}

bool one_fewer(Tree* count) {
  int number = 0;
  if (count == nullptr || std::from_chars(count->text.data(), count->text.data() + count->text.size(), number).ec != std::errc() ||
      number < 2)
    return false;
  count->text = std::to_string(number - 1);
  return true;
}

bool one_place_fewer(Case& one) {
  Tree* places = find(one.trees.at("shop.yaml"), "drying places");
  if (places == nullptr) return false;
  return std::any_of(places->children.begin(), places->children.end(), [](Tree& place) { return one_fewer(find(place, "count")); });
}

bool one_person_fewer(Case& one) { return one_fewer(find(one.trees.at("shop.yaml"), "people")); }

bool one_holiday_more(Case& one) {
  const auto from = when_of(one.from);
  Tree& shop = one.trees.at("shop.yaml");
  if (!from) return false;
  if (find(shop, "closed") == nullptr) set(shop, "closed", list());
  find(shop, "closed")->children.push_back(text(day_of(*from + date::days(3))));
  return true;
}

Found places(const Case& one, Bench& bench) { return not_better("places", one, bench, one_place_fewer); }
Found people(const Case& one, Bench& bench) { return not_better("people", one, bench, one_person_fewer); }
Found holiday(const Case& one, Bench& bench) { return not_better("holiday", one, bench, one_holiday_more); }

/// Three times as many places, long hours every day, and no promise: what is impossible even so has another reason.
Found relaxed(const Case& one, Bench& bench) {
  if (plan(bench, one).status() != "impossible") return std::nullopt;
  Case rich = one;
  promise_nothing(rich);
  Tree& shop = rich.trees.at("shop.yaml");
  set(set(shop, "hours", map()), "mon-sun", "06:00-22:00");
  remove(shop, "closed");
  for (Tree& place : find(shop, "drying places")->children) {
    const Tree* count = find(place, "count");
    set(place, "count", std::to_string(3 * std::atoi(count == nullptr ? "1" : count->text.c_str())));
  }
  const std::string status = plan(bench, rich).status();
  ++bench.counts.notes["impossible; with three times the places, long hours and no promise: " + (status.empty() ? "refused" : status)];
  return std::nullopt;
}

/// What is possible for many is possible for fewer. Here the smaller order is the richer case.
Found smaller_count(const Case& one, Bench& bench) {
  Case fewer = one;
  bool changed = false;
  for (const std::string& name : fewer.orders) {
    each(fewer.trees.at(name), [&changed](Tree& value) {
      if (value.key == "count" && !changed) changed = one_fewer(&value);
    });
  }
  if (!changed) return std::nullopt;
  const Planned many = plan(bench, one), few = plan(bench, fewer);
  if (auto found = unsound(many, few)) return found;
  if (many.status() != "planned" || few.status() != "impossible") return std::nullopt;
  return complain("false-refusal-count", few, "one part fewer is called impossible");
}

/// Pieces that can be planned alone can be planned one after another, unless hours are fixed for them.
Found each_alone(const Case& one, Bench& bench) {
  const Planned together = plan(bench, one);
  if (together.status() != "impossible") return std::nullopt;
  bool bound = false;
  for (const auto& [name, file] : one.trees) {
    each(file, [&bound](const Tree& value) {
      bound = bound || ((value.key == "start" || value.key == "not after") && !value.text.empty() && value.kind == Tree::Kind::text);
    });
  }
  int alone = 0;
  for (const std::string& name : one.orders) {
    const Tree* pieces = find(one.trees.at(name), "pieces");
    for (std::size_t i = 0; pieces != nullptr && i < pieces->children.size(); ++i, ++alone) {
      Case single = one;
      single.orders = {name};
      find(single.trees.at(name), "pieces")->children = {pieces->children[i]};
      if (plan(bench, single).status() != "planned") return std::nullopt;
    }
  }
  ++bench.counts.notes["impossible together, possible piece by piece"];
  if (alone < 2 || bound) return std::nullopt;
  return complain("false-refusal-together", together,
                  fmt::format("{} pieces can be planned each by itself, together they are called impossible", alone));
}

/// What the advice says is set, and gives a plan that is ready no later than told.
Found as_told(const Case& one, Bench& bench, const json& advice) {
  if (advice.value("set", json::array()).empty() || !advice.value("ready_safe", json()).is_string()) return std::nullopt;
  std::vector<std::string> more{"--format", "json"};
  for (const json& key : advice.at("set")) more.insert(more.end(), {"--set", key.get<std::string>()});
  const Run run = bench.run(one, with_orders("what-if", one, more));
  if (auto found = complaint_of(run)) return found;
  ++bench.counts.notes["advice carried out"];
  const json after = json::parse(run.out, nullptr, false).value("after", json::object()).value("result", json::object());
  if (after.value("search_cut_off", false)) return std::nullopt;
  const std::string told = advice.at("ready_safe"), ready = after.value("ready_safe", json()).is_string() ? after.at("ready_safe") : "";
  const auto at = instant_of(ready), latest = instant_of(told);
  if (at && latest && *at <= *latest) return std::nullopt;
  return Complaint{"advice-fails", "told ready " + told + ", with these keys " + (at ? ready : "no plan; ") + run.err.substr(0, 200),
                   typed(run.arguments)};
}

Found advice(const Case& one, Bench& bench) {
  const Planned planned = plan(bench, one);
  if (planned.complaint || planned.run.status == 2) return planned.complaint;
  const json help = planned.result("proposals");
  const json quicker = planned.json.value("advice", json::object()).value("suggestions", json::array());
  for (const json* list : {&help, &quicker}) {
    for (const json& change : *list) {
      if (auto found = as_told(one, bench, change)) return found;
    }
  }
  return std::nullopt;
}

}  // namespace

const std::vector<Relation>& relations() {
  static const std::vector<Relation> all{
      {"other units", other_units},     {"other names", other_names},       {"parts in another order", parts_turned_round},
      {"a week later", a_week_later},   {"fewer places", places},           {"fewer people", people},
      {"a holiday more", holiday},      {"a smaller count", smaller_count}, {"more of everything", relaxed},
      {"each piece alone", each_alone}, {"advice as keys", advice}};
  return all;
}

}  // namespace coatday::soak
