#pragma once
// What the shop's file tells of its room: how it holds heat, what heats it, and what becomes of its damp.

#include "climate/room.h"
#include "input/fields.h"

namespace coatday::input {

/// The keys of the air that are of the room. They go with 'outdoors'; each is a mistake without it.
[[nodiscard]] const Keys& room_keys();
void refuse_room_keys(const Fields& air);

/// The room, as good as it can be read; `air` has 'outdoors'.
[[nodiscard]] climate::Room read_room(const Fields& air);

}  // namespace coatday::input
