#include "tests/bench/rcpsp_max/instance.h"

#include <algorithm>
#include <charconv>
#include <numeric>

namespace coatday::solver::bench {
namespace {

struct Line {
  int number = 0;
  std::vector<std::string_view> words;
};

std::vector<Line> lines_of(std::string_view text) {
  std::vector<Line> lines;
  for (int number = 1; !text.empty(); ++number) {
    const std::size_t end = std::min(text.find('\n'), text.size());
    std::string_view rest = text.substr(0, end);
    text.remove_prefix(std::min(end + 1, text.size()));
    Line line{number, {}};
    while (true) {
      const std::size_t begin = rest.find_first_not_of(" \t\r");
      if (begin == std::string_view::npos) break;
      const std::size_t length = std::min(rest.find_first_of(" \t\r", begin), rest.size()) - begin;
      line.words.push_back(rest.substr(begin, length));
      rest.remove_prefix(begin + length);
    }
    if (!line.words.empty()) lines.push_back(std::move(line));
  }
  return lines;
}

class Reader {
 public:
  explicit Reader(std::string_view text) : lines_(lines_of(text)) {}

  Instance sch() {
    next_line("the number of activities and resources");
    const int activities = number(0, 0, largest) + 2, resources = number(1, 0, largest);
    if (number(2, 0, largest) != 0 || number(3, 0, largest) != 0) fail("only renewable resources are known");
    for (int a = 0; a < activities; ++a) read_successors(a, activities);
    for (int a = 0; a < activities; ++a) read_demands(a, resources);
    if (resources > 0) read_capacities(resources);
    return std::move(instance_);
  }

  Instance sm() {
    seek("jobs");
    const int activities = last_number();
    seek("-");
    const int resources = number(3, 0, largest);
    seek("PRECEDENCE");
    next_line("the heading");
    std::vector<Arc> precedence;
    for (int a = 0; a < activities; ++a) {
      next_line("the job's successors");
      expect(a + 1);
      const int successors = number(2, 0, activities);
      for (int i = 0; i < successors; ++i) precedence.push_back({a, number(3 + at(i), 1, activities) - 1, 0});
    }
    seek("REQUESTS/DURATIONS:");
    next_line("the heading");
    next_line("the rule");
    for (int a = 0; a < activities; ++a) read_demands(a + 1, resources);
    seek("RESOURCEAVAILABILITIES:");
    next_line("the heading");
    read_capacities(resources);
    for (Arc& arc : precedence) arc.lag = instance_.durations[at(arc.from)];
    instance_.arcs = std::move(precedence);
    return std::move(instance_);
  }

 private:
  static constexpr int largest = 1'000'000;
  static std::size_t at(int i) { return static_cast<std::size_t>(i); }

  [[noreturn]] void fail(std::string what) const { throw BadFile{line_ == nullptr ? 1 : line_->number, std::move(what)}; }

  void next_line(const std::string& wanted) {
    if (next_ == lines_.size()) fail("the file ends before " + wanted);
    line_ = &lines_[next_++];
  }

  void seek(std::string_view first_word) {
    do next_line("'" + std::string(first_word) + "'");
    while (line_->words[0] != first_word);
  }

  int parsed(std::string_view word, int least, int most) const {
    int value = 0;
    const auto [end, error] = std::from_chars(word.data(), word.data() + word.size(), value);
    if (error != std::errc() || end != word.data() + word.size()) fail("'" + std::string(word) + "' is not a whole number");
    if (value < least || value > most) fail("'" + std::string(word) + "' is out of range");
    return value;
  }

  int number(std::size_t word, int least, int most) const {
    if (word >= line_->words.size()) fail("a number is missing");
    return parsed(line_->words[word], least, most);
  }
  int last_number() const { return number(line_->words.size() - 1, 2, largest); }

  void expect(int value) const {
    if (number(0, 0, largest) != value) fail("activity " + std::to_string(value) + " is expected here");
  }

  // activity modes successors s... [lag]...
  void read_successors(int a, int activities) {
    next_line("the activity's successors");
    expect(a);
    if (number(1, 0, largest) != 1) fail("an activity has more than one mode");
    const int successors = number(2, 0, activities * activities);
    if (line_->words.size() != 3 + 2 * at(successors)) fail("so many successors and lags are expected: " + std::to_string(successors));
    for (int i = 0; i < successors; ++i) {
      const int to = number(3 + at(i), 0, activities - 1);
      std::string_view lag = line_->words[3 + at(successors + i)];
      if (lag.size() < 3 || lag.front() != '[' || lag.back() != ']') fail("a lag is not in brackets");
      lag = lag.substr(1, lag.size() - 2);
      instance_.arcs.push_back({a, to, parsed(lag, -largest, largest)});
    }
  }

  // activity mode duration amount...
  void read_demands(int a, int resources) {
    next_line("the activity's duration and demands");
    expect(a);
    if (line_->words.size() != 3 + at(resources)) fail("so many demands are expected: " + std::to_string(resources));
    instance_.durations.push_back(number(2, 0, largest));
    instance_.demands.emplace_back();
    for (int r = 0; r < resources; ++r) instance_.demands.back().push_back(number(3 + at(r), 0, largest));
  }

  void read_capacities(int resources) {
    next_line("the capacities");
    if (line_->words.size() < at(resources)) fail("so many capacities are expected: " + std::to_string(resources));
    for (int r = 0; r < resources; ++r) instance_.capacities.push_back(number(at(r), 0, largest));
  }

  std::vector<Line> lines_;
  std::size_t next_ = 0;
  const Line* line_ = nullptr;
  Instance instance_;
};

// Started one after the other in any order that the lags allow, each activity need wait no longer than the longest that one makes another wait.
Time safe_horizon(const Instance& instance) {
  std::vector<Time> longest = instance.durations;
  for (const Arc& arc : instance.arcs)
    longest[static_cast<std::size_t>(arc.from)] = std::max(longest[static_cast<std::size_t>(arc.from)], arc.lag);
  return std::accumulate(longest.begin(), longest.end(), Time{0});
}

}  // namespace

tl::expected<Instance, BadFile> read_sch(std::string_view text) {
  try {
    return Reader(text).sch();
  } catch (BadFile& bad) {
    return tl::make_unexpected(std::move(bad));
  }
}

tl::expected<Instance, BadFile> read_sm(std::string_view text) {
  try {
    return Reader(text).sm();
  } catch (BadFile& bad) {
    return tl::make_unexpected(std::move(bad));
  }
}

Problem problem_of(const Instance& instance) {
  Problem problem;
  problem.horizon = safe_horizon(instance);
  for (const int capacity : instance.capacities) problem.resources.push_back({capacity, -1});
  const int count = static_cast<int>(instance.durations.size());
  for (int a = 0; a < count; ++a) {
    Activity activity;
    activity.starts = {{0, a == 0 ? 1 : problem.horizon + 1}};
    activity.end = shift(instance.durations[static_cast<std::size_t>(a)]);
    const std::vector<int>& amounts = instance.demands[static_cast<std::size_t>(a)];
    for (int r = 0; r < static_cast<int>(amounts.size()); ++r) {
      if (amounts[static_cast<std::size_t>(r)] > 0) activity.demands.push_back({r, amounts[static_cast<std::size_t>(r)]});
    }
    activity.tag = a;
    problem.activities.push_back(std::move(activity));
  }
  Tag tag = count;
  for (const Arc& arc : instance.arcs) {
    if (arc.lag < 0) {
      problem.maximum_lags.push_back({{arc.to, Edge::start}, arc.from, shift(-arc.lag), tag, std::nullopt});
    } else {
      problem.minimum_lags.push_back({{arc.from, Edge::start}, arc.to, shift(arc.lag), tag});
    }
    ++tag;
  }
  problem.goals.push_back({count - 1, unreachable, 1, -1});
  return problem;
}

}  // namespace coatday::solver::bench
