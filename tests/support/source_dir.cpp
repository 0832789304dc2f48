#include "tests/support/source_dir.h"

namespace coatday {

// The one file that is compiled with the path, so that all others compile alike wherever the project lies.
const std::string& source_dir() {
  static const std::string path = COATDAY_SOURCE_DIR;
  return path;
}

}  // namespace coatday
