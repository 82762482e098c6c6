#include "report/pdf/font_map.hpp"

#include <fontconfig/fontconfig.h>
#include <pango/pangocairo.h>
#include <pango/pangofc-fontmap.h>
#include <sys/mman.h>
#include <unistd.h>

#include <map>
#include <mutex>

#include "core/base/digest.hpp"
#include "report/pdf/owned.hpp"

namespace evenclaw {

namespace {

using Config = Owned<FcConfig, FcConfigDestroy>;

Fault unreadable_font() {
  return {.slug = "print-failed", .message = "A font of the page could not be read."};
}

/// Writes the font into a file that has no name and lives as long as the process; -1 on failure.
int nameless_file(std::string_view bytes) {
  const int file = memfd_create("font", MFD_CLOEXEC);
  if (file < 0) return -1;
  while (!bytes.empty()) {
    const ssize_t written = write(file, bytes.data(), bytes.size());
    if (written <= 0) {
      close(file);
      return -1;
    }
    bytes.remove_prefix(static_cast<std::size_t>(written));
  }
  return file;
}

/// fontconfig and cairo know a font by the name of its file and remember that name, so the file of
/// a font is made once and never closed: its number must not come to mean another font.
int file_of(std::string_view bytes) {
  static std::mutex one_at_a_time;
  static std::map<Digest, int> files;
  const std::lock_guard<std::mutex> lock(one_at_a_time);
  const Digest digest = sha256(bytes);
  const auto found = files.find(digest);
  if (found != files.end()) return found->second;
  const int file = nameless_file(bytes);
  if (file >= 0) files.emplace(digest, file);
  return file;
}

bool added(FcConfig* config, std::string_view font) {
  const int file = file_of(font);
  if (file < 0) return false;
  const std::string path = "/proc/self/fd/" + std::to_string(file);
  return FcConfigAppFontAddFile(config, reinterpret_cast<const FcChar8*>(path.c_str())) == FcTrue;
}

/// Gives the fonts just added the name no other font has.
void name_them_ours(FcConfig* config) {
  const std::string family(shipped_family());
  const FcFontSet* ours = FcConfigGetFonts(config, FcSetApplication);
  for (int i = 0; ours != nullptr && i < ours->nfont; ++i) {
    FcPatternDel(ours->fonts[i], FC_FAMILY);
    FcPatternAddString(ours->fonts[i], FC_FAMILY, reinterpret_cast<const FcChar8*>(family.c_str()));
  }
}

Config config_of(FontReach reach) {
  switch (reach) {
    case FontReach::shipped:
      return Config(FcConfigCreate());
    case FontReach::machine:
      return Config(FcInitLoadConfigAndFonts());
  }
  return {};
}

Result<std::shared_ptr<void>> new_font_map(const std::vector<PrintFont>& fonts, FontReach reach) {
  const Config config = config_of(reach);
  if (!config) return unreadable_font();
  for (const PrintFont& font : fonts) {
    if (!added(config.get(), font.bytes)) return unreadable_font();
  }
  name_them_ours(config.get());
  PangoFontMap* map = pango_cairo_font_map_new_for_font_type(CAIRO_FONT_TYPE_FT);
  if (map == nullptr) return unreadable_font();
  pango_fc_font_map_set_config(PANGO_FC_FONT_MAP(map), config.get());
  return std::shared_ptr<void>(map, g_object_unref);
}

/// What tells these fonts from others.
std::string name_of(const std::vector<PrintFont>& fonts, FontReach reach) {
  std::string name = reach == FontReach::machine ? "machine" : "shipped";
  for (const PrintFont& font : fonts) name += ' ' + to_text(sha256(font.bytes));
  return name;
}

}  // namespace

std::string_view shipped_family() {
  return "Evenclaw shipped";
}

Result<std::shared_ptr<void>> font_map(const std::vector<PrintFont>& fonts, FontReach reach) {
  // The libraries keep a few kilobytes of every map for good, so each thread makes one and keeps
  // it. Two threads may not share one.
  thread_local std::map<std::string, std::shared_ptr<void>> kept;
  const std::string name = name_of(fonts, reach);
  const auto found = kept.find(name);
  if (found != kept.end()) return found->second;
  auto made = new_font_map(fonts, reach);
  if (made) kept.emplace(name, *made);
  return made;
}

}  // namespace evenclaw
