#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <set>
#include <tuple>

#include <fmt/core.h>

#include "job/place_support.h"
#include "job/time_step.h"
#include "job/turning.h"
#include "piece/heat.h"
#include "planner/tasks/effort.h"
#include "planner/tasks/loads.h"
#include "planner/tasks/vapour.h"

namespace coatday::planner {

namespace {

constexpr double rounding = 1e-6;

int stretch(const shop::DryingPlace& place, const shop::Packing& packing, Metres gap) {
  const int whole = steps_of(place, gap), places = static_cast<int>(packing.places.size());
  if (places > 1 || packing.used == Metres(0)) return places * whole;
  return std::min(whole, static_cast<int>(std::ceil(packing.used / stretch_step - rounding)));
}

}  // namespace

int steps_of(const shop::DryingPlace& place, Metres gap) {
  if (!place.length || place.kind == shop::PlaceKind::hooks) return 1;
  constexpr double most = 10'000;  // 100 m; what lies beyond is not shared
  return std::max(1, static_cast<int>(std::min(most, (*place.length + gap) / stretch_step + rounding)));
}

std::vector<job::LoadItems> recorded_loads(const job::Job& job, const std::string& piece) {
  std::set<std::string> ids;
  for (const job::Done& done : job.order.history) {
    const auto id = job::parse_step_id(done.event);
    if (id && id->piece == piece && !id->load.empty()) ids.insert(id->load);
  }
  std::vector<job::LoadItems> loads;
  for (const std::string& id : ids) loads.push_back(job::items_of(id));
  return loads;
}

namespace {

/// Items of one part that want to travel together.
struct Batch {
  std::size_t part = 0;
  int first = 0;
  int count = 0;
};

class Gatherer {
 public:
  Gatherer(const job::Job& job, Batching batching) : job_(job), batching_(batching), longest_shift_(longest_shift(job.shop)) {}

  Loads run() {
    for (const shop::DryingPlace& place : job_.shop.places) out_.places.push_back(shared(place));
    for (std::size_t p = 0; p < job_.order.pieces.size(); ++p) gather(p);
    name_loads();
    return std::move(out_);
  }

 private:
  /// In the direction in which the order's parts, one by one, take less of it.
  [[nodiscard]] SharedPlace shared(const shop::DryingPlace& place) const {
    if (!place.length || !place.width || place.kind == shop::PlaceKind::hooks) return {place, false};
    shop::DryingPlace turned = place;
    std::swap(turned.length, turned.width);
    double along = 0, across = 0;
    for (const job::OrderPiece& piece : job_.order.pieces) {
      for (const piece::Part& part : piece.piece.parts) {
        const piece::Footprint foot = piece::footprint(part.shape);
        if (!job::suits(part.support, place.kind)) continue;
        along += share(place, foot);
        across += share(turned, foot);
      }
    }
    return across < along ? SharedPlace{turned, true} : SharedPlace{place, false};
  }

  [[nodiscard]] double share(const shop::DryingPlace& place, const piece::Footprint& foot) const {
    const auto packing = shop::pack(place, {{foot.length, foot.width, 1}}, job_.shop.gap);
    return packing ? static_cast<double>(stretch(place, *packing, job_.shop.gap)) / steps_of(place, job_.shop.gap) : 1;
  }

  static Minutes longest_shift(const shop::Shop& shop) {
    Minutes longest{0};
    for (const shop::Shift& shift : shop.week) longest = std::max(longest, job::whole_steps_within(shift.from, shift.until));
    return longest;
  }

  void gather(std::size_t p) {
    const std::vector<piece::Part>& parts = job_.order.pieces[p].piece.parts;
    std::map<std::tuple<std::string, piece::Support>, std::vector<std::size_t>> groups;
    std::vector<std::tuple<std::string, piece::Support>> order;
    for (std::size_t i = 0; i < parts.size(); ++i) {
      const auto key = std::tuple(parts[i].schedule, parts[i].support);
      if (groups[key].empty()) order.push_back(key);
      groups[key].push_back(i);
    }
    for (const auto& key : order) gather_group(p, groups[key]);
  }

  void gather_group(std::size_t p, const std::vector<std::size_t>& parts) {
    const std::vector<piece::Part>& all = job_.order.pieces[p].piece.parts;
    if (batching_ == Batching::whole_part || batching_ == Batching::one_item) {
      for (const std::size_t i : parts) add_load(p, {{i, 0, batching_ == Batching::one_item ? 1 : all[i].count}});
      return;
    }
    for (const auto& [past, items] : by_past(p, parts)) gather_alike(p, items);
  }

  /// Items of which the same loads are recorded, in the order of the parts.
  [[nodiscard]] std::vector<std::pair<std::set<std::size_t>, std::vector<Batch>>> by_past(std::size_t p,
                                                                                          const std::vector<std::size_t>& parts) const {
    std::vector<std::pair<std::set<std::size_t>, std::vector<Batch>>> classes;
    const std::vector<job::LoadItems> recorded = recorded_loads(job_, job_.order.pieces[p].piece.id);
    const auto add = [&](const std::set<std::size_t>& past, const Batch& batch) {
      const auto at = std::find_if(classes.begin(), classes.end(), [&](const auto& one) { return one.first == past; });
      (at == classes.end() ? classes.emplace_back(past, std::vector<Batch>{}) : *at).second.push_back(batch);
    };
    for (const std::size_t i : parts) {
      const piece::Part& part = job_.order.pieces[p].piece.parts[i];
      for (int first = 0; first < part.count;) {
        const auto [past, until] = past_of(recorded, part, first);
        add(past, {i, first, until - first});
        first = until;
      }
    }
    return classes;
  }

  /// The recorded loads that an item was in, and the item before which that changes.
  [[nodiscard]] static std::pair<std::set<std::size_t>, int> past_of(const std::vector<job::LoadItems>& recorded, const piece::Part& part,
                                                                     int item) {
    std::set<std::size_t> in;
    int until = part.count;
    for (std::size_t r = 0; r < recorded.size(); ++r) {
      for (const job::ItemRange& range : recorded[r]) {
        if (range.part != part.id || range.last <= item) continue;
        if (range.first <= item + 1) in.insert(r);
        until = std::min(until, range.first <= item + 1 ? range.last : range.first - 1);
      }
    }
    return {std::move(in), until};
  }

  void gather_alike(std::size_t p, const std::vector<Batch>& items) {
    std::vector<Batch> open;
    for (const Batch& of_part : items) {
      for (const Batch& batch : batches(p, of_part)) {
        open.push_back(batch);
        if (open.size() > 1 && (batching_ != Batching::fit || !fits_together(p, open))) {
          open.pop_back();
          add_load(p, open);
          open = {batch};
        }
      }
    }
    if (!open.empty()) add_load(p, open);
  }

  /// One part's items in the fewest equal batches that fit.
  std::vector<Batch> batches(std::size_t p, const Batch& items) const {
    const std::size_t part = items.part;
    const int count = items.count;
    int too_few = 0, pieces = count;  // batches; a smaller batch fits wherever a larger one does
    for (int tried = 1; pieces - too_few > 1; tried = too_few + (pieces - too_few) / 2) {
      (fits_together(p, {{part, 0, (count + tried - 1) / tried}}) ? pieces : too_few) = tried;
    }
    if (batching_ == Batching::half) pieces = std::min(count, 2 * pieces);
    std::vector<Batch> result;
    for (int k = 0, first = items.first; k < pieces; ++k) {
      const int size = count / pieces + (k < count % pieces ? 1 : 0);
      result.push_back({part, first, size});
      first += size;
    }
    return result;
  }

  std::vector<PlaceChoice> choices(std::size_t p, const std::vector<Batch>& batches) const {
    const std::vector<piece::Part>& parts = job_.order.pieces[p].piece.parts;
    const piece::Support support = parts[batches.front().part].support;
    std::vector<shop::Item> items;
    for (const Batch& batch : batches) {
      const piece::Footprint foot = piece::footprint(parts[batch.part].shape);
      items.push_back({foot.length, foot.width, batch.count});
    }
    std::vector<PlaceChoice> result;
    for (std::size_t place = 0; place < out_.places.size(); ++place) {
      const shop::DryingPlace& here = out_.places[place].place;
      if (!job::suits(support, here.kind)) continue;
      if (auto packing = shop::pack(here, items, job_.shop.gap)) {
        const int steps = stretch(here, *packing, job_.shop.gap);
        result.push_back({place, std::move(*packing), steps});
      }
    }
    return result;
  }

  bool fits_together(std::size_t p, const std::vector<Batch>& batches) const {
    return !choices(p, batches).empty() && longest_coat(p, batches) <= longest_shift_ && longest_dry(p, batches) <= longest_shift_;
  }

  /// The longest of what else nobody interrupts: turning, carrying in, heat.
  Minutes longest_dry(std::size_t p, const std::vector<Batch>& batches) const {
    const std::vector<piece::Part>& parts = job_.order.pieces[p].piece.parts;
    int items = 0, carried = 0;
    SquareMetres area;
    Hours turning{0};
    for (const Batch& batch : batches) {
      items += batch.count;
      turning += job::turning_time(parts[batch.part], job_.shop) * batch.count;
      carried += parts[batch.part].kept_at || !parts[batch.part].solid.readings.empty() ? batch.count : 0;
      for (const piece::PartFace& face : piece::faces_of(parts[batch.part])) area += face.coated * batch.count;
    }
    const bool turned = parts[batches.front().part].support != piece::Support::hooks;
    Minutes longest =
        std::max(turned ? job::in_whole_steps(turning) : Minutes{0}, job::in_whole_steps(Hours(job_.shop.handling) * carried));
    if (const finish::Schedule* schedule = job_.catalogue.schedule(parts[batches.front().part].schedule)) {
      for (const finish::Step& step : schedule->steps) {
        const bool in_one_go = !step.product && (step.hot || !step.bake.empty());
        if (in_one_go) longest = std::max(longest, dry_effort(step, area, items, job_.shop).hands_on);
      }
    }
    return longest;
  }

  /// The longest pass of any coat, with set-up and clean-up.
  Minutes longest_coat(std::size_t p, const std::vector<Batch>& batches) const {
    const std::vector<piece::Part>& parts = job_.order.pieces[p].piece.parts;
    const finish::Schedule* schedule = job_.catalogue.schedule(parts[batches.front().part].schedule);
    if (schedule == nullptr) return Minutes{0};
    const bool hung = parts[batches.front().part].support == piece::Support::hooks;
    std::array<SquareMetres, 2> areas;  // of the first pass, and the second
    std::array<std::vector<finish::Surface>, 2> surfaces;
    int items = 0;
    for (const Batch& batch : batches) {
      items += batch.count;
      for (const piece::PartFace& face : piece::faces_of(parts[batch.part])) {
        const std::size_t pass = hung || face.face.pass == piece::Pass::second ? 1 : 0;
        areas[pass] += face.coated * batch.count;
        surfaces[pass].push_back({face.coated * batch.count, face.face.end_grain, true});
      }
    }
    Minutes longest{0};
    for (const finish::Step& step : schedule->steps) {
      const finish::Product* product = step.product ? job_.catalogue.product(*step.product) : nullptr;
      const auto method = product != nullptr ? method_of(step, *product, job_.shop) : std::nullopt;
      if (!method) continue;
      for (const std::size_t pass : {std::size_t{0}, std::size_t{1}}) {
        const Litres most = finish::need(step, *product, *method, surfaces[pass]);
        auto vapour = vapour_of(*product, most, product->thinner_share + step.thinner_share, job_.shop.ventilation);
        const Effort effort = vented_effort(vapour, *product, *method, areas[pass], items, job_.shop, as_recorded(*product));
        longest = std::max(longest, effort.hands_on + effort.set_up + effort.clean_up);
      }
    }
    return longest;
  }

  void add_load(std::size_t p, const std::vector<Batch>& batches) {
    const piece::Piece& piece = job_.order.pieces[p].piece;
    Load load;
    load.piece = p;
    const piece::Part& model = piece.parts[batches.front().part];
    load.schedule = job_.catalogue.schedule(model.schedule);
    load.support = model.support;
    load.choices = choices(p, batches);
    for (const Batch& batch : batches) add_part(load, piece.parts[batch.part], batch);
    std::vector<bool> only_item;
    for (const Batch& batch : batches) {
      load.holds.push_back({piece.parts[batch.part].id, batch.first + 1, batch.first + batch.count});
      only_item.push_back(piece.parts[batch.part].count == 1);
    }
    load.id = job::load_id(load.holds, only_item);
    out_.loads.push_back(std::move(load));
  }

  static std::string label(const piece::Part& part, const Batch& batch) {
    if (part.count == 1) return part.name;
    if (batch.count == part.count) return fmt::format("{} x{}", part.name, part.count);
    if (batch.count == 1) return fmt::format("{} {}", part.name, batch.first + 1);
    return fmt::format("{} {}-{}", part.name, batch.first + 1, batch.first + batch.count);
  }

  void add_part(Load& load, const piece::Part& part, const Batch& batch) {
    LoadPart entry{batch.part, batch.first, batch.count, label(part, batch)};
    load.label += (load.label.empty() ? "" : ", ") + entry.label;
    load.items += batch.count;
    load.turning_people = std::max(load.turning_people, job::turning_people(part, job_.shop));
    const Hours body = piece::time_constant(part);
    const auto at = std::lower_bound(load.bodies.begin(), load.bodies.end(), body);
    if (at == load.bodies.end() || *at != body) load.bodies.insert(at, body);
    const std::size_t begin = out_.faces.size();
    for (const piece::PartFace& face : piece::faces_of(part)) {
      job::FaceEntry row;
      row.piece = load.piece;
      row.part = entry.label;
      row.part_id = part.id;
      row.face = face.face.name;
      const job::LoadItems items{{part.id, batch.first + 1, batch.first + batch.count}};
      row.id =
          fmt::format("{}/{}/{}", job_.order.pieces[load.piece].piece.id, job::load_id(items, {batch.count == part.count}), face.face.name);
      row.material = part.species.value_or("steel");
      row.wood = part.wood();
      row.area = face.coated * batch.count;
      row.end_grain = face.face.end_grain;
      row.exception = face.exception;
      load.faces.push_back(out_.faces.size());
      out_.faces.push_back(std::move(row));
      out_.shapes.push_back(face.face);
    }
    link_opposites(begin);
    load.parts.push_back(std::move(entry));
  }

  /// A load is named with its piece where another piece has a part of the same name.
  void name_loads() {
    std::map<std::string, std::set<std::size_t>> pieces;  // by the name of a part
    const auto name = [this](const Load& load, const LoadPart& p) { return job_.order.pieces[load.piece].piece.parts[p.part].name; };
    for (const Load& load : out_.loads) {
      for (const LoadPart& part : load.parts) pieces[name(load, part)].insert(load.piece);
    }
    for (Load& load : out_.loads) {
      const bool elsewhere =
          std::any_of(load.parts.begin(), load.parts.end(), [&](const LoadPart& p) { return pieces[name(load, p)].size() > 1; });
      load.load_name = elsewhere ? job_.order.pieces[load.piece].piece.name + " / " + load.label : load.label;
    }
  }

  void link_opposites(std::size_t begin) {
    for (std::size_t a = begin; a < out_.faces.size(); ++a) {
      for (std::size_t b = begin; b < out_.faces.size(); ++b) {
        if (out_.shapes[a].opposite == out_.shapes[b].name) out_.faces[a].opposite = b;
      }
    }
  }

  const job::Job& job_;
  Batching batching_;
  Minutes longest_shift_;
  Loads out_;
};

}  // namespace

Loads make_loads(const job::Job& job, Batching batching) { return Gatherer(job, batching).run(); }

}  // namespace coatday::planner
