#include "report/papers/page.h"

#include <algorithm>

#include "report/document/style.h"
#include "report/sections/sections_html.h"
#include "report/words.h"

namespace coatday::report {
namespace page {
namespace {

constexpr std::size_t many = 300;  // steps; a browser takes more than a blink to lay them all out

std::vector<OrderPart> orders_of(const job::Job& job) {
  std::vector<OrderPart> orders;
  for (std::size_t i = 0; i < job.order.pieces.size(); ++i) {
    const std::string& name = job.order.pieces[i].order;
    auto order = std::find_if(orders.begin(), orders.end(), [&name](const OrderPart& o) { return o.name == name; });
    if (order == orders.end()) order = orders.insert(orders.end(), {name, {}});
    order->pieces.push_back(i);
  }
  return orders;
}

void add_head(Element body, const job::Job& job, const job::Plan& plan) {
  Element head = body.add("header", {});
  head.add("p", {{"class", "shop"}}).name(plan.shop.name);
  head.add("h1", {}).name(job.order.name);
  head.add("p", {{"class", "from"}}, "from " + unbroken(long_date(local_day(plan.from, plan.shop.zone))));
}

void add_pieces(Element section, const job::Job& job, const job::Plan& plan, const OrderPart& order, Units units) {
  add_coats_legend(section, plan);
  for (const std::size_t piece : order.pieces) {
    if (order.pieces.size() > 1) section.add("p", {{"class", "piece"}}).name(job.order.pieces[piece].piece.name);
    add_drawing(section, job, plan, piece, units);
  }
}

// A single order's parts are parts of the page.
void add_only_order(Contents& contents, const job::Job& job, const job::Plan& plan, const OrderPart& order, Units units) {
  add_pieces(contents.section("pieces", "Pieces"), job, plan, order, units);
  add_ledger(contents.section("faces", "Faces"), plan, order);
}

void add_order(Contents& contents, const job::Job& job, const job::Plan& plan, const OrderPart& order, std::size_t number, Units units) {
  Element section = contents.section(("order-" + std::to_string(number)).c_str(), order.name);
  const auto part = [&section](std::string_view title) {
    Element inner = section.add("section", {});
    inner.add("h3", {}, title);
    return inner;
  };
  if (plan.status == job::Status::feasible) add_hand_over(part("Hand-over"), plan, order);
  add_pieces(part("Pieces"), job, plan, order, units);
  add_ledger(part("Faces"), plan, order);
}

void add_sections(Contents& contents, const job::Job& job, const job::Plan& plan, const Beside& beside, Units units) {
  add_answers(contents, plan, units);
  add_reasons(contents, plan);
  const std::vector<OrderPart> orders = orders_of(job);
  if (!plan.events.empty()) {
    add_today(contents, plan);
    if (orders.size() == 1) add_hand_over(contents.section("hand-over", "Hand-over"), plan, orders.front());
    add_timeline(contents, job, plan, beside.air, units);
    add_advice(contents, plan, beside.advice, units);
    add_days(contents, plan, units);
  }
  if (orders.size() == 1) add_only_order(contents, job, plan, orders.front(), units);
  for (std::size_t i = 0; orders.size() > 1 && i < orders.size(); ++i) add_order(contents, job, plan, orders[i], i + 1, units);
  add_wood(contents, plan, beside.wood, units);
  add_purchase(contents, plan, units);
  add_notes(contents, plan, units);
  add_cautions(contents, plan);
}

std::string body_of(const job::Job& job, const job::Plan& plan, const Beside& beside, Units units) {
  Fragment page;
  Element body = page.root();
  add_patterns(body);
  add_head(body, job, plan);
  Element links = body.add("nav", {{"aria-label", "On this page"}}).add("ul", {});
  Contents contents{links, body.add("main", {{"data-plan", job.order.name + iso8601(plan.from, plan.shop.zone)}})};
  if (plan.events.size() > many) contents.main.set("class", "large");
  add_sections(contents, job, plan, beside, units);
  body.add("footer", {})
      .add("p", {}, "Made by coatday from the order and the shop's air. Late sides are to promise by; labels and local codes count.");
  return page.html();
}

std::string title_of(const job::Job& job) {
  Fragment title;
  title.root().add("title", {}, job.order.name + ", " + job.shop.name);
  return title.html();
}

}  // namespace

Element Contents::section(const char* id, std::string_view title) {
  links.add("li", {}).add("a", {{"href", std::string("#") + id}}).name(title);
  Element section = main.add("section", {{"id", id}});
  section.add("h2", {}).name(title);
  return section;
}

}  // namespace page

std::string plan_page(const job::Job& job, const job::Plan& plan, const Beside& beside, Units units) {
  std::string html =
      "<!doctype html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n" + std::string(page_mark) +
      "\n<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n<meta name=\"color-scheme\" content=\"light dark\">\n"
      "<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; style-src 'unsafe-inline'; script-src "
      "'unsafe-inline'; img-src data:\">\n<link rel=\"icon\" href=\"data:,\">\n";
  html += page::title_of(job) + "\n<style>\n" + std::string(page::style) + "</style>\n</head>\n<body>\n";
  html += page::body_of(job, plan, beside, units);
  return html + "\n<script>\n" + std::string(page::script) + "</script>\n</body>\n</html>\n";
}

}  // namespace coatday::report
