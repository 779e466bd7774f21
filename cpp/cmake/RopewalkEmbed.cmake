# Turns the tables in cpp/data into one C++ source file.
#
# Included, it defines ropewalk_embed(); run as a script it writes the file. Each line of a table
# becomes a raw string literal of its own, since compilers limit the length of one literal; the
# whole of a file stays below the limit for joined literals.

if(CMAKE_SCRIPT_MODE_FILE)
  set(longest_file 65000)
  set(entries "")
  file(GLOB tables "${FOLDER}/*.csv")
  list(SORT tables)
  foreach(path IN LISTS tables)
    file(SIZE "${path}" size)
    if(size GREATER longest_file)
      message(FATAL_ERROR "${path} has ${size} bytes; a table may have ${longest_file}: split it")
    endif()
    get_filename_component(name "${path}" NAME_WE)
    file(READ "${path}" text)
    string(REPLACE "\n" "\n)table\"\n      R\"table(" text "${text}")
    string(APPEND entries "    {\"${name}\",\n      R\"table(${text})table\"},\n")
  endforeach()
  file(
    WRITE "${OUTPUT}"
    "// Written by the build from cpp/data/*.csv.
#include <array>
#include <string_view>
#include <utility>

#include \"ropewalk/base/table.hpp\"

namespace ropewalk {

std::span<const EmbeddedFile> embedded_files() noexcept {
  static constexpr auto files = std::to_array<EmbeddedFile>({
${entries}  });
  return files;
}

}  // namespace ropewalk
")
  return()
endif()

# Adds the tables of `folder` to `target`, rewritten whenever one of them changes.
function(ropewalk_embed target folder)
  file(GLOB tables CONFIGURE_DEPENDS "${folder}/*.csv")
  set(output "${CMAKE_CURRENT_BINARY_DIR}/embedded_tables.cpp")
  set(script "${PROJECT_SOURCE_DIR}/cpp/cmake/RopewalkEmbed.cmake")
  add_custom_command(
    OUTPUT "${output}"
    COMMAND "${CMAKE_COMMAND}" "-DFOLDER=${folder}" "-DOUTPUT=${output}" -P "${script}"
    DEPENDS ${tables} "${script}"
    COMMENT "Embedding the tables of ${folder}"
    VERBATIM)
  target_sources(${target} PRIVATE "${output}")
endfunction()
