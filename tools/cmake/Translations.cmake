# The catalogs of assets/translations, compiled for gettext: build/<preset>/translations/all/LC_MESSAGES/flapdoor-<code>.mo
# (text/language.hpp tells why all stand in one folder). FLAPDOOR_CATALOGS is that folder, for programs and tests.
include_guard(GLOBAL)
find_package(Gettext REQUIRED)

set(FLAPDOOR_CATALOGS ${CMAKE_BINARY_DIR}/translations)
set(catalogs)
foreach(code es)
  set(words ${PROJECT_SOURCE_DIR}/assets/translations/${code}.po)
  set(catalog ${FLAPDOOR_CATALOGS}/all/LC_MESSAGES/flapdoor-${code}.mo)
  add_custom_command(OUTPUT ${catalog}
    COMMAND ${CMAKE_COMMAND} -E make_directory ${FLAPDOOR_CATALOGS}/all/LC_MESSAGES
    COMMAND ${GETTEXT_MSGFMT_EXECUTABLE} --check-header --check-domain -o ${catalog} ${words}
    DEPENDS ${words} COMMENT "Compiling the catalog ${code}" VERBATIM)
  list(APPEND catalogs ${catalog})
endforeach()
add_custom_target(flapdoor_catalogs ALL DEPENDS ${catalogs})
install(DIRECTORY ${FLAPDOOR_CATALOGS} DESTINATION share/flapdoor)
