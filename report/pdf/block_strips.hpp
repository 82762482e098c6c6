// Each kind of block of a document as strips as wide as the column of a page. Strips that one page
// should hold together are marked so.
#pragma once

#include <vector>

#include "core/paper/document.hpp"
#include "report/pdf/strip.hpp"
#include "report/pdf/typesetter.hpp"

namespace evenclaw {

/// A rule stands above a heading of level 2, but not above the first block of a document. The
/// heading stays with what follows it.
Strips heading_strips(const Heading& heading, bool first, Typesetter& typesetter);

/// A page neither begins with the last line of a paragraph nor ends with its first one.
Strips paragraph_strips(const Paragraph& paragraph, Typesetter& typesetter);
Strips bullet_strips(const Bullets& bullets, Typesetter& typesetter);
Strips blank_strips(const Blank& blank, Typesetter& typesetter);
Strips note_strips(const Note& note, Typesetter& typesetter);

/// Its title stands again where the box goes on on another page.
Strips notice_strips(const BoxedNotice& notice, Typesetter& typesetter);

/// `heading` is what stands right above the list, and none when that is no heading. It says by when
/// and for whom, so it stands again where the list goes on on another page.
Strips task_strips(const TaskList& list, const Strips& heading, Typesetter& typesetter);

/// Its heads stand again where the table goes on on another page.
Strips table_strips(const Table& table, Typesetter& typesetter);
Strips writing_strips(const WritingForm& form, Typesetter& typesetter);
Strips card_strips(const Card& card, Typesetter& typesetter);

/// Made smaller when it is wider than `across` or higher than most of a page.
Strips figure_strips(const Figure& figure, const Across& across, Typesetter& typesetter);

/// What kind of document it is, its title, the facts about it and its mark.
Strips document_head_strips(const Document& document, Typesetter& typesetter);

}  // namespace evenclaw
