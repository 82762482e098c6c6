#include <doctest/doctest.h>

#include "report/pdf/block_strips.hpp"
#include "report/pdf/pages.hpp"
#include "tests/report/pdf/shipped_fonts.hpp"

namespace evenclaw {
namespace {

Card card_of(const std::string& label) {
  Card card;
  card.label = label;
  card.head = {plain("Routine.")};
  card.lines = {{"Left hind", {plain("digital dermatitis")}}, {"", {plain("nothing else")}}};
  return card;
}

std::vector<Piece> laid(const Card& card) {
  Typesetter typesetter = test::typesetter();
  return dealt_to_pages(card_strips(card, typesetter))[0].pieces;
}

}  // namespace

TEST_CASE("A cow's number stands large over why she came, beside what is said of her feet") {
  const auto pieces = laid(card_of("412"));
  const PlacedLine cow = test::placed(pieces, "412");
  const PlacedLine said = test::placed(pieces, "Routine.");
  CHECK(cow.line.ascent > 1.5 * said.line.ascent);
  CHECK(cow.at.x == doctest::Approx(said.at.x));
  CHECK(cow.at.y < said.at.y);
  CHECK(cow.at.x + cow.line.width < test::placed(pieces, "nothing else").at.x);
}

TEST_CASE("A long name is set smaller and keeps to its column") {
  const auto pieces = laid(card_of("no number"));
  const PlacedLine name = test::placed(pieces, "no number");
  CHECK(name.at.x + name.line.width < test::placed(pieces, "nothing else").at.x);
}

TEST_CASE("A term stands on the line it is for, one without it begins at the same edge") {
  const auto pieces = laid(card_of("412"));
  CHECK(test::placed(pieces, "nothing else").at.x ==
        doctest::Approx(test::placed(pieces, "Left hind. digital dermatitis").at.x));
}

TEST_CASE("Of a cow of whom only one thing is to be said it stands beside her number") {
  Card card = card_of("412");
  card.lines.clear();
  const auto pieces = laid(card);
  const PlacedLine cow = test::placed(pieces, "412");
  const PlacedLine said = test::placed(pieces, "Routine.");
  CHECK(cow.at.x + cow.line.width < said.at.x);
}

TEST_CASE("A short card takes no more room than its drawing needs") {
  Card card = card_of("412");
  Drawing drawing;
  drawing.width = 38;
  drawing.height = 31;
  card.figure = Figure{drawing, "her feet"};
  Typesetter typesetter = test::typesetter();
  CHECK(height_of(card_strips(card, typesetter)) < 26);
}

TEST_CASE("A card is one piece with its drawing, which ends at the margin") {
  Card card = card_of("412");
  Drawing drawing;
  drawing.width = 50;
  drawing.height = 60;
  card.figure = Figure{drawing, "her feet"};
  Typesetter typesetter = test::typesetter();
  const Strips strips = card_strips(card, typesetter);
  CHECK(test::is_one_piece(strips));
  CHECK(height_of(strips) > 19);
  double right = 0;
  const auto pieces = dealt_to_pages(strips)[0].pieces;
  for (const Piece& piece : pieces) {
    if (std::holds_alternative<PlacedDrawing>(piece)) right = extent_of(piece).right;
  }
  CHECK(right == doctest::Approx(paper_width - margin_side));
}

}  // namespace evenclaw
