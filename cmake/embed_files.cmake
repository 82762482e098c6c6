# Called by evenclaw_embed at build time: NAME, FOLDER, FILES.

string(REPLACE "\"" "" FILES "${FILES}")
set(rows "")
foreach(file IN LISTS FILES)
  get_filename_component(base ${file} NAME)
  file(READ ${file} hex HEX)
  # Bytes, not a raw string: a text may hold any delimiter, and compilers limit string literals.
  string(REGEX REPLACE "(..)" "\\\\x\\1" bytes "${hex}")
  string(LENGTH "${hex}" digits)
  math(EXPR size "${digits} / 2")
  string(APPEND rows "    {\"${base}\", std::string_view(\"${bytes}\", ${size})},\n")
endforeach()

file(WRITE ${FOLDER}/embedded_file.hpp.new
"// Made by the build. A text file that lies inside the program.
#pragma once

#include <string_view>

namespace evenclaw {

struct EmbeddedFile {
  std::string_view name;
  std::string_view text;
};

}  // namespace evenclaw
")
file(COPY_FILE ${FOLDER}/embedded_file.hpp.new ${FOLDER}/embedded_file.hpp ONLY_IF_DIFFERENT)

file(WRITE ${FOLDER}/${NAME}.hpp
"// Made by the build.
#pragma once

#include <span>

#include \"embedded/embedded_file.hpp\"

namespace evenclaw {

std::span<const EmbeddedFile> ${NAME}();

}  // namespace evenclaw
")
list(LENGTH FILES count)
file(WRITE ${FOLDER}/${NAME}.cpp
"#include \"embedded/${NAME}.hpp\"

#include <array>

namespace evenclaw {
namespace {
constexpr std::array<EmbeddedFile, ${count}> files = {{
${rows}}};
}  // namespace

std::span<const EmbeddedFile> ${NAME}() { return files; }

}  // namespace evenclaw
")
