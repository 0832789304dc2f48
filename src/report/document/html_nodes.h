#pragma once
// Phrases, facts and lists as elements of a page.

#include <string>

#include "report/document/document.h"
#include "report/document/element.h"

namespace coatday::report::page {

/// The words of a phrase, with their names, links and marks, as far as the parent does not show that mark itself.
void add_phrase(Element parent, const Phrase&, Mark shown = Mark::plain);
/// The words alone.
[[nodiscard]] std::string words_of(const Phrase&);
/// The mark that all of it has; plain where there are several.
[[nodiscard]] Mark mark_of(const Phrase&);
[[nodiscard]] std::string_view class_of(Mark);

void add_facts(Element parent, const Facts&);
void add_list(Element parent, const List&);

}  // namespace coatday::report::page
