#pragma once
// Quantities as people write and read them.

#include "quantity/format.h"
#include "quantity/parse.h"
