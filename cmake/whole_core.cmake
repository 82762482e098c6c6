# One WebAssembly file with all of core and the memory store, nothing dropped: its size is the upper
# bound of what a tablet loads (tools/wasm_size.sh prints it).

get_property(layers GLOBAL PROPERTY EVENCLAW_LAYERS)
set(archives "")
set(targets "")
foreach(folder IN LISTS layers)
  evenclaw_target_name(${folder} target)
  get_target_property(type ${target} TYPE)
  if(type STREQUAL "STATIC_LIBRARY")
    list(APPEND targets ${target})
    list(APPEND archives $<TARGET_FILE:${target}>)
  endif()
endforeach()
if(targets)
  file(WRITE ${CMAKE_BINARY_DIR}/generated/whole_core.cpp "int main() { return 0; }\n")
  add_executable(whole_core EXCLUDE_FROM_ALL ${CMAKE_BINARY_DIR}/generated/whole_core.cpp)
  add_dependencies(whole_core ${targets})
  target_link_libraries(whole_core PRIVATE evenclaw_flags)
  target_link_options(whole_core PRIVATE -sLINKABLE=1 -sEXPORT_ALL=1 -Wl,--whole-archive
                      ${archives} -Wl,--no-whole-archive)
endif()
