#include "cli/arguments.h"

#include <gtest/gtest.h>

#include "cli/commands.h"
#include "cli/version.h"

namespace coatday::cli {
namespace {

Outcome refusal(const Args& words) {
  const auto arguments = read_arguments(words);
  EXPECT_FALSE(arguments.has_value());
  return arguments ? Outcome{} : arguments.error();
}
std::string error(const Args& words) {
  const Outcome outcome = refusal(words);
  EXPECT_EQ(outcome.status, bad_input);
  EXPECT_EQ(outcome.out, "");
  return outcome.err;
}

TEST(Arguments, Plan) {
  const auto a = read_arguments(
      {"plan", "order.yaml", "--format", "json", "--from", "2027-01-11 08:00", "--units", "us", "--strict", "--colour", "always"});
  ASSERT_TRUE(a.has_value());
  EXPECT_EQ(a->command->name, "plan");
  EXPECT_EQ(a->orders, Args{"order.yaml"});
  EXPECT_EQ(a->format, "json");
  EXPECT_EQ(a->from, LocalTime(LocalDay(date::year(2027) / 1 / 11)) + std::chrono::hours(8));
  EXPECT_EQ(a->units, Units::us);
  EXPECT_TRUE(a->strict);
  EXPECT_EQ(a->colour, Colour::always);
}

TEST(Arguments, Defaults) {
  const auto a = read_arguments({"plan", "order.yaml"});
  ASSERT_TRUE(a.has_value());
  EXPECT_EQ(a->format, "") << "the first of the command's outputs";
  EXPECT_FALSE(a->from || a->units || a->strict);
  EXPECT_EQ(a->colour, Colour::automatic);
}

TEST(Arguments, SeveralOrders) {
  const auto a = read_arguments({"plan", "a.yaml", "b.yaml", "--units", "us"});
  ASSERT_TRUE(a.has_value());
  EXPECT_EQ(a->orders, (Args{"a.yaml", "b.yaml"}));
}

TEST(Arguments, TheStepComesAfterTheOrders) {
  const auto a = read_arguments({"why", "order", "table/top/clear-1"});
  ASSERT_TRUE(a.has_value());
  EXPECT_EQ(a->orders, Args{"order"});
  EXPECT_EQ(a->name, "table/top/clear-1");
  const auto b = read_arguments({"why", "a.yaml", "b.yml", "table/top/clear-1"});
  ASSERT_TRUE(b.has_value());
  EXPECT_EQ(b->orders, (Args{"a.yaml", "b.yml"}));
  EXPECT_EQ(b->name, "table/top/clear-1");
  EXPECT_TRUE(read_arguments({"why", "a.yaml", "b.yaml"})->name.empty());
  EXPECT_EQ(error({"why", "a.yaml", "table/top", "b.yaml"}),
            "coatday: error: 'table/top': a second order's name ends in .yaml, and a single step comes last\n");
}

TEST(Arguments, OwnFilesTakeOneWordEach) {
  const auto a = read_arguments({"finishes", "--own", "a.yaml", "my-clear", "--own", "b.yaml"});
  ASSERT_TRUE(a.has_value());
  EXPECT_EQ(a->own, (Args{"a.yaml", "b.yaml"}));
  EXPECT_EQ(a->name, "my-clear");
}

TEST(Arguments, MistypedCommandNamesTheNearest) {
  EXPECT_EQ(error({"plna", "order.yaml"}), "coatday: error: unknown command 'plna'; did you mean 'plan'? (coatday --help lists them)\n");
  EXPECT_EQ(error({"zzzzzz"}), "coatday: error: unknown command 'zzzzzz' (coatday --help lists them)\n");
}
TEST(Arguments, MistypedOptionNamesTheNearest) {
  EXPECT_EQ(error({"plan", "order.yaml", "--fromat", "json"}),
            "coatday: error: unknown option '--fromat'; did you mean '--format'? (coatday plan --help says more)\n");
}
TEST(Arguments, OptionOfAnotherCommand) {
  EXPECT_EQ(error({"area", "order.yaml", "--strict"}), "coatday: error: unknown option '--strict' (coatday area --help says more)\n");
}
TEST(Arguments, ChoicesSayWhatTheyExpect) {
  EXPECT_EQ(error({"plan", "order.yaml", "--format", "jsno"}),
            "coatday: error: --format 'jsno': expected text or json; did you mean 'json'?\n");
  EXPECT_EQ(error({"plan", "order.yaml", "--units", "imperial"}), "coatday: error: --units 'imperial': expected us or metric\n");
  EXPECT_EQ(error({"plan", "order.yaml", "--colour", "sometimes"}),
            "coatday: error: --colour 'sometimes': expected never, auto or always\n");
}
TEST(Arguments, FromIsADateAndATime) {
  EXPECT_EQ(error({"plan", "order.yaml", "--from", "2027-02-30 08:00"}),
            "coatday: error: --from '2027-02-30' is not in the calendar; expected a date such as 2027-01-11\n");
  EXPECT_EQ(error({"plan", "order.yaml", "--from", "monday"}),
            "coatday: error: --from 'monday' is not a date and time; expected one such as 2027-01-11 08:00\n");
}
TEST(Arguments, EmptyValueDoesNotSwallowTheNextWord) {
  EXPECT_EQ(error({"plan", "--from=", "order.yaml"}), "coatday: error: '--from=' has no value\n");
  EXPECT_EQ(error({"plan", "order.yaml", "--from", ""}), "coatday: error: an empty word on the command line\n");
}

TEST(Arguments, EveryOtherMistakeIsStatusTwoAsWell) {
  for (const Args& words :
       {Args{}, Args{"plan"}, Args{"plan", "a.yaml", "--from"}, Args{"plan", "a.yaml", "--format"},
        Args{"plan", "a.yaml", "--units", "us", "--units", "us"}, Args{"--frmo"}, Args{"plan", "a.yaml", "-x"}, Args{"--"},
        Args{"plan", "a.yaml", "--strict=maybe"}, Args{"finishes", "a", "b"}, Args{"finishes", "--own"}, Args{"check"}}) {
    const std::string text = error(words);
    EXPECT_TRUE(text.starts_with("coatday: error: ")) << text;
    EXPECT_TRUE(text.ends_with('\n')) << text;
  }
}

TEST(Help, IsAnAnswerNotAMistake) {
  for (const Args& words : {Args{"--help"}, Args{"-h"}, Args{"plan", "--help"}, Args{"plan", "-h"}, Args{"plan", "x.yaml", "-h"}}) {
    const Outcome outcome = refusal(words);
    EXPECT_EQ(outcome.status, done);
    EXPECT_EQ(outcome.err, "");
    EXPECT_NE(outcome.out.find("Example: coatday"), std::string::npos);
  }
  EXPECT_EQ(refusal({"--version"}).out, "coatday " + std::string(version()) + "\n");
}

// The help names each option that the parser takes, and no other.
TEST(Help, TellsExactlyTheOptionsThatThereAre) {
  const std::vector<Args> options{{"--format", "text"},
                                  {"--keep", "old.json"},
                                  {"--from", "2027-01-11 08:00"},
                                  {"--units", "us"},
                                  {"--strict"},
                                  {"--colour", "auto"},
                                  {"--own", "label.yaml"},
                                  {"--set", "air.night=13 C"},
                                  {"--effort", "quick"},
                                  {"--days", "3"},
                                  {"--finish", "water-clear"},
                                  {"--fit", "log.csv"},
                                  {"-o", "plan.ics"},
                                  {"--force"}};
  for (const Command& listed : commands()) {
    const std::string command(listed.name);
    if (command == "wood") continue;  // no order, and its --from is an air: the next test
    if (command == "help") continue;  // no order
    const std::string text = refusal({command, "--help"}).out;
    for (const Args& option : options) {
      Args words{command, "order.yaml"};
      words.insert(words.end(), option.begin(), option.end());
      if (command == "calendar" && option[0] == "--format") words.back() = "ics";
      EXPECT_EQ(read_arguments(words).has_value(), text.find("\n  " + option[0] + " ") != std::string::npos) << command << " " << option[0];
    }
  }
}

TEST(Help, OfWoodTellsExactlyTheOptionsThatThereAre) {
  const std::string text = refusal({"wood", "--help"}).out;
  for (const Args& option : std::vector<Args>{{"--species", "walnut"},
                                              {"--width", "22 in"},
                                              {"--cut", "35 deg"},
                                              {"--from", "20 C 40 %"},
                                              {"--format", "json"},
                                              {"--set", "cut=quarter"},
                                              {"--units", "us"},
                                              {"--colour", "never"},
                                              {"--strict"},
                                              {"--own", "a.yaml"}}) {
    Args words{"wood", "--at", "20 C 50 %"};
    words.insert(words.end(), option.begin(), option.end());
    EXPECT_EQ(read_arguments(words).has_value(), text.find("\n  " + option[0] + " ") != std::string::npos) << option[0];
  }
}

}  // namespace
}  // namespace coatday::cli
