# WebAssembly: exceptions on, tests run under node with the real file system.

# A node that is not Debian's does not look where Debian keeps the modules that em++ links with.
set(CMAKE_CXX_LINKER_LAUNCHER ${CMAKE_COMMAND} -E env NODE_PATH=/usr/share/nodejs)

target_compile_options(evenclaw_flags INTERFACE -fexceptions)
target_link_options(evenclaw_flags INTERFACE -fexceptions -sENVIRONMENT=node -sNODERAWFS=1
                    -sEXIT_RUNTIME=1 -sALLOW_MEMORY_GROWTH=1)

# The host's /usr/include must never be searched: header-only libraries come in by symlink.
set(EVENCLAW_HOST_HEADERS ${CMAKE_BINARY_DIR}/host_headers)
file(MAKE_DIRECTORY ${EVENCLAW_HOST_HEADERS})
foreach(library nlohmann doctest)
  if(EXISTS /usr/include/${library})
    file(CREATE_LINK /usr/include/${library} ${EVENCLAW_HOST_HEADERS}/${library} SYMBOLIC)
  endif()
endforeach()
target_include_directories(evenclaw_flags SYSTEM INTERFACE ${EVENCLAW_HOST_HEADERS})

find_program(EVENCLAW_NODE NAMES node nodejs REQUIRED NO_CMAKE_FIND_ROOT_PATH)
set(CMAKE_CROSSCOMPILING_EMULATOR ${EVENCLAW_NODE} --no-experimental-fetch)
