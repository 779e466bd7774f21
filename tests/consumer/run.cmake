# Installs the build tree BUILD into WORK and builds and runs the consumer project against it.
function(step)
  execute_process(COMMAND ${ARGV} COMMAND_ERROR_IS_FATAL ANY)
endfunction()

file(REMOVE_RECURSE "${WORK}")
step("${CMAKE_COMMAND}" --install "${BUILD}" --prefix "${WORK}/prefix" --component cpp)
step("${CMAKE_COMMAND}" -S "${CMAKE_CURRENT_LIST_DIR}" -B "${WORK}/build" -G "${GENERATOR}"
     "-DCMAKE_CXX_COMPILER=${COMPILER}" "-DCMAKE_CXX_FLAGS=${FLAGS}" -DCMAKE_BUILD_TYPE=Release
     "-DCMAKE_PREFIX_PATH=${WORK}/prefix" "-DPython_EXECUTABLE=${PYTHON}")
step("${CMAKE_COMMAND}" --build "${WORK}/build")
step("${WORK}/build/consumer")
