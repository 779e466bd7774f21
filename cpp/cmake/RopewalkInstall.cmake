# `cmake --install`: headers, library and a package that find_package(ropewalk) finds.
include(CMakePackageConfigHelpers)

set(package_folder "${CMAKE_INSTALL_LIBDIR}/cmake/ropewalk")
install(TARGETS ropewalk EXPORT ropewalkTargets
        ARCHIVE DESTINATION "${CMAKE_INSTALL_LIBDIR}" COMPONENT cpp
        FILE_SET HEADERS DESTINATION "${CMAKE_INSTALL_INCLUDEDIR}" COMPONENT cpp)
install(EXPORT ropewalkTargets NAMESPACE ropewalk:: DESTINATION "${package_folder}" COMPONENT cpp)
configure_package_config_file(
  "${CMAKE_CURRENT_LIST_DIR}/ropewalkConfig.cmake.in"
  "${CMAKE_CURRENT_BINARY_DIR}/ropewalkConfig.cmake" INSTALL_DESTINATION "${package_folder}")
write_basic_package_version_file("${CMAKE_CURRENT_BINARY_DIR}/ropewalkConfigVersion.cmake"
                                 COMPATIBILITY SameMinorVersion)
install(FILES "${CMAKE_CURRENT_BINARY_DIR}/ropewalkConfig.cmake"
              "${CMAKE_CURRENT_BINARY_DIR}/ropewalkConfigVersion.cmake"
              "${CMAKE_CURRENT_LIST_DIR}/RopewalkHeaders.cmake"
        DESTINATION "${package_folder}" COMPONENT cpp)
