#pragma once
// Where in the user's text a value stands, kept with it until the plan is made.

#include <string>

namespace coatday {

/// Line and column count from 1, columns in characters; line 0 where there is no text.
struct Location {
  std::string file;
  int line = 0;
  int column = 0;
};

}  // namespace coatday
