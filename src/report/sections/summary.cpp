#include "report/sections/summary.h"

#include <fmt/format.h>

#include <algorithm>
#include <set>

#include "job/compare.h"
#include "report/sections/air_hours.h"
#include "report/sections/both_faces.h"
#include "report/sections/purchase.h"
#include "report/sections/time_spent.h"
#include "report/sections/verdict.h"

namespace coatday::report {
namespace {

using Fact = Facts::Fact;

Mark mark_of(Hours slack) { return slack.count() < 0 ? Mark::bad : Mark::good; }

bool same_result(const job::PieceResult& a, const job::PieceResult& b) {
  return a.due == b.due && a.ready.expected.deliver == b.ready.expected.deliver && a.ready.slow.deliver == b.ready.slow.deliver &&
         a.slack == b.slack;
}

Phrase delivery(const job::PieceResult& result, bool all_done, Instant now, const Texts& texts) {
  const auto& safe = result.ready.slow.deliver;
  if (all_done && safe && *safe <= now) return "finished; may be delivered since " + Phrase(texts.instant(*safe), Mark::strong);
  if (all_done && safe) return "all is done, and it dries; " + Phrase(texts.instant(*safe), Mark::strong) + ", safe to promise";
  if (!result.ready.slow.deliver) return {"never in this air", Mark::bad};
  return Phrase(texts.instant(*result.ready.slow.deliver), Mark::strong) + ", safe to promise";
}

Phrase promise(const job::PieceResult& result, const Texts& texts) {
  Phrase text = result.due ? "promised " + texts.instant(*result.due) : std::string("nothing promised");
  if (result.slack) text += ": " + Phrase(slack_text(*result.slack), mark_of(*result.slack));
  return result.ready.expected.deliver ? text + "; expected " + texts.instant(*result.ready.expected.deliver) : text;
}

// Pieces that are ready together stand together.
std::vector<Fact> deliveries(const job::Plan& plan, const Texts& texts) {
  std::vector<Fact> facts;
  std::vector<bool> shown(plan.pieces.size(), false);
  const auto finished = [&plan](std::size_t piece) { return job::is_finished(plan, piece); };
  for (std::size_t i = 0; i < plan.pieces.size(); ++i) {
    if (shown[i]) continue;
    std::vector<std::string> names;
    for (std::size_t j = i; j < plan.pieces.size(); ++j) {
      if (shown[j] || !same_result(plan.pieces[i], plan.pieces[j]) || finished(i) != finished(j)) continue;
      shown[j] = true;
      names.push_back(plan.pieces[j].name);
    }
    const Phrase who = names.size() == plan.pieces.size() ? "" : listed(names) + ": ";
    facts.push_back({i == 0 ? "deliver" : "", who + delivery(plan.pieces[i], finished(i), plan.from, texts)});
    facts.push_back({"", promise(plan.pieces[i], texts)});
  }
  return facts;
}

/// What must be bought, and for how much; either may be empty.
struct Shopping {
  std::string cans, cost;
};

Shopping shopping(const job::Plan& plan, const Texts& texts) {
  std::vector<std::string> items;
  for (const job::Purchase& row : plan.purchase) {
    if (!row.buy.empty()) items.push_back(cans_text(row.buy, texts.units) + " " + purchase_name(plan, row));
  }
  const auto [sum, unpriced] = job::cost_of(plan);
  const std::string total = sum.value() > 0 ? money_text(sum, plan.shop.currency) : "";
  if (total.empty()) return {listed(items), ""};
  return {listed(items), "about " + total + (unpriced > 0 ? fmt::format(", and {} without a price", unpriced) : "")};
}

Fact buy(const job::Plan& plan, const Texts& texts) {
  const auto [cans, cost] = shopping(plan, texts);
  if (cans.empty()) return {"buy", plan.purchase.empty() ? "nothing" : "nothing: all of it is on the shelf"};
  return {"buy", cans + (cost.empty() ? "" : ": " + cost)};
}

/// How often somebody comes, and for how much work.
Fact work(const job::Plan& plan) {
  std::set<LocalDay> days;
  Minutes sum{0};
  for (const job::Visit& visit : plan.visits) {
    days.insert(day_of(plan.shop.zone.to_local(visit.from)));
    sum += visit.work;
  }
  return {"work", fmt::format("{} on {}, {} h {:02} min in all", counted(plan.visits.size(), "visit", "visits"),
                              counted(days.size(), "day", "days"), sum.count() / 60, sum.count() % 60)};
}

Fact faces(const job::Plan& plan, const char* label, Mark usual) {
  const FaceVerdict faces = both_faces(plan);
  return {label, Phrase(faces.text, faces.equal ? usual : Mark::bad)};
}

// What the shop's ventilation does to the finishes in use; empty where nothing.
std::string room_text(const job::Plan& plan) {
  const shop::Ventilation& room = plan.shop.ventilation;
  const auto any = [&plan](double finish::RateFactors::*clock, bool closed, double movement) {
    return std::any_of(plan.products.begin(), plan.products.end(),
                       [&](const auto& p) { return finish::rate_factors(p.second.mechanism, closed, movement).*clock != 1; });
  };
  std::vector<std::string> words;
  if (room.closed && any(&finish::RateFactors::cure, true, 1))
    words.emplace_back("closed, so that oxidising films go on at half their rate");
  if (room.air_movement != 1 && any(&finish::RateFactors::drying, false, room.air_movement))
    words.push_back(fmt::format("its air moves so that films dry by evaporation {:.3g} times as fast as usual", room.air_movement));
  return words.empty() ? "" : fmt::format("{}: ratios only, judgement", fmt::join(words, "; "));
}

Section only(Media media, Facts facts) {
  Section section;
  section.blocks.emplace_back(std::move(facts));
  section.media = media;
  return section;
}

// The last of all pieces: what the shop has to keep.
const job::PieceResult* last_piece(const job::Plan& plan) {
  const job::PieceResult* last = nullptr;
  for (const job::PieceResult& piece : plan.pieces) {
    if (!piece.ready.slow.deliver) return &piece;
    if (last == nullptr || *piece.ready.slow.deliver > *last->ready.slow.deliver) last = &piece;
  }
  return last;
}

const job::PieceResult* tightest_piece(const job::Plan& plan) {
  const job::PieceResult* tightest = nullptr;
  for (const job::PieceResult& piece : plan.pieces) {
    if (piece.slack && (tightest == nullptr || *piece.slack < *tightest->slack)) tightest = &piece;
  }
  return tightest;
}

std::vector<Fact> delivery_answers(const job::Plan& plan, const Texts& texts) {
  const job::PieceResult* last = last_piece(plan);
  if (last == nullptr) return {};
  const bool several = plan.pieces.size() > 1;
  const char* question = several ? "All ready to deliver" : "Ready to deliver";
  if (!last->ready.slow.deliver) return {{question, Phrase("never in this air", Mark::bad)}};
  std::vector<Fact> answers{
      {question, texts.instant(*last->ready.slow.deliver), "safe to promise; expected " + texts.instant(*last->ready.expected.deliver)}};
  const job::PieceResult* tightest = tightest_piece(plan);
  if (tightest == nullptr) return answers;
  const Phrase of = several ? typed(tightest->name) + ", " : Phrase();
  answers.push_back({"Promised", Phrase(slack_text(*tightest->slack), tightest->slack->count() < 0 ? Mark::bad : Mark::plain),
                     of + texts.instant(*tightest->due)});
  return answers;
}

Facts answers(const job::Plan& plan, const Texts& texts) {
  Facts facts;
  facts.headline = true;
  if (plan.status != job::Status::planned) {
    facts.facts = {{"Plan", Phrase(verdict_text(plan), Mark::bad)}};
    return facts;
  }
  facts.facts = delivery_answers(plan, texts);
  if (!plan.purchase.empty()) {
    const auto [cans, cost] = shopping(plan, texts);
    const char* otherwise = cans.empty() ? "nothing: all of it is on the shelf" : "before the first day";
    facts.facts.push_back({"Buy", cost.empty() ? otherwise : cost, cans});
  }
  if (!plan.faces.empty()) facts.facts.push_back(faces(plan, "Both sides", Mark::plain));
  return facts;
}

// A terminal says first what a page shows large.
Facts first_lines(const job::Plan& plan, const Texts& texts) {
  if (plan.status != job::Status::planned) return {{{"plan", Phrase(verdict_text(plan), Mark::bad)}}};
  Facts facts{deliveries(plan, texts)};
  facts.facts.push_back(buy(plan, texts));
  if (!plan.faces.empty()) facts.facts.push_back(faces(plan, "faces", Mark::plain));
  if (!plan.visits.empty()) facts.facts.push_back(work(plan));
  return facts;
}

Facts grounds(const job::Plan& plan) {
  Facts facts;
  const std::string verdict = verdict_text(plan);
  if (plan.status == job::Status::planned && !verdict.empty())
    facts.facts.push_back({"plan", Phrase(verdict, plan.proven ? Mark::good : Mark::plain)});
  const std::vector<std::string> times = time_spent_texts(plan);
  for (const std::string& text : times) facts.facts.push_back({&text == &times.front() ? "time" : "", text});
  if (!plan.shop.air_description.empty()) facts.facts.push_back({"air", plan.shop.air_description});
  if (const std::string hours = air_hours(plan); !hours.empty()) facts.facts.push_back({"", "hours: " + hours});
  if (const std::string text = room_text(plan); !text.empty()) facts.facts.push_back({"room", text});
  return facts;
}

}  // namespace

std::optional<Section> summary(const job::Plan& plan, const Texts& texts) {
  Section section{"short", "In short"};
  section.title_in = Media::page;
  section.blocks = {only(Media::text, first_lines(plan, texts)), only(Media::page, answers(plan, texts)), grounds(plan)};
  return section;
}

std::string from_text(const job::Plan& plan, const Texts& texts) { return "from " + texts.long_day(plan.from); }

}  // namespace coatday::report
