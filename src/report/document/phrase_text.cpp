#include "report/document/phrase_text.h"

namespace coatday::report {

Text text_of(const Phrase& phrase, Mark usual) {
  Text text;
  for (const Span& span : phrase) text += Text(span.text, span.mark == Mark::plain ? usual : span.mark);
  return text;
}

}  // namespace coatday::report
