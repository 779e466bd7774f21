# How every target of this project is compiled.

# C++20 without compiler extensions, the project's warnings, and the sanitizers when asked for.
# Products and sums are not fused: a row gives the same bits in vector code and outside it, on
# machines with and without fused multiply-add.
function(ropewalk_compile target)
  target_compile_features(${target} PUBLIC cxx_std_20)
  set_target_properties(${target} PROPERTIES CXX_EXTENSIONS OFF POSITION_INDEPENDENT_CODE ON)
  if(MSVC)
    target_compile_options(${target} PRIVATE /W4 /permissive- /utf-8 /fp:precise)
  else()
    target_compile_options(${target} PRIVATE -ffp-contract=off -Wall -Wextra -Wconversion -Wshadow
                                             -Wpedantic)
  endif()
  if(CMAKE_CXX_COMPILER_ID STREQUAL "GNU")
    # Functions of one file may be put into one another although the code can be moved in memory;
    # nobody replaces them from outside.
    target_compile_options(${target} PRIVATE -fno-semantic-interposition)
  endif()
  if(CMAKE_CXX_COMPILER_ID STREQUAL "GNU" AND CMAKE_CXX_COMPILER_VERSION VERSION_LESS 13)
    # False alarms inside its own std::string (GCC bug 105329 and its like).
    target_compile_options(${target} PRIVATE -Wno-restrict -Wno-maybe-uninitialized)
  endif()
  if(ROPEWALK_WERROR)
    target_compile_options(${target} PRIVATE $<IF:$<BOOL:${MSVC}>,/WX,-Werror>)
  endif()
  if(ROPEWALK_SANITIZE)
    target_compile_options(${target} PRIVATE -fsanitize=address,undefined
                                             -fno-sanitize-recover=all -fno-omit-frame-pointer)
    target_link_options(${target} PRIVATE -fsanitize=address,undefined)
  endif()
endfunction()
