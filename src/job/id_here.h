#pragma once
// Ids of events that were written down in another company: when the order was planned alone, or with other orders.

#include <string>

#include "job/job.h"

namespace coatday::job {

/// The id that the event has in this job. Where no piece, or more than one, may be meant, it stays as it is.
[[nodiscard]] std::string id_here(const Order&, const std::string& event);

}  // namespace coatday::job
