#pragma once
// Instants, local time and zones, with how people write and read them.

#include "quantity/instant.h"
#include "quantity/time_format.h"
#include "quantity/time_parse.h"
#include "quantity/zone.h"
