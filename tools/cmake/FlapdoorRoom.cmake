# One room of the house: a folder of engine/, a library flapdoor::<name>, one namespace.
#
#   flapdoor_room(dust USES air LINKS fmt::fmt PRIVATE_LINKS Threads::Threads)
#
# BATCHED: many files that include the same headers (see flapdoor_batch).
# USES names rooms; LINKS names libraries whose types its headers show; PRIVATE_LINKS the ones only its .cpp files see.
include_guard(GLOBAL)

# Flags that every target of the project shares. The model promises the same bits on every build, so no fused or
# re-associated arithmetic anywhere.
add_library(flapdoor_flags INTERFACE)
target_compile_options(flapdoor_flags INTERFACE -Wall -Wextra -Wpedantic -Wconversion -ffp-contract=off)
if(CMAKE_CXX_COMPILER_ID STREQUAL "GNU")
  # gcc 12 takes "literal" + std::string for overlapping memory (its bug 105329), and an empty Result's string for one that is read.
  target_compile_options(flapdoor_flags INTERFACE -Wno-restrict -Wno-maybe-uninitialized)
endif()
if(FLAPDOOR_WERROR)
  target_compile_options(flapdoor_flags INTERFACE -Werror)
endif()

# Compiles the .cpp files of a target a dozen at a time, where the speed of building counts: most of the time goes to templates
# that every file of a room would have made anew. Files of one batch see each other's unnamed namespaces.
function(flapdoor_batch target)
  if(FLAPDOOR_BATCHES)
    set_target_properties(${target} PROPERTIES UNITY_BUILD ON UNITY_BUILD_BATCH_SIZE 12)
  endif()
endfunction()

function(flapdoor_room name)
  cmake_parse_arguments(ROOM "BATCHED" "" "USES;LINKS;PRIVATE_LINKS" ${ARGN})
  set(folder ${PROJECT_SOURCE_DIR}/engine/${name})
  file(GLOB_RECURSE sources CONFIGURE_DEPENDS ${folder}/*.cpp)
  file(GLOB_RECURSE headers CONFIGURE_DEPENDS ${folder}/*.hpp)
  add_library(flapdoor_${name} STATIC ${sources})
  add_library(flapdoor::${name} ALIAS flapdoor_${name})
  target_sources(flapdoor_${name} PUBLIC FILE_SET HEADERS BASE_DIRS ${PROJECT_SOURCE_DIR}/engine FILES ${headers})
  if(ROOM_BATCHED)
    flapdoor_batch(flapdoor_${name})
  endif()
  list(TRANSFORM ROOM_USES PREPEND flapdoor::)
  target_link_libraries(flapdoor_${name} PUBLIC flapdoor_flags ${ROOM_USES} ${ROOM_LINKS} PRIVATE ${ROOM_PRIVATE_LINKS})
endfunction()
