# Packs a folder into a package, its files in the order of their names and without a time: twice the same folder is twice
# the same bytes.
#   cmake -DFROM=FOLDER -DTO=undercroft.oxt -P pack.cmake
if(NOT CMAKE_SCRIPT_MODE_FILE STREQUAL CMAKE_CURRENT_LIST_FILE OR NOT IS_DIRECTORY "${FROM}" OR NOT TO)
  message(FATAL_ERROR "wanted: cmake -DFROM=FOLDER -DTO=PACKAGE -P pack.cmake")
endif()
file(GLOB_RECURSE files LIST_DIRECTORIES false RELATIVE "${FROM}" "${FROM}/*")
list(SORT files)
string(REPLACE ";" "\n" listed "${files}")
file(WRITE "${TO}.files" "${listed}\n")
file(REMOVE "${TO}")
execute_process(COMMAND "${CMAKE_COMMAND}" -E tar cf "${TO}" --format=zip "--mtime=1980-01-01 00:00:00 UTC" "--files-from=${TO}.files"
                WORKING_DIRECTORY "${FROM}" RESULT_VARIABLE failed)
file(REMOVE "${TO}.files")
if(failed)
  message(FATAL_ERROR "${TO} cannot be written; the disk may be full")
endif()
