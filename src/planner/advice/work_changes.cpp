#include "planner/advice/work_changes.h"

#include <algorithm>
#include <array>

#include <fmt/core.h>

namespace coatday::planner {

namespace {

/// Of a week from then on.
Hours longest_stretch(const shop::Shop& shop, Instant from) {
  Hours longest(0);
  for (const shop::WorkingTime& time : shop::working_time(shop, from, from + date::days(8))) {
    longest = std::max(longest, Hours(time.end - time.begin));
  }
  return longest;
}

/// Other work of the shop and of all pieces that is too long for that, with its keys.
void each_longer(job::Job& job, Hours stretch, const std::function<void(shop::Work&, const std::string& key)>& use) {
  const auto ask = [&](shop::Work& work, const std::string& key) {
    if (!work.may_pause && work.takes > stretch) use(work, key + ".may pause=yes");
  };
  for (std::size_t w = 0; w < job.shop.work.size(); ++w) ask(job.shop.work[w], fmt::format("work.{}", w + 1));
  for (std::size_t p = 0; p < job.order.pieces.size(); ++p) {
    std::vector<job::OrderWork>& all = job.order.pieces[p].work;
    for (std::size_t w = 0; w < all.size(); ++w) ask(all[w].work, fmt::format("{}.work.{}", path_of_piece(job, p), w + 1));
  }
}

}  // namespace

ChangeSizes pauses(const job::Job& job, Instant from) {
  const Hours stretch = longest_stretch(job.shop, from);
  job::Job tried = job;
  std::vector<std::string> names, keys;
  each_longer(tried, stretch, [&](const shop::Work& work, const std::string& key) {
    names.push_back(work.name);
    keys.push_back(key);
  });
  if (names.empty()) return {};
  return {change([stretch](job::Job& other,
                           Instant&) { each_longer(other, stretch, [](shop::Work& work, const std::string&) { work.may_pause = true; }); },
                 fmt::format("{} {} over breaks and nights (may pause: yes)", names_of(names), names.size() == 1 ? "rests" : "rest"),
                 keys)};
}

namespace {

bool could_begin_when_handled(const job::OrderWork& work) {
  return work.when == job::OrderWork::When::after_finishing && !work.delivery && work.stage > finish::Stage::recoat_close;
}

}  // namespace

ChangeSizes work_when_handled(const job::Job& job) {
  std::vector<std::string> names, keys;
  for (std::size_t p = 0; p < job.order.pieces.size(); ++p) {
    const std::vector<job::OrderWork>& all = job.order.pieces[p].work;
    for (std::size_t w = 0; w < all.size(); ++w) {
      if (!could_begin_when_handled(all[w])) continue;
      names.push_back(all[w].work.name);
      keys.push_back(fmt::format("{}.work.{}.stage=handle", path_of_piece(job, p), w + 1));
    }
  }
  if (names.empty()) return {};
  ChangeSizes sizes{change(
      [](job::Job& other, Instant&) {
        for (job::OrderPiece& piece : other.order.pieces) {
          for (job::OrderWork& work : piece.work) {
            if (could_begin_when_handled(work)) work.stage = finish::Stage::handle;
          }
        }
      },
      fmt::format("{} as soon as the parts are dry to handle (stage: handle)", names_of(names)), keys)};
  sizes.front().caution = "the film still takes marks then";
  return sizes;
}

namespace {

shop::Work& work_at(job::Job& job, std::size_t piece, std::size_t work) { return job.order.pieces[piece].work[work].work; }

Change put_off(const job::Job& job, std::size_t p, std::size_t w, int by) {
  const shop::Work& work = job.order.pieces[p].work[w].work;
  const Zone& zone = job.shop.zone;
  const auto later = [&](Instant t) { return zone.to_instant(zone.to_local(t) + date::days(by)); };
  const std::string path = fmt::format("{}.work.{}.", path_of_piece(job, p), w + 1);
  if (work.start) {
    const Instant start = later(*work.start);
    return change([p, w, start](job::Job& other, Instant&) { work_at(other, p, w).start = start; },
                  fmt::format("{} on {}", work.name, day_and_time(zone.to_local(start))), {path + "start=" + day_and_hour(start, zone)});
  }
  const Instant latest = later(*work.not_after);
  return change([p, w, latest](job::Job& other, Instant&) { work_at(other, p, w).not_after = latest; },
                fmt::format("{} over by {}", work.name, day_and_time(zone.to_local(latest))),
                {path + "not after=" + day_and_hour(latest, zone)});
}

Change together(const std::vector<Change>& changes) {
  std::string words;
  std::vector<std::string> keys;
  for (const Change& one : changes) {
    words += (words.empty() ? "" : ", ") + one.text(job::Plan());
    keys.insert(keys.end(), one.set.begin(), one.set.end());
  }
  return change(
      [changes](job::Job& job, Instant& from) {
        for (const Change& one : changes) one.make(job, from);
      },
      words, keys);
}

constexpr std::array days_later{1, 2, 4, 7, 14, 28};

}  // namespace

std::vector<ChangeSizes> later_work(const job::Job& job) {
  std::vector<ChangeSizes> kinds;
  for (std::size_t p = 0; p < job.order.pieces.size(); ++p) {
    for (std::size_t w = 0; w < job.order.pieces[p].work.size(); ++w) {
      const shop::Work& work = job.order.pieces[p].work[w].work;
      if (!work.start && !work.not_after) continue;
      ChangeSizes& sizes = kinds.emplace_back();
      for (const int days : days_later) sizes.push_back(put_off(job, p, w, days));
    }
  }
  if (kinds.size() < 2) return kinds;
  ChangeSizes all;
  for (std::size_t i = 0; i < days_later.size(); ++i) {
    std::vector<Change> changes;
    for (const ChangeSizes& sizes : kinds) changes.push_back(sizes[i]);
    all.push_back(together(changes));
  }
  kinds.push_back(std::move(all));
  return kinds;
}

}  // namespace coatday::planner
