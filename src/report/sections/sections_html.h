#pragma once
// The sections of the page, each added to its parent. Inside this room only.

#include "job/advice.h"
#include "job/air_forecast.h"
#include "job/job.h"
#include "job/wood_findings.h"
#include "report/document/element.h"

namespace coatday::report::page {

/// Pieces of one order; of a single order all of them.
struct OrderPart {
  std::string name;
  std::vector<std::size_t> pieces;
};

/// Where sections go; each gets a link at the top of the page.
struct Contents {
  Element links, main;

  /// A section with its heading, under that id.
  Element section(const char* id, std::string_view title);
};

void add_answers(Contents&, const job::Plan&, Units);
void add_today(Contents&, const job::Plan&);
void add_timeline(Contents&, const job::Job&, const job::Plan&, const job::AirForecast&, Units);
void add_days(Contents&, const job::Plan&, Units);
void add_purchase(Contents&, const job::Plan&, Units);
void add_hand_over(Element parent, const job::Plan&, const OrderPart&);
/// What the shades of the drawings mean, as far as they occur.
void add_coats_legend(Element parent, const job::Plan&);
void add_drawing(Element parent, const job::Job&, const job::Plan&, std::size_t piece, Units);
void add_ledger(Element parent, const job::Plan&, const OrderPart&);
/// Why there is no plan, and what would help.
void add_reasons(Contents&, const job::Plan&);
void add_advice(Contents&, const job::Plan&, const job::Advice&, Units);
void add_wood(Contents&, const job::Plan&, const job::WoodFindings&, Units);
void add_notes(Contents&, const job::Plan&, Units);
void add_cautions(Contents&, const job::Plan&);

/// The fills of the drawings, once for all of them.
void add_patterns(Element body);

/// Where the full text of a caution stands: "caution-oily-rags".
[[nodiscard]] std::string caution_id(const std::string& key);

}  // namespace coatday::report::page
