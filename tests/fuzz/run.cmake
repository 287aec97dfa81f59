# SPDX-License-Identifier: GPL-3.0-or-later
# Runs one target on a copy of its seeds: -DPROGRAM= -DSECONDS= -DCORPUS= -DSEEDS=
file(MAKE_DIRECTORY ${CORPUS})
execute_process(COMMAND ${PROGRAM} -max_total_time=${SECONDS} -timeout=10 -rss_limit_mb=2048 -seed=20310303
                        -artifact_prefix=${CORPUS}/ ${CORPUS} ${SEEDS}
                RESULT_VARIABLE failed ERROR_VARIABLE said)
string(REGEX MATCHALL "[^\n]*(DONE|ERROR|SUMMARY|Done)[^\n]*" lines "${said}")
message(STATUS "${lines}")
if(failed)
    string(LENGTH "${said}" length)
    set(from 0)
    if(length GREATER 4000)
        math(EXPR from "${length} - 4000")
    endif()
    string(SUBSTRING "${said}" ${from} -1 tail)
    message(FATAL_ERROR "${tail}")
endif()
