// The words of every refusal, and one reason for each.
#include <gtest/gtest.h>

#include <string>

#include "quantity/text.h"

namespace coatday {
namespace {

const std::string a_length = "; expected a length such as 68 in, 5 ft 8 in, 170 cm or 38 mm";
const std::string in_range = "; expected a length above 0 and up to 100 m";

template <class T>
std::string error_of(const Parsed<T>& parsed) {
  return parsed ? "accepted" : parsed.error();
}

TEST(LengthErrors, NoUnit) {
  EXPECT_EQ(error_of(parse_length("68")), "'68' has no unit" + a_length);
  EXPECT_EQ(error_of(parse_length("5 ft 8")), "'8' has no unit" + a_length);
  EXPECT_EQ(error_of(parse_length("2 1/8")), "'2 1/8' has no unit" + a_length);
}

TEST(LengthErrors, UnknownUnit) {
  EXPECT_EQ(error_of(parse_length("68 inchs")), "unknown unit 'inchs'; did you mean 'inch'?");
  EXPECT_EQ(error_of(parse_length("68 IN")), "unknown unit 'IN'; did you mean 'in'?");
  EXPECT_EQ(error_of(parse_length("68 furlongs")), "unknown unit 'furlongs'" + a_length);
}

TEST(LengthErrors, NotALength) {
  EXPECT_EQ(error_of(parse_length("tall")), "'tall' is not a length" + a_length);
  EXPECT_EQ(error_of(parse_length("")), "nothing is given" + a_length);
  EXPECT_EQ(error_of(parse_length("  ")), "nothing is given" + a_length);
  EXPECT_EQ(error_of(parse_length("1,5 m")), "'1,5 m' has a comma, which is not a decimal point" + a_length);
  EXPECT_EQ(error_of(parse_length("5 ft 14 in")), "'5 ft 14 in' has parts that do not go together" + a_length);
}

TEST(LengthErrors, OutOfRange) {
  EXPECT_EQ(error_of(parse_length("120 m")), "'120 m' is out of range" + in_range);
  EXPECT_EQ(error_of(parse_length("0 mm")), "'0 mm' is out of range" + in_range);
  EXPECT_EQ(error_of(parse_length("-5 mm")), "'-5 mm' is out of range" + in_range);
}

TEST(LengthErrors, OneReasonEach) {
  constexpr const char* refused[] = {
      "1e3 mm",                    // exponent
      "0x10 mm",                   // hexadecimal
      "nan mm",                    // not a number
      "inf mm",                    // not finite
      "-inf mm",                   // not finite, with a sign
      "+5 mm",                     // a plus sign is not used in measurements
      "1.2.3 mm",                  // two points
      ". mm",                      // no digit
      "2 9/8 in",                  // more than a whole inch after the whole inches
      "1/0 in",                    // division by zero
      "2.5 1/2 in",                // a decimal and a fraction
      "2 1/8 1/8 in",              // two fractions
      "8 in 5 ft",                 // small before large
      "5.5 ft 8 in",               // half a foot twice over
      "5 ft -8 in",                // a part below zero
      "5 ft 5 ft",                 // the same unit twice
      "5 ft 8 in x",               // text left over
      "mm 5",                      // the wrong way round
      "4294967297/4294967296 in",  // beyond what a fraction needs
  };
  for (const char* text : refused) EXPECT_FALSE(parse_length(text)) << text;
}

TEST(OtherErrors, NameTheirUnits) {
  EXPECT_EQ(error_of(parse_area("4")), "'4' has no unit; expected an area such as 0.8 m2, 900 cm2, 4 ft2 or 20 in2");
  EXPECT_EQ(error_of(parse_volume("4")), "'4' has no unit; expected a volume such as 250 ml, 1 l, 8 fl oz, 1 qt or 1 gal");
  EXPECT_EQ(error_of(parse_spreading_rate("8-10 m2/l")),
            "unknown unit '-10 m2/l'; expected a spreading rate such as 10 m2/l or 400 ft2/gal");
  EXPECT_EQ(error_of(parse_work_rate("6")), "'6' has no unit; expected a work rate such as 6 m2/h or 60 ft2/h");
  EXPECT_EQ(error_of(parse_film("40 nm")), "unknown unit 'nm'; did you mean 'um'?");
  EXPECT_EQ(error_of(parse_voc("-1 g/l")), "'-1 g/l' is out of range; expected a VOC content from 0 to 2000 g/l");
  EXPECT_EQ(error_of(parse_airflow("500")), "'500' has no unit; expected an airflow such as 500 cfm, 850 m3/h or 240 l/s");
  EXPECT_EQ(error_of(parse_airflow("0 cfm")), "'0 cfm' is out of range; expected an airflow above 0 and up to 1000000 m3/h");
  EXPECT_EQ(error_of(parse_density("0.9")), "'0.9' has no unit; expected a density such as 867 g/l, 0.87 kg/l or 7.2 lb/gal");
  EXPECT_EQ(error_of(parse_vapour("30")), "'30' has no unit; expected the vapour of a liquid such as 30.4 ft3/gal, 0.227 m3/l or 227 l/l");
  EXPECT_EQ(error_of(parse_temperature("20")), "'20' has no unit; expected a temperature such as 18 °C or 65 °F");
  EXPECT_EQ(error_of(parse_temperature("20 degC")), "unknown unit 'degC'; expected a temperature such as 18 °C or 65 °F");
  EXPECT_EQ(error_of(parse_temperature("293 K")), "unknown unit 'K'; expected a temperature such as 18 °C or 65 °F");
  EXPECT_EQ(error_of(parse_temperature("500 °C")), "'500 °C' is out of range; expected a temperature from -60 °C to 400 °C");
  EXPECT_EQ(error_of(parse_temperature_difference("3")), "'3' has no unit; expected a difference of temperature such as 3 K or 5 °F");
  EXPECT_EQ(error_of(parse_duration("0")), "'0' has no unit; expected a duration such as 90 min, 2 h 30 min, 3 days or 2 weeks");
  EXPECT_EQ(error_of(parse_duration("-1 h")), "'-1 h' is out of range; expected a duration from 0 to 2 years");
  EXPECT_EQ(error_of(parse_duration("3 dyas")), "unknown unit 'dyas'; did you mean 'days'?");
  EXPECT_FALSE(parse_duration("30 min 2 h"));
  EXPECT_FALSE(parse_duration("1 h 90 min"));
}

TEST(OtherErrors, RefuseWhatIsTooLarge) {
  EXPECT_FALSE(parse_area("10001 m2"));
  EXPECT_FALSE(parse_volume("3000 gal"));
  EXPECT_FALSE(parse_temperature("-61 °C"));
  EXPECT_FALSE(parse_duration("105 weeks"));
  EXPECT_FALSE(parse_length(std::string(400, '9') + " mm"));  // beyond a double
}

TEST(NumberErrors, SayWhatIsExpected) {
  EXPECT_EQ(error_of(parse_number("12 mm")), "'12 mm' is not a number; expected a plain number such as 12 or 0.5");
  EXPECT_EQ(error_of(parse_count("2.5")), "'2.5' is not a count; expected a whole number such as 3, up to 1000000");
  EXPECT_EQ(error_of(parse_share("65")), "'65' is not between 0 % and 100 %; expected a share such as 65 % or 0.65");
  EXPECT_EQ(error_of(parse_share("most")), "'most' is not a share; expected a share such as 65 % or 0.65");
  for (const char* text : {"", "1e3", "0x1F", "nan", ".inf", "1,5", "1/2", "1 2", "--1", "1.2.3"}) EXPECT_FALSE(parse_number(text)) << text;
  for (const char* text : {"", "-1", "-0", "+1", "1.0", "0x1F", "1000001", "99999999999", "3 pcs"}) EXPECT_FALSE(parse_count(text)) << text;
  for (const char* text : {"", "%", "101 %", "-1 %", "1.01", "nan", "65 %%"}) EXPECT_FALSE(parse_share(text)) << text;
}

TEST(Errors, StayOnOneShortLine) {
  const std::string hostile = "x\n\x1b[31m\t" + std::string(100'000, 'y');
  for (const std::string& error :
       {error_of(parse_length(hostile)), error_of(parse_length("5 " + hostile)), error_of(parse_number(hostile))}) {
    EXPECT_EQ(error.find_first_of("\n\t\x1b"), std::string::npos);
    EXPECT_LT(error.size(), 250U);
  }
  EXPECT_LT(error_of(parse_length(std::string(100'000, '\x80'))).size(), 250U);  // no character starts here
  EXPECT_NE(error_of(parse_length(std::string(100, 'x') + " mm")).find("x…'"), std::string::npos);
}

}  // namespace
}  // namespace coatday
