# Puts text files into a program, so that it works from wherever it is copied to.
#
#   evenclaw_embed(evenclaw_store_sqlite schema_files store/schema/0001_log.sql ...)
#
# gives that target `#include "embedded/schema_files.hpp"` with
#   std::span<const evenclaw::EmbeddedFile> evenclaw::schema_files();   // sorted by name

set(EVENCLAW_EMBED_SCRIPT ${CMAKE_CURRENT_LIST_DIR}/embed_files.cmake)

function(evenclaw_embed target name)
  set(files ${ARGN})
  list(SORT files)
  set(folder ${CMAKE_BINARY_DIR}/generated/embedded)
  add_custom_command(
    OUTPUT ${folder}/${name}.cpp ${folder}/${name}.hpp
    COMMAND ${CMAKE_COMMAND} -D NAME=${name} -D FOLDER=${folder} "-D FILES=\"${files}\"" -P
            ${EVENCLAW_EMBED_SCRIPT}
    DEPENDS ${files} ${EVENCLAW_EMBED_SCRIPT}
    VERBATIM)
  get_target_property(type ${target} TYPE)
  if(type STREQUAL "INTERFACE_LIBRARY")
    return()
  endif()
  target_sources(${target} PRIVATE ${folder}/${name}.cpp ${folder}/${name}.hpp)
  target_include_directories(${target} PRIVATE ${CMAKE_BINARY_DIR}/generated)
endfunction()
