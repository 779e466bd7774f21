# Header-only libraries the core is built on, as imported targets:
#
#   ropewalk::boost_headers   Boost.Units, part of the public headers
#   ropewalk::eigen_headers   linear algebra, used inside the library only
#
# A copy on the machine is preferred. Otherwise the headers come from the Python packages
# boost-headers and cmeel-eigen, which is how `pip install` gets them. This file is installed with
# the library, so that a project that uses ropewalk finds Boost in the same way.

# Runs one Python expression in the interpreter of this build; gives "" if that fails.
function(_ropewalk_ask_python result code)
  set(${result} "" PARENT_SCOPE)
  if(NOT Python_EXECUTABLE)
    find_package(Python 3.11 QUIET COMPONENTS Interpreter)
  endif()
  if(Python_EXECUTABLE)
    execute_process(COMMAND "${Python_EXECUTABLE}" -c "${code}" OUTPUT_VARIABLE answer
                    ERROR_QUIET OUTPUT_STRIP_TRAILING_WHITESPACE RESULT_VARIABLE failed)
    if(NOT failed)
      file(TO_CMAKE_PATH "${answer}" answer)
      set(${result} "${answer}" PARENT_SCOPE)
    endif()
  endif()
endfunction()

# Makes imported target `name` for the folder that holds `header`.
function(_ropewalk_headers name variable header python_code advice)
  if(TARGET ropewalk::${name})
    return()
  endif()
  # A path remembered from an earlier build environment that is gone is looked up anew.
  if(${variable} AND NOT EXISTS "${${variable}}/${header}")
    unset(${variable} CACHE)
  endif()
  find_path(${variable} "${header}" PATH_SUFFIXES eigen3 DOC "Folder that holds ${header}")
  if(NOT ${variable})
    _ropewalk_ask_python(from_python "${python_code}")
    if(from_python)
      find_path(${variable} "${header}" PATHS ${from_python} NO_DEFAULT_PATH)
    endif()
  endif()
  if(NOT ${variable})
    message(FATAL_ERROR "ropewalk needs the header ${header}. ${advice}, "
                        "or set ${variable} to the folder that holds it.")
  endif()
  mark_as_advanced(${variable})
  add_library(ropewalk::${name} INTERFACE IMPORTED)
  set_target_properties(ropewalk::${name} PROPERTIES INTERFACE_INCLUDE_DIRECTORIES
                                                     "${${variable}}")
endfunction()

function(ropewalk_find_boost_headers)
  _ropewalk_headers(
    boost_headers ROPEWALK_BOOST_INCLUDE_DIR "boost/units/quantity.hpp"
    "import boost_headers; print(boost_headers.get_include())"
    "Install the Boost headers (Debian: libboost-dev; pip: boost-headers)")
endfunction()

function(ropewalk_find_eigen_headers)
  set(code "import importlib.metadata as m, pathlib")
  string(APPEND code "\nfor f in m.files('cmeel-eigen') or ():")
  string(APPEND code "\n    if f.as_posix().endswith('include/eigen3/Eigen/Core'):")
  string(APPEND code "\n        print(pathlib.Path(f.locate()).resolve().parents[1])")
  _ropewalk_headers(eigen_headers ROPEWALK_EIGEN_INCLUDE_DIR "Eigen/Core" "${code}"
                    "Install Eigen 3.4 (Debian: libeigen3-dev; pip: cmeel-eigen)")
endfunction()
