# Test and benchmark libraries: the machine's own if it has them, else fetched at a pinned release.
include(FetchContent)

function(ropewalk_find_googletest)
  find_package(GTest 1.11 QUIET)
  if(NOT TARGET GTest::gtest_main)
    message(STATUS "GoogleTest is not installed (Debian: libgtest-dev): fetching it")
    set(INSTALL_GTEST OFF CACHE BOOL "" FORCE)
    FetchContent_Declare(googletest GIT_REPOSITORY https://github.com/google/googletest.git
                         GIT_TAG v1.15.2 GIT_SHALLOW TRUE SYSTEM)
    FetchContent_MakeAvailable(googletest)
  endif()
endfunction()

function(ropewalk_find_tomlplusplus)
  find_package(tomlplusplus 3 QUIET)
  if(NOT TARGET tomlplusplus::tomlplusplus)
    message(STATUS "toml++ is not installed (Debian: libtomlplusplus-dev): fetching it")
    FetchContent_Declare(tomlplusplus GIT_REPOSITORY https://github.com/marzer/tomlplusplus.git
                         GIT_TAG v3.4.0 GIT_SHALLOW TRUE SYSTEM)
    FetchContent_MakeAvailable(tomlplusplus)
  endif()
endfunction()

function(ropewalk_find_benchmark)
  find_package(benchmark 1.6 QUIET)
  if(NOT TARGET benchmark::benchmark_main)
    message(STATUS "Google Benchmark is not installed (Debian: libbenchmark-dev): fetching it")
    set(BENCHMARK_ENABLE_TESTING OFF CACHE BOOL "" FORCE)
    set(BENCHMARK_ENABLE_INSTALL OFF CACHE BOOL "" FORCE)
    FetchContent_Declare(benchmark GIT_REPOSITORY https://github.com/google/benchmark.git
                         GIT_TAG v1.9.1 GIT_SHALLOW TRUE SYSTEM)
    FetchContent_MakeAvailable(benchmark)
  endif()
endfunction()
