# A program of this folder must compile as it is and must not with -DMUST_FAIL: so it fails for
# what stands in its #ifdef block and for nothing else.
foreach(define IN ITEMS "" -DMUST_FAIL)
  execute_process(COMMAND ${COMPILER} ${define} "${SOURCE}" RESULT_VARIABLE result
                  OUTPUT_VARIABLE output ERROR_VARIABLE output)
  if(define AND result EQUAL 0)
    message(FATAL_ERROR "${SOURCE} compiles with MUST_FAIL: the units let a mistake pass")
  elseif(NOT define AND NOT result EQUAL 0)
    message(FATAL_ERROR "${SOURCE} does not compile even without MUST_FAIL:\n${output}")
  endif()
endforeach()
