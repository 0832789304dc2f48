#pragma once
// page.css and page.js as they are built in.

#include <string_view>

namespace coatday::report::page {

extern const std::string_view style;
extern const std::string_view script;

}  // namespace coatday::report::page
