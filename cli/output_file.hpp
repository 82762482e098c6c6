// Files a command writes for people: whole or not at all, never over something else.
#pragma once

#include <string>
#include <string_view>

#include "core/base/result.hpp"

namespace evenclaw::cli {

/// Writes a new file: beside its place, then renamed, so that a half-written file never bears the
/// name. Faults: "output-exists", "disk-full", "disk-failed", "file-read-only", "file-not-found".
Outcome write_new_file(const std::string& path, std::string_view content);

enum class PageForm { html, pdf };

/// What the ending of a name asks for: a PDF for ".pdf", else HTML.
PageForm form_of(const std::string& path);

/// As write_new_file() for a page with a mark of ours at its end; a file that bears the mark of
/// this form is replaced, any other is left alone.
Outcome write_page(const std::string& path, PageForm form, std::string_view page);

/// "2026-11-24-home.html" for a page of that form: with its ending.
std::string named_for(PageForm form, const std::string& name);

/// Where a page goes when no --out is given: the folder "sheets" beside the records.
std::string beside(const std::string& records_file, const std::string& name);

}  // namespace evenclaw::cli
