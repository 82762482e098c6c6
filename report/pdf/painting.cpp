#include "report/pdf/painting.hpp"

#include <cairo-pdf.h>
#include <pango/pangocairo.h>

#include <array>
#include <new>
#include <numbers>

#include "core/paper/markup.hpp"
#include "report/pdf/grey.hpp"
#include "report/pdf/owned.hpp"
#include "report/pdf/typesetter.hpp"

namespace evenclaw {

namespace {

using Surface = Owned<cairo_surface_t, cairo_surface_destroy>;
using Pen = Owned<cairo_t, cairo_destroy>;

// As in the drawings on a screen.
constexpr double miter_limit = 4;

cairo_status_t append(void* into, const unsigned char* bytes, unsigned int count) {
  try {
    static_cast<std::string*>(into)->append(reinterpret_cast<const char*>(bytes), count);
  } catch (const std::bad_alloc&) {
    return CAIRO_STATUS_NO_MEMORY;
  }
  return CAIRO_STATUS_SUCCESS;
}

void dip(cairo_t* pen, Ink ink) {
  switch (ink) {
    case Ink::none:
      break;
    case Ink::black:
      cairo_set_source_rgb(pen, 0, 0, 0);
      break;
    case Ink::grey:
      cairo_set_source_rgb(pen, drawing_grey, drawing_grey, drawing_grey);
      break;
    case Ink::white:
      cairo_set_source_rgb(pen, 1, 1, 1);
      break;
  }
}

void set_dash(cairo_t* pen, const Stroke& stroke) {
  cairo_set_line_cap(pen, CAIRO_LINE_CAP_BUTT);
  switch (stroke.dash) {
    case Dash::solid:
      cairo_set_dash(pen, nullptr, 0, 0);
      break;
    case Dash::dashed: {
      const std::array<double, 2> lengths = {3 * stroke.width, 2 * stroke.width};
      cairo_set_dash(pen, lengths.data(), 2, 0);
      break;
    }
    case Dash::dotted: {
      // A dash without length and a round end is a dot.
      const std::array<double, 2> lengths = {0, 3 * stroke.width};
      cairo_set_line_cap(pen, CAIRO_LINE_CAP_ROUND);
      cairo_set_dash(pen, lengths.data(), 2, 0);
      break;
    }
  }
}

void trace(cairo_t* pen, const PathStep& step) {
  switch (step.kind) {
    case StepKind::move:
      cairo_move_to(pen, step.to.x, step.to.y);
      break;
    case StepKind::line:
      cairo_line_to(pen, step.to.x, step.to.y);
      break;
    case StepKind::curve:
      cairo_curve_to(pen, step.bend_1.x, step.bend_1.y, step.bend_2.x, step.bend_2.y, step.to.x,
                     step.to.y);
      break;
    case StepKind::close:
      cairo_close_path(pen);
      break;
  }
}

void paint(cairo_t* pen, const Path& path) {
  cairo_new_path(pen);
  for (const PathStep& step : path.steps) trace(pen, step);
  if (path.fill != Ink::none) {
    dip(pen, path.fill);
    cairo_fill_preserve(pen);
  }
  if (path.stroke.ink != Ink::none && path.stroke.width > 0) {
    dip(pen, path.stroke.ink);
    cairo_set_line_width(pen, path.stroke.width);
    set_dash(pen, path.stroke);
    cairo_stroke_preserve(pen);
  }
  cairo_new_path(pen);
}

/// Text is set in points; everything else lies in millimetres.
void paint_line(cairo_t* pen, const SetLine& line, Point at) {
  cairo_save(pen);
  cairo_translate(pen, at.x, at.y);
  cairo_scale(pen, mm_per_point, mm_per_point);
  cairo_move_to(pen, 0, 0);
  auto* layout = static_cast<PangoLayout*>(line.layout.get());
  pango_cairo_show_layout_line(pen, pango_layout_get_line_readonly(layout, line.index));
  cairo_restore(pen);
}

void paint(cairo_t* pen, const PlacedLine& placed) {
  dip(pen, Ink::black);
  paint_line(pen, placed.line, placed.at);
}

/// How far before its place a label begins.
double before_place(const Label& label, const SetLine& line) {
  switch (label.anchor) {
    case Anchor::start:
      return 0;
    case Anchor::middle:
      return line.width / 2;
    case Anchor::end:
      return line.width;
  }
  return 0;
}

void paint_label(cairo_t* pen, const Label& label, const SetLine& line) {
  if (!line.layout) return;
  dip(pen, label.ink);
  cairo_save(pen);
  cairo_translate(pen, label.at.x, label.at.y);
  if (label.turned) cairo_rotate(pen, -std::numbers::pi / 2);
  paint_line(pen, line, {-before_place(label, line), 0});
  cairo_restore(pen);
}

void paint(cairo_t* pen, const PlacedDrawing& placed) {
  cairo_save(pen);
  cairo_translate(pen, placed.at.x, placed.at.y);
  cairo_scale(pen, placed.scale, placed.scale);
  cairo_rectangle(pen, 0, 0, placed.drawing.width, placed.drawing.height);
  cairo_clip(pen);
  std::size_t next_label = 0;
  for (const DrawingMark& mark : placed.drawing.marks) {
    if (const auto* path = std::get_if<Path>(&mark)) {
      paint(pen, *path);
    } else if (next_label < placed.labels.size()) {
      paint_label(pen, std::get<Label>(mark), placed.labels[next_label++]);
    }
  }
  cairo_restore(pen);
}

void paint(cairo_t* pen, const Page& page) {
  cairo_save(pen);
  cairo_scale(pen, 1 / mm_per_point, 1 / mm_per_point);
  cairo_set_miter_limit(pen, miter_limit);
  for (const Piece& piece : page.pieces) {
    std::visit([&](const auto& one) { paint(pen, one); }, piece);
  }
  cairo_restore(pen);
  cairo_show_page(pen);
}

}  // namespace

Result<std::string> painted(const std::vector<Page>& pages, const std::string& title) {
  std::string bytes;
  const Surface surface(cairo_pdf_surface_create_for_stream(
      append, &bytes, paper_width / mm_per_point, paper_height / mm_per_point));
  cairo_pdf_surface_set_metadata(surface.get(), CAIRO_PDF_METADATA_TITLE, printable(title).c_str());
  // When it was made is no part of what it says.
  cairo_pdf_surface_set_metadata(surface.get(), CAIRO_PDF_METADATA_CREATE_DATE, nullptr);
  const Pen pen(cairo_create(surface.get()));
  for (const Page& page : pages) paint(pen.get(), page);
  cairo_surface_finish(surface.get());
  const cairo_status_t ended = cairo_status(pen.get());
  const cairo_status_t closed = cairo_surface_status(surface.get());
  const cairo_status_t status = ended == CAIRO_STATUS_SUCCESS ? closed : ended;
  if (status != CAIRO_STATUS_SUCCESS) {
    return Fault{
        .slug = "print-failed",
        .message = std::string("The page could not be made: ") + cairo_status_to_string(status)};
  }
  return bytes;
}

}  // namespace evenclaw
