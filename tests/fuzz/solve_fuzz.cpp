// Any bytes as the draws of a very small problem (see tests/solver/any_problem.h), every way of solving it against the others. A find becomes a
// case of tests/solver/cross_check_test.cpp.
#include <cstddef>
#include <cstdint>
#include <cstdio>
#include <cstdlib>

#include "tests/solver/any_problem.h"
#include "tests/solver/cross_check.h"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  std::size_t next = 0;
  const auto draw = [&](int most) { return next < size ? data[next++] % (most + 1) : 0; };
  const auto complaints = coatday::solver::test::cross_check(coatday::solver::test::any_problem(draw, coatday::solver::test::Reach::all));
  for (const auto& complaint : complaints) std::fprintf(stderr, "%s\n", complaint.c_str());
  if (!complaints.empty()) std::abort();
  return 0;
}
