# Compiles sources in bundles of about eight: what a template or a header costs is paid once a
# bundle, which halves the time to build (docs/decisions/0009-sources-compiled-in-bundles.md).
# EVENCLAW_BUNDLES is on in every preset.
#
# A source's bundle follows from its own path, so that a new source moves no other one. The price:
# names in unnamed namespaces must differ within a bundle (where g++ says "redefinition" or
# "ambiguous", give the newer one a telling name, or share the one idea in a header). clang-tidy
# (./test --tidy) reads each source alone, so a forgotten #include is found there.

option(EVENCLAW_BUNDLES "Compile several sources at once" OFF)
set(EVENCLAW_SOURCES_PER_BUNDLE 8)

function(evenclaw_bundle target)
  if(NOT EVENCLAW_BUNDLES)
    return()
  endif()
  list(LENGTH ARGN count)
  # A power of two: the number of bundles, and so who shares one, changes seldom.
  set(bundles 1)
  math(EXPR wanted "${count} / ${EVENCLAW_SOURCES_PER_BUNDLE}")
  while(bundles LESS wanted)
    math(EXPR bundles "${bundles} * 2")
  endwhile()
  foreach(source IN LISTS ARGN)
    file(RELATIVE_PATH path ${CMAKE_SOURCE_DIR} ${source})
    string(MD5 digest ${path})
    string(SUBSTRING ${digest} 0 4 digits)
    math(EXPR bundle "0x${digits} % ${bundles}")
    set_property(SOURCE ${source} PROPERTY UNITY_GROUP "bundle_${bundle}")
  endforeach()
  set_target_properties(${target} PROPERTIES UNITY_BUILD ON UNITY_BUILD_MODE GROUP)
endfunction()
