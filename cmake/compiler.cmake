# Flags that every target of ours gets, held by the interface target evenclaw_flags.

set(CMAKE_CXX_STANDARD 20)
set(CMAKE_CXX_STANDARD_REQUIRED ON)
set(CMAKE_CXX_EXTENSIONS OFF)
set(CMAKE_EXPORT_COMPILE_COMMANDS ON)

find_program(EVENCLAW_CCACHE ccache)
if(EVENCLAW_CCACHE AND NOT CMAKE_CXX_COMPILER_LAUNCHER)
  # The base folder makes paths relative, so that a second clone finds what the first compiled.
  set(CMAKE_CXX_COMPILER_LAUNCHER ${CMAKE_COMMAND} -E env CCACHE_BASEDIR=${CMAKE_SOURCE_DIR}
      CCACHE_NOHASHDIR=1 ${EVENCLAW_CCACHE})
endif()

add_library(evenclaw_flags INTERFACE)
target_compile_options(evenclaw_flags INTERFACE -Wall -Wextra -Wpedantic -Wconversion -Werror)
if(NOT EVENCLAW_COVERAGE)
  # gcovr looks below the build folder for a bundle's sources whose paths were cut, and misses them.
  target_compile_options(evenclaw_flags INTERFACE -ffile-prefix-map=${CMAKE_SOURCE_DIR}/=)
endif()
if(CMAKE_CXX_COMPILER_ID MATCHES "Clang")
  # clang counts signed/unsigned among -Wconversion, g++ does not: one rule for both compilers.
  target_compile_options(evenclaw_flags INTERFACE -Wno-sign-conversion)
  if(NOT EVENCLAW_BUNDLES)
    # In a bundle it would also fire on a local that is spelled like a neighbour's constant.
    target_compile_options(evenclaw_flags INTERFACE -Wshadow)
  endif()
else()
  # Plain -Wshadow of g++ also fires on a local that is spelled like a type or a function.
  target_compile_options(evenclaw_flags INTERFACE -Wshadow=local)
endif()

if(EVENCLAW_SANITIZE)
  target_compile_options(evenclaw_flags INTERFACE -fsanitize=${EVENCLAW_SANITIZE}
                         -fno-sanitize-recover=all -fno-omit-frame-pointer)
  target_link_options(evenclaw_flags INTERFACE -fsanitize=${EVENCLAW_SANITIZE})
  if(EVENCLAW_SANITIZE_NOT)
    target_compile_options(evenclaw_flags INTERFACE -fno-sanitize=${EVENCLAW_SANITIZE_NOT})
  endif()
endif()
if(EVENCLAW_COVERAGE)
  target_compile_options(evenclaw_flags INTERFACE --coverage)
  target_link_options(evenclaw_flags INTERFACE --coverage)
endif()

if(EMSCRIPTEN)
  include(cmake/emscripten.cmake)
elseif(CMAKE_BUILD_TYPE STREQUAL "Release")
  # Assertions stay on: a record that stops beats a record that is wrong.
  set(CMAKE_CXX_FLAGS_RELEASE "-O2")
  target_compile_options(evenclaw_flags INTERFACE -D_FORTIFY_SOURCE=2 -D_GLIBCXX_ASSERTIONS
                         -fstack-protector-strong)
  target_link_options(evenclaw_flags INTERFACE -Wl,-z,relro,-z,now)
  set(CMAKE_POSITION_INDEPENDENT_CODE ON)
endif()
