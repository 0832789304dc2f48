// Every reason, every learned clause and every refutation of the exact search, checked by propagation alone; and that the check can fail.

#include "tests/solver/verify.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <fstream>
#include <iterator>
#include <tuple>

#include "tests/bench/rcpsp_max/instance.h"
#include "tests/solver/exhaustive.h"
#include "tests/solver/random_problem.h"
#include "tests/support/source_dir.h"

namespace coatday::solver::test {
namespace {

using clause_learning::Literal;

struct Searched {
  Verifier::Tally tally;
  bool infeasible = false;
};

// The best schedule in calls of few conflicts, with a neighbourhood in between, so that all that a search does takes place.
Searched search_and_verify(const Problem& problem, const std::string& name, long conflicts, const Schedule* witness = nullptr) {
  Search search(problem);
  Verifier verifier(problem, search.solver());
  if (witness != nullptr) verifier.hear(*witness);
  std::optional<Score> best;
  Searched result;
  for (int call = 0; call < 20; ++call) {
    Neighbourhood near;
    if (call == 1 && problem.activities.size() > 1) near.orders = {{0, 1}};
    const SearchResult now = search.improve(best, nullptr, {conflicts, 0, nullptr}, near);
    if (now.schedule) best = score(problem, *now.schedule);
    result.infeasible = now.infeasible;
    if (now.infeasible || (now.exhausted && call != 1)) break;
  }
  for (const std::string& complaint : verifier.complaints()) ADD_FAILURE() << name << ": " << complaint;
  EXPECT_TRUE(!result.infeasible || verifier.found_contradiction()) << name << ": infeasible, which propagation does not confirm";
  result.tally = verifier.tally();
  return result;
}

// Reports the sum and what it must at least be.
void expect(const Verifier::Tally& sum, const Verifier::Tally& least) {
  testing::Test::RecordProperty("explanations", std::to_string(sum.explanations));
  testing::Test::RecordProperty("clauses", std::to_string(sum.clauses));
  testing::Test::RecordProperty("refutations", std::to_string(sum.refutations));
  EXPECT_GT(sum.explanations, least.explanations);
  EXPECT_GT(sum.clauses, least.clauses);
  EXPECT_GT(sum.refutations, least.refutations);
}

Verifier::Tally over_random_problems(unsigned count, const Size& size, int& infeasible) {
  Verifier::Tally sum;
  for (unsigned seed = 0; seed < count; ++seed) {
    const unsigned bits = seed * 37 % 1024;
    const Problem problem = random_problem(features(bits), seed, size);
    const Exhausted all = size.activities == 0 ? exhaust(problem) : Exhausted{};
    const std::string name = "features " + std::to_string(bits) + ", seed " + std::to_string(seed);
    const auto [tally, none] = search_and_verify(problem, name, 50, all.feasible ? &all.schedule : nullptr);
    sum.explanations += tally.explanations;
    sum.clauses += tally.clauses;
    sum.refutations += tally.refutations;
    infeasible += none ? 1 : 0;
  }
  return sum;
}

TEST(Verify, TinyProblems) {
  int infeasible = 0;
  expect(over_random_problems(1024, {}, infeasible), {1500, 400, 1000});
  EXPECT_GT(infeasible, 100);
}

TEST(Verify, SmallProblems) {
  int infeasible = 0;
  expect(over_random_problems(1024, {8, 24}, infeasible), {15'000, 1500, 1000});
  EXPECT_GT(infeasible, 100);
}

Problem instance(const std::string& file) {
  std::ifstream in(source_dir() + "/tests/solver/rcpsp_max/" + file, std::ios::binary);
  return bench::problem_of(bench::read_sch(std::string(std::istreambuf_iterator<char>(in), {})).value());
}

TEST(Verify, PublicInstances) {
  for (const char* file : {"ubo10_psp1.sch", "ubo20_psp10.sch", "sm_j30_psp67.sch"}) {
    const Searched searched = search_and_verify(instance(file), file, 300);
    RecordProperty(file, std::to_string(searched.tally.explanations));
  }
}

// False statements to a verifier, and how many it notices.
struct Lies {
  long made = 0, caught = 0;
};

template <class Tell>
void lie(Lies& lies, const Verifier& verifier, const Tell& tell) {
  const std::size_t before = verifier.complaints().size();
  tell();
  ++lies.made;
  lies.caught += verifier.complaints().size() > before ? 1 : 0;
}

// Not every lie is false: what is dropped or added may follow from the rest all the same. Many are.
TEST(Verify, SeesWhatIsFalse) {
  Lies stronger, without_premise, without_conflict, shorter, refuted;
  const Problem problem = instance("ubo20_psp10.sch");
  Search search(problem);
  clause_learning::Solver& solver = search.solver();
  Verifier verifier(problem, solver);
  solver.model.engine.on_explained = [&](int entry, const Literal* conclusion, std::span<const Literal> premises) {
    if (premises.empty()) return;
    if (conclusion == nullptr) return lie(without_conflict, verifier, [&] { verifier.explained(entry, nullptr, premises.subspan(1)); });
    const Literal more{conclusion->bound_var, conclusion->value + 1};
    lie(stronger, verifier, [&] { verifier.explained(entry, &more, premises); });
    lie(without_premise, verifier, [&] { verifier.explained(entry, conclusion, premises.subspan(1)); });
  };
  solver.on_learned = [&](const std::vector<Literal>& clause) {
    if (clause.size() > 1) lie(shorter, verifier, [&] { verifier.learned({clause.begin() + 1, clause.end()}); });
    verifier.learned(clause);
  };
  solver.on_refuted = [&](const std::vector<Literal>& assumptions) {
    lie(refuted, verifier, [&] { verifier.refuted({assumptions.begin() + 1, assumptions.end()}); });
  };
  std::ignore = search.improve(std::nullopt, nullptr, {200, 0, nullptr});
  for (const Lies& lies : {stronger, without_premise, without_conflict, shorter, refuted}) {
    EXPECT_GT(lies.made, 0);
    EXPECT_GE(lies.caught, lies.made / 3);
  }
}

TEST(Verify, HearsAWitness) {
  const Problem problem = random_problem(features(0b111), 7);
  const Exhausted all = exhaust(problem);
  ASSERT_TRUE(all.feasible);
  Search search(problem);
  Verifier verifier(problem, search.solver());
  verifier.hear(all.schedule);
  const Time start = all.schedule.activities[0].start;
  const Literal true_one = clause_learning::at_least(search.solver().model.run(0).start, start),
                false_one = clause_learning::at_least(true_one.bound_var / 2, start + 1);
  const auto broken = [&] {
    return std::count_if(verifier.complaints().begin(), verifier.complaints().end(),
                         [](const std::string& complaint) { return complaint.find("schedule breaks") != std::string::npos; });
  };
  verifier.explained(-1, &true_one, {});
  verifier.learned({true_one});
  EXPECT_EQ(broken(), 0);
  verifier.explained(-1, &false_one, {});
  EXPECT_EQ(broken(), 1);
  verifier.learned({false_one});
  EXPECT_EQ(broken(), 2);
}

}  // namespace
}  // namespace coatday::solver::test
