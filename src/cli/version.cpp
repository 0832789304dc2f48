#include "cli/version.h"

namespace coatday::cli {

std::string_view version() { return COATDAY_VERSION; }

}  // namespace coatday::cli
