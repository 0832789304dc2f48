#include "report/papers/quote.h"

#include <fmt/core.h>

#include "report/document/table.h"
#include "report/words.h"

namespace coatday::report {
namespace {

constexpr int label_width = 12;

class Page {
 public:
  Page(const job::Plan& plan, const job::Quote& quote, const shop::Rates& rates, const TextStyle& style)
      : plan_(plan), quote_(quote), rates_(rates), style_(style) {}

  [[nodiscard]] Lines lines(const std::string& order) const {
    Lines page = title(order);
    for (const Lines& section : {hands(), materials(), time(), price()}) {
      page.emplace_back();
      append(page, section);
    }
    return page;
  }

 private:
  [[nodiscard]] std::string money(const std::optional<Money>& m) const { return money_text(m, plan_.shop.currency); }
  [[nodiscard]] Text date(Instant t) const { return unbroken(long_date(local_day(t, plan_.shop.zone))); }
  [[nodiscard]] Lines entry(std::string_view label, const Text& body) const { return labelled(label, label_width, body, style_); }

  [[nodiscard]] Lines title(const std::string& order) const {
    Lines lines = wrap(Text(order, Mark::strong), style_.columns);
    if (quote_.begins)
      append(lines, wrap("quote, if it begins " + date(*quote_.begins) + " beside the shop's other work as it stands", style_.columns));
    return lines;
  }

  [[nodiscard]] Lines hands() const {
    Lines lines = hang(Text("Hands", Mark::strong) + "  ", "one person's hours, with set-up and cleaning; two at work count twice", style_);
    TextTable table{{{}, {Text(), Align::right}, {Text(), Align::right}}, {}};
    for (const job::Hands& hands : quote_.hands)
      table.rows.push_back({Text(hands.what), format_hours_minutes(ceil_minutes(hands.hours)), Text()});
    const std::string rate = rates_.hour ? "at " + money(rates_.hour) + " an hour" : "";
    table.rows.push_back({Text("together", Mark::strong), Text(format_hours_minutes(ceil_minutes(quote_.hours)), Mark::strong), rate});
    append(lines, layout(table, 2, style_));
    return lines;
  }

  [[nodiscard]] std::string taken(const job::Material& material) const {
    std::vector<std::string> parts;
    for (const job::Bought& can : material.buy)
      parts.push_back(unbroken(fmt::format("{} x ", can.count) + volume_text(can.size, style_.units)));
    if (material.from_shelf > Litres(0)) parts.push_back(unbroken(volume_text(material.from_shelf, style_.units) + " from the shelf"));
    return listed(parts);
  }

  [[nodiscard]] Lines materials() const {
    Lines lines = hang(Text("Materials", Mark::strong) + "  ",
                       "cans whole; what is on the shelf by the price of a litre of its smallest can", style_);
    TextTable table{{{}, {}, {Text(), Align::right}}, {}};
    for (const job::Material& material : quote_.materials) {
      const std::string name = product_name(plan_, material.product) + (material.part.empty() ? "" : ", " + material.part);
      table.rows.push_back({name, taken(material), Text(material.cost ? money(material.cost) : "no price")});
    }
    if (!plan_.shop.currency.empty())
      table.rows.push_back({Text("together", Mark::strong), Text(), Text(money(quote_.materials_cost), Mark::strong)});
    append(lines, layout(table, 2, style_));
    if (quote_.sundries > 0)
      append(lines, hang("  ", "Not in it: abrasives, rags and other small things; coatday buy counts them.", style_));
    return lines;
  }

  [[nodiscard]] Lines time() const {
    if (!quote_.promise || !quote_.begins || !quote_.last_coat) {
      return hang(Text("Time", Mark::strong) + "  ", Text("no date can be promised: in this air it is never ready to deliver", Mark::bad),
                  style_);
    }
    const job::QuoteDays& days = quote_.days;
    const auto n = [](int count, const char* one, const char* many) { return counted(static_cast<std::size_t>(count), one, many); };
    Lines lines{Text("Time", Mark::strong)};
    append(lines, entry("days", n(days.hands_on, "day", "days") +
                                    fmt::format(" with work on it, {} on which it dries or waits, {} closed", days.waiting, days.closed)));
    append(lines, entry("last coat", date(*quote_.last_coat) + "; after it the film still has to harden until nothing prints into it"));
    append(lines, entry("expected", date(*quote_.expected)));
    const int later = days.hands_on + days.waiting + days.closed - 1;
    append(lines,
           entry("promise", date(*quote_.promise) + Text(" at the earliest, " + n(later, "day", "days") + " after it begins") +
                                ": the late side, by what is known of the finishes and the air. If it begins later, reckon it anew"));
    append(lines, due());
    return lines;
  }

  [[nodiscard]] Lines due() const {
    Lines lines;
    for (const job::PieceResult& piece : plan_.pieces) {
      if (!piece.due || !piece.slack) continue;
      const Text words(slack_text(*piece.slack), piece.slack->count() < 0 ? Mark::bad : Mark::good);
      append(lines, entry("asked for", Text(plan_.pieces.size() > 1 ? piece.name + ": " : "") + date(*piece.due) + ": " + words));
    }
    return lines;
  }

  [[nodiscard]] Lines price() const {
    Lines lines{Text("Price", Mark::strong)};
    if (!rates_.hour) {
      append(lines, hang("  ",
                         "No rate is known: 'rates: {hour: 48, material markup: 15 %}' in the shop file, beside its 'currency', would make "
                         "a price of this.",
                         style_));
      return lines;
    }
    TextTable table{{{}, {Text(), Align::right}}, {}};
    table.rows.push_back({"work", money(quote_.work)});
    table.rows.push_back({"materials", money(quote_.materials_cost)});
    if (quote_.markup)
      table.rows.push_back({unbroken(fmt::format("markup on materials, {:.3g} %", 100 * *rates_.material_markup)), money(quote_.markup)});
    if (quote_.price) table.rows.push_back({Text("together", Mark::strong), Text(money(quote_.price), Mark::strong)});
    append(lines, layout(table, 2, style_));
    if (!quote_.price)
      append(
          lines,
          hang("  ", counted(quote_.unpriced, "finish has", "finishes have") + " no price: 'cans' in a finish file of your own give one.",
               style_));
    append(
        lines,
        hang("  ", "For the finishing and the work that stands in the order. Wood, steel, hardware, heat, tax and risk are yours to add.",
             style_));
    return lines;
  }

  const job::Plan& plan_;
  const job::Quote& quote_;
  const shop::Rates& rates_;
  const TextStyle& style_;
};

}  // namespace

std::string quote_text(const job::Plan& plan, const job::Quote& quote, const shop::Rates& rates, const std::string& order,
                       const TextStyle& style) {
  return render(Page(plan, quote, rates, style).lines(order), style.colour);
}

}  // namespace coatday::report
