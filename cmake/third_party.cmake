# Each third-party library is linked in the one folder that owns it.

function(evenclaw_owns folder)
  evenclaw_target_name(${folder} target)
  if(NOT TARGET ${target})
    return()
  endif()
  get_target_property(type ${target} TYPE)
  if(type STREQUAL "INTERFACE_LIBRARY")
    target_link_libraries(${target} INTERFACE ${ARGN})
  else()
    target_link_libraries(${target} PRIVATE ${ARGN})
  endif()
endfunction()

if(NOT EMSCRIPTEN)
  find_package(SQLite3 REQUIRED)
  evenclaw_owns(store/sqlite SQLite::SQLite3)
  find_package(PkgConfig REQUIRED)
  pkg_check_modules(typesetting REQUIRED IMPORTED_TARGET cairo-pdf cairo-ft pangocairo pangoft2
                    fontconfig)
  evenclaw_owns(report/pdf PkgConfig::typesetting)
endif()

file(GLOB migrations CONFIGURE_DEPENDS ${CMAKE_SOURCE_DIR}/store/schema/*.sql)
if(TARGET evenclaw_store_sqlite AND migrations)
  evenclaw_embed(evenclaw_store_sqlite schema_files ${migrations})
endif()
