# SPDX-License-Identifier: GPL-3.0-or-later
# Writes a .cpp with the text of FILES as an array of {name, text}; see storage/embedded_files.hpp.
set(body "")
foreach(file IN LISTS FILES)
    get_filename_component(base "${file}" NAME)
    file(READ "${file}" text)
    # A string literal has a length limit in the standard (65,536); pieces are joined by the compiler.
    string(LENGTH "${text}" length)
    set(at 0)
    set(pieces "")
    while(at LESS length)
        string(SUBSTRING "${text}" ${at} 8000 piece)
        string(APPEND pieces "R\"~~~(${piece})~~~\"\n")
        math(EXPR at "${at} + 8000")
    endwhile()
    string(APPEND body "    {\"${base}\",\n${pieces}},\n")
endforeach()
file(WRITE "${OUT}" "// Made by storage/embed_files.cmake; do not edit.
#include \"storage/embedded_files.hpp\"
namespace arc::storage {
namespace {
const EmbeddedFile files[] = {
${body}    {\"\", \"\"}};
}
std::span<const EmbeddedFile> embedded_${NAME}() { return std::span(files).first(std::size(files) - 1); }
}  // namespace arc::storage
")
