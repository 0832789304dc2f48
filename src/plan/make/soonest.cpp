#include "plan/make/soonest.h"

#include <algorithm>

namespace coatday::plan {

namespace {

using solver::Tag;
using solver::Time;

std::vector<Tag> only_later(const Model& model, const std::vector<Tag>& tags) {
  std::vector<Tag> result;
  for (const Tag tag : tags) {
    const Requirement::Kind kind = tag < 0 ? Requirement::Kind::before : model.requirements[static_cast<std::size_t>(tag)].kind;
    if (kind == Requirement::Kind::after || kind == Requirement::Kind::calendar) result.push_back(tag);
  }
  return result;
}

}  // namespace

Soonest::Soonest(const Model& model, const std::vector<Tag>& tags)
    : model_(model), tags_(only_later(model, tags)), network_(model.problem), bounds_(network_, tags_), sound_(bounds_.propagate()) {}

std::optional<Time> Soonest::sensible(Time t) const {
  if (!sound_ || t <= model_.problem.origin || t >= model_.problem.horizon) return std::nullopt;
  return t;
}

std::optional<Time> Soonest::value(const solver::Point& from, const solver::Function& bound) const {
  const Time point = from.edge == solver::Edge::end ? bounds_.soonest_end(from.activity) : bounds_.earliest(from.activity);
  return sensible(solver::value_of(bound, point));
}

std::optional<Time> Soonest::after(Tag tag) const {
  for (const solver::MinimumLag& lag : model_.problem.minimum_lags) {
    if (lag.tag == tag) return value(lag.from, lag.bound);
  }
  return std::nullopt;
}

std::optional<Time> Soonest::before(Tag tag) const {
  for (const solver::MaximumLag& lag : model_.problem.maximum_lags) {
    if (lag.tag == tag) return value(lag.from, lag.bound);
  }
  return std::nullopt;
}

std::optional<Time> Soonest::released(std::size_t task) const {
  std::optional<Time> latest;
  for (const solver::MinimumLag& lag : model_.problem.minimum_lags) {
    if (lag.to != static_cast<int>(task) || std::find(tags_.begin(), tags_.end(), lag.tag) == tags_.end()) continue;
    const std::optional<Time> t = value(lag.from, lag.bound);
    if (t) latest = std::max(latest.value_or(*t), *t);
  }
  return latest;
}

std::optional<Time> Soonest::start(std::size_t task) const { return sensible(bounds_.earliest(static_cast<int>(task))); }

}  // namespace coatday::plan
