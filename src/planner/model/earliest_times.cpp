#include "planner/model/earliest_times.h"

#include <algorithm>

namespace coatday::planner {

namespace {

using solver::Tag;
using solver::Time;

bool makes_later(const Model& model, Tag tag) {
  if (tag < 0) return false;
  const Requirement::Kind kind = model.requirements[static_cast<std::size_t>(tag)].kind;
  return kind == Requirement::Kind::after || kind == Requirement::Kind::calendar;
}

std::vector<Tag> all_tags(const Model& model) {
  std::vector<Tag> tags;
  for (std::size_t tag = 0; tag < model.requirements.size(); ++tag) tags.push_back(static_cast<Tag>(tag));
  return tags;
}

std::vector<Tag> only_later(const Model& model, std::vector<Tag> tags) {
  std::erase_if(tags, [&](Tag tag) { return !makes_later(model, tag); });
  return tags;
}

}  // namespace

EarliestTimes::EarliestTimes(const Model& model, const std::vector<Tag>& tags)
    : model_(model), tags_(only_later(model, all_tags(model))), network_(model.problem), bounds_(network_, tags_) {
  if (bounds_.propagate()) return;
  tags_ = only_later(model, tags);
  bounds_ = solver::Bounds(network_, tags_);
  sound_ = bounds_.propagate();
}

std::optional<Time> EarliestTimes::sensible(Time t) const {
  if (!sound_ || t <= model_.problem.origin || t >= model_.problem.horizon) return std::nullopt;
  return t;
}

std::optional<Time> EarliestTimes::value(const solver::Point& from, const solver::Function& bound) const {
  const Time point = from.edge == solver::Edge::end ? bounds_.soonest_end(from.activity) : bounds_.earliest(from.activity);
  return sensible(solver::value_of(bound, point));
}

std::optional<Time> EarliestTimes::after(Tag tag) const {
  for (const solver::MinimumLag& lag : model_.problem.minimum_lags) {
    if (lag.tag == tag) return value(lag.from, lag.bound);
  }
  return std::nullopt;
}

std::optional<Time> EarliestTimes::before(Tag tag) const {
  for (const solver::MaximumLag& lag : model_.problem.maximum_lags) {
    if (lag.tag == tag) return value(lag.from, lag.bound);
  }
  return std::nullopt;
}

std::optional<Time> EarliestTimes::release(std::size_t task) const {
  std::optional<Time> latest;
  for (const solver::MinimumLag& lag : model_.problem.minimum_lags) {
    if (lag.to != static_cast<int>(task) || std::find(tags_.begin(), tags_.end(), lag.tag) == tags_.end()) continue;
    const std::optional<Time> t = value(lag.from, lag.bound);
    if (t) latest = std::max(latest.value_or(*t), *t);
  }
  return latest;
}

std::optional<Time> EarliestTimes::end(std::size_t task) const { return sensible(bounds_.soonest_end(static_cast<int>(task))); }

std::optional<Time> EarliestTimes::start(std::size_t task) const { return sensible(bounds_.earliest(static_cast<int>(task))); }

}  // namespace coatday::planner
