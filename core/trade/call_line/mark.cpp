#include "core/trade/call_line/mark.hpp"

namespace evenclaw {

TermKind kind_of_mark(TokenKind kind) {
  switch (kind) {
    case TokenKind::word:
      return TermKind::unknown_word;
    case TokenKind::number:
      return TermKind::number;
    case TokenKind::date:
      return TermKind::date;
    case TokenKind::quoted:
      return TermKind::quoted;
    case TokenKind::comma:
      return TermKind::comma;
    case TokenKind::colon:
      return TermKind::colon;
    case TokenKind::strong:
      return TermKind::strong;
    case TokenKind::conjunction:
      return TermKind::conjunction;
    case TokenKind::doubt:
      return TermKind::doubt;
    case TokenKind::stray:
      return TermKind::stray;
  }
  return TermKind::stray;
}

}  // namespace evenclaw
