#include "solver/base/stages.h"

#include "solver/base/network.h"

namespace coatday::solver {
namespace {

// Kosaraju's algorithm: it finds the strongly connected components in topological order.
class Components {
 public:
  explicit Components(const Network& network) : size_(network.size) {
    std::vector<GroupedLists<int>::Entry> ahead, back;
    const auto edge = [&](int from, int to) {
      if (network.activity(from).optional) return;  // it passes nothing on
      ahead.push_back({from, to});
      back.push_back({to, from});
    };
    for (const MinimumLag& lag : network.problem.minimum_lags) edge(lag.from.activity, lag.to);
    for (std::size_t i = 0; i < network.force.size(); ++i) {
      const MaximumLag& lag = network.problem.maximum_lags[i];
      if (network.force[i] == Force::hard) edge(lag.to, lag.from.activity);
    }
    ahead_ = {size_, ahead};
    back_ = {size_, back};
  }

  std::vector<int> number() {
    std::vector<int> seen(at(size_), -1), finished, found(at(size_), -1), ignored;
    for (int a = 0; a < size_; ++a) visit(ahead_, a, 0, seen, finished);
    int count = 0;
    for (auto a = finished.rbegin(); a != finished.rend(); ++a) {
      if (found[at(*a)] < 0) visit(back_, *a, count++, found, ignored);
    }
    return found;
  }

 private:
  // Marks everything that can be reached from `root` and has no mark yet, and appends each when all after it are done.
  static void visit(const GroupedLists<int>& next, int root, int mark, std::vector<int>& marks, std::vector<int>& left) {
    if (marks[at(root)] >= 0) return;
    std::vector<std::pair<int, std::size_t>> path{{root, 0}};
    marks[at(root)] = mark;
    while (!path.empty()) {
      const int a = path.back().first;
      if (path.back().second == next[a].size()) {
        left.push_back(a);
        path.pop_back();
        continue;
      }
      const int b = next[a][path.back().second++];
      if (marks[at(b)] >= 0) continue;
      marks[at(b)] = mark;
      path.emplace_back(b, 0);
    }
  }

  int size_;
  GroupedLists<int> ahead_, back_;
};

}  // namespace

std::vector<int> stages(const Network& network) { return Components(network).number(); }

}  // namespace coatday::solver
