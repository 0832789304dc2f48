#pragma once
// The room of the shop, from its file: how it holds heat, what heats it, and how its moisture changes.

#include "climate/room.h"
#include "input/fields.h"

namespace coatday::input {

/// The keys of the air that describe the room. They belong to 'outdoors'; each is a mistake without it.
[[nodiscard]] const Keys& room_keys();
void refuse_room_keys(const Fields& air);

/// The room, as good as it can be read; `air` has 'outdoors'.
[[nodiscard]] climate::Room read_room(const Fields& air);

}  // namespace coatday::input
