#pragma once
// What a colour means, on a terminal and on a page.

#include <cstdint>

namespace coatday::report {

enum class Mark : std::uint8_t { plain, strong, faint, good, bad, caution };
enum class Align : std::uint8_t { left, right };

}  // namespace coatday::report
