#include "report/pdf/typesetter.hpp"

#include <cairo.h>
#include <pango/pangocairo.h>

#include <algorithm>
#include <cmath>
#include <utility>

#include "core/paper/markup.hpp"
#include "report/pdf/grey.hpp"
#include "report/pdf/owned.hpp"

namespace evenclaw {

namespace {

using FontOptions = Owned<cairo_font_options_t, cairo_font_options_destroy>;
using FontDescription = Owned<PangoFontDescription, pango_font_description_free>;
using Attributes = Owned<PangoAttrList, pango_attr_list_unref>;

double millimetres(int pango_units) {
  return pango_units_to_double(pango_units) * mm_per_point;
}

int pango_units(double points) {
  return pango_units_from_double(points);
}

void add(PangoAttrList* list, PangoAttribute* attribute, std::size_t from, std::size_t to) {
  attribute->start_index = static_cast<guint>(from);
  attribute->end_index = static_cast<guint>(to);
  pango_attr_list_insert(list, attribute);
}

/// What the emphasis of one run asks for, given how the plain text around it is set.
struct RunLook {
  bool strong = false;
  bool quiet = false;
  double points = 0;
};

RunLook look_of(Emphasis emphasis, const TextStyle& style) {
  switch (emphasis) {
    case Emphasis::plain:
      return {style.strong, style.quiet, style.points};
    case Emphasis::strong:
      return {true, false, style.points};
    case Emphasis::quiet:
      return {false, true, style.quiet_points > 0 ? style.quiet_points : style.points};
  }
  return {};
}

/// The text of all runs, and for each stretch of it how it looks.
struct Marked {
  std::string text;
  Attributes attributes;
};

Marked marked(const Runs& runs, const TextStyle& style) {
  Marked all;
  all.attributes.reset(pango_attr_list_new());
  PangoAttrList* list = all.attributes.get();
  for (const Run& run : runs) {
    const std::size_t from = all.text.size();
    all.text += printable(run.text);
    const std::size_t to = all.text.size();
    const RunLook look = look_of(run.emphasis, style);
    add(list, pango_attr_size_new_absolute(pango_units(look.points)), from, to);
    if (look.strong) add(list, pango_attr_weight_new(PANGO_WEIGHT_BOLD), from, to);
    if (look.quiet) {
      add(list, pango_attr_foreground_new(text_grey_65535, text_grey_65535, text_grey_65535), from,
          to);
    }
  }
  // Nothing that was not written is printed.
  add(list, pango_attr_insert_hyphens_new(FALSE), 0, all.text.size());
  return all;
}

std::shared_ptr<void> layout_of(void* context, const Marked& marked, const TextStyle& style) {
  PangoLayout* layout = pango_layout_new(static_cast<PangoContext*>(context));
  const FontDescription font(pango_font_description_new());
  const std::string families = std::string(shipped_family()) + ",sans-serif";
  pango_font_description_set_family(font.get(), families.c_str());
  pango_font_description_set_absolute_size(font.get(), pango_units(style.points));
  pango_layout_set_font_description(layout, font.get());
  pango_layout_set_single_paragraph_mode(layout, TRUE);
  pango_layout_set_text(layout, marked.text.data(), static_cast<int>(marked.text.size()));
  pango_layout_set_attributes(layout, marked.attributes.get());
  pango_layout_set_wrap(layout, PANGO_WRAP_WORD_CHAR);
  if (style.most_lines > 0) {
    pango_layout_set_height(layout, -style.most_lines);
    pango_layout_set_ellipsize(layout, PANGO_ELLIPSIZE_END);
  }
  return {layout, g_object_unref};
}

std::string text_of(PangoLayoutLine* line, const std::string& text) {
  std::string part = text.substr(static_cast<std::size_t>(line->start_index),
                                 static_cast<std::size_t>(line->length));
  while (!part.empty() && part.back() == ' ') part.pop_back();
  return part;
}

SetLine set_line(const std::shared_ptr<void>& layout, int index, const std::string& text) {
  PangoLayoutLine* line =
      pango_layout_get_line_readonly(static_cast<PangoLayout*>(layout.get()), index);
  PangoRectangle logical;
  pango_layout_line_get_extents(line, nullptr, &logical);
  SetLine set;
  set.text = text_of(line, text);
  set.width = millimetres(logical.width);
  set.ascent = millimetres(-logical.y);
  set.descent = millimetres(logical.height + logical.y);
  set.layout = layout;
  set.index = index;
  return set;
}

}  // namespace

Result<Typesetter> Typesetter::with(const std::vector<PrintFont>& fonts, FontReach reach,
                                    const std::string& language) {
  auto map = font_map(fonts, reach);
  if (!map) return map.faults();
  PangoContext* context = pango_font_map_create_context(static_cast<PangoFontMap*>(map->get()));
  pango_cairo_context_set_resolution(context, 72);
  const FontOptions options(cairo_font_options_create());
  // Letters keep the shapes and distances they were drawn with: the printer has dots enough.
  cairo_font_options_set_hint_style(options.get(), CAIRO_HINT_STYLE_NONE);
  cairo_font_options_set_hint_metrics(options.get(), CAIRO_HINT_METRICS_OFF);
  pango_cairo_context_set_font_options(context, options.get());
  pango_context_set_round_glyph_positions(context, FALSE);
  pango_context_set_language(context, pango_language_from_string(language.c_str()));
  return Typesetter(std::shared_ptr<void>(context, g_object_unref));
}

std::vector<SetLine> Typesetter::lines(const Runs& runs, const TextStyle& style, double width) {
  const Marked text = marked(runs, style);
  if (text.text.empty()) return {};
  const auto shared = layout_of(context_.get(), text, style);
  auto* layout = static_cast<PangoLayout*>(shared.get());
  if (width >= 0) pango_layout_set_width(layout, pango_units(width / mm_per_point));
  if (pango_layout_get_unknown_glyphs_count(layout) > 0) lacks_letters_ = true;
  std::vector<SetLine> lines;
  const int count = pango_layout_get_line_count(layout);
  lines.reserve(static_cast<std::size_t>(count));
  for (int i = 0; i < count; ++i) lines.push_back(set_line(shared, i, text.text));
  return lines;
}

Strips Typesetter::strips(const Runs& runs, const TextStyle& style, const Across& across) {
  Strips strips;
  for (SetLine& line : lines(runs, style, across.width)) {
    Strip strip;
    strip.height = std::max(style.points * style.line * mm_per_point, line.ascent + line.descent);
    const double spare = strip.height - line.ascent - line.descent;
    const double indent = style.align == Align::end ? across.width - line.width : 0;
    const Point at{across.left + indent, spare / 2 + line.ascent};
    strip.pieces.emplace_back(PlacedLine{std::move(line), at});
    strips.push_back(std::move(strip));
  }
  return strips;
}

double Typesetter::natural_width(const Runs& runs, const TextStyle& style) {
  double width = 0;
  for (const SetLine& line : lines(runs, style, -1)) width = std::max(width, line.width);
  return width;
}

double Typesetter::widest_word(const Runs& runs, const TextStyle& style) {
  const Marked text = marked(runs, style);
  if (text.text.empty()) return 0;
  const auto shared = layout_of(context_.get(), text, style);
  auto* layout = static_cast<PangoLayout*>(shared.get());
  pango_layout_set_wrap(layout, PANGO_WRAP_WORD);
  pango_layout_set_width(layout, 0);
  double width = 0;
  const int count = pango_layout_get_line_count(layout);
  for (int i = 0; i < count; ++i) width = std::max(width, set_line(shared, i, text.text).width);
  return width;
}

}  // namespace evenclaw
